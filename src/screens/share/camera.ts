import { type Signal, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { readCode } from '../../share/picture.ts';
import { pixelsOf } from './pixels.ts';

/** Between two looks: the page goes on answering, whatever a look takes on a slow phone. */
const LOOK_AGAIN_MS = 150;
/** Unasked, browsers give 640 × 480, in which the squares of a plan with its course are too small. */
const WISH = {
  facingMode: 'environment',
  width: { ideal: 1920 },
  height: { ideal: 1080 },
} satisfies MediaTrackConstraints;

const letGo = (stream: MediaStream | null): void => {
  for (const track of stream?.getTracks() ?? []) track.stop();
};

/** Looks again and again for a picture code in what a camera shows. @returns what ends it */
const watchFor = (video: HTMLVideoElement, onText: (text: string) => void): (() => void) => {
  let timer: ReturnType<typeof setTimeout>;
  const look = (): void => {
    const pixels = pixelsOf(video, video.videoWidth, video.videoHeight);
    const text = pixels === null ? null : readCode(pixels);
    if (text === null) timer = setTimeout(look, LOOK_AGAIN_MS);
    else onText(text);
  };
  timer = setTimeout(look, LOOK_AGAIN_MS);
  return () => clearTimeout(timer);
};

interface Camera {
  /** What it films; null while it is off. */
  readonly stream: Signal<MediaStream | null>;
  /** The element that shows what it films. */
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly look: () => Promise<void>;
  readonly stop: () => void;
}

/** The device's camera, on until a picture code is read, it is stopped, or its screen is left. */
export const useCamera = (onText: (text: string) => void, onRefused: () => void): Camera => {
  const stream = useSignal<MediaStream | null>(null);
  const video = useRef<HTMLVideoElement>(null);
  const gone = useRef(false);

  const stop = (): void => {
    letGo(stream.value);
    stream.value = null;
  };
  useEffect(
    () => () => {
      gone.current = true;
      stop();
    },
    [],
  );
  useEffect(() => {
    const element = video.current;
    if (stream.value === null || element === null) return;
    element.srcObject = stream.value;
    element.play().catch(() => {});
    return watchFor(element, (text) => {
      stop();
      onText(text);
    });
  }, [stream.value]);

  const look = async (): Promise<void> => {
    try {
      const given = await navigator.mediaDevices.getUserMedia({ video: WISH });
      // The runner may have gone on to another screen while the browser asked.
      if (gone.current) letGo(given);
      else stream.value = given;
    } catch {
      onRefused();
    }
  };
  return { stream, video, look, stop };
};
