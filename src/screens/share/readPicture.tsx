import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { t } from '../../languages/text.ts';
import { type Pixels, readCode } from '../../share/picture.ts';
import { PickFile } from '../parts/files.tsx';

interface Props {
  readonly onText: (text: string) => void;
  readonly onTrouble: (text: string) => void;
}

/** Photographs are larger than a code needs, and reading one takes time by its area. */
const MOST_PX = 1600;
/** Between two looks: the page goes on answering, whatever a look takes on a slow phone. */
const LOOK_AGAIN_MS = 150;
/** Unasked, browsers give 640 × 480, in which the squares of a plan with its course are too small. */
const WISH = {
  facingMode: 'environment',
  width: { ideal: 1920 },
  height: { ideal: 1080 },
} satisfies MediaTrackConstraints;

const pixelsOf = (source: CanvasImageSource, width: number, height: number): Pixels | null => {
  const shrink = Math.min(1, MOST_PX / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * shrink);
  canvas.height = Math.round(height * shrink);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null || canvas.width === 0 || canvas.height === 0) return null;
  context.drawImage(source, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height);
};

const readFile = async (file: File): Promise<string | null> => {
  const bitmap = await createImageBitmap(file);
  const pixels = pixelsOf(bitmap, bitmap.width, bitmap.height);
  bitmap.close();
  return pixels === null ? null : readCode(pixels);
};

/** Reads a picture code by the camera where that is allowed, and from a picture file anywhere. */
export const ReadPicture = ({ onText, onTrouble }: Props) => {
  const camera = useSignal<MediaStream | null>(null);
  const video = useRef<HTMLVideoElement>(null);

  const gone = useRef(false);

  const letGo = (stream: MediaStream | null): void => {
    for (const track of stream?.getTracks() ?? []) track.stop();
  };
  const stop = (): void => {
    letGo(camera.value);
    camera.value = null;
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
    if (camera.value === null || element === null) return;
    element.srcObject = camera.value;
    element.play().catch(() => {});
    let timer: ReturnType<typeof setTimeout>;
    const lookAt = (): void => {
      const pixels = pixelsOf(element, element.videoWidth, element.videoHeight);
      const text = pixels === null ? null : readCode(pixels);
      if (text === null) {
        timer = setTimeout(lookAt, LOOK_AGAIN_MS);
        return;
      }
      stop();
      onText(text);
    };
    timer = setTimeout(lookAt, LOOK_AGAIN_MS);
    return () => clearTimeout(timer);
  }, [camera.value]);

  const look = async (): Promise<void> => {
    try {
      const stream = await navigator.mediaDevices.getUserMedia({ video: WISH });
      // The runner may have gone on to another screen while the browser asked.
      if (gone.current) letGo(stream);
      else camera.value = stream;
    } catch {
      onTrouble(
        t('The camera is not allowed, or there is none. Photograph the code and open the picture instead.'),
      );
    }
  };
  const open = async (file: File): Promise<void> => {
    try {
      const text = await readFile(file);
      if (text === null)
        onTrouble(
          t(
            'No code was found in this picture. Take it straight on, whole, with its white margin, and sharp.',
          ),
        );
      else onText(text);
    } catch {
      onTrouble(t('This file is no picture that the browser can open.'));
    }
  };

  return (
    <>
      <div class="buttons">
        {camera.value === null ? (
          <button type="button" onClick={() => void look()}>
            {t('Read with the camera')}
          </button>
        ) : (
          <button type="button" onClick={stop}>
            {t('Camera off')}
          </button>
        )}
        <PickFile
          label={t('Open a picture')}
          about={t('Open a picture of a code')}
          accept="image/*"
          onFile={(file) => void open(file)}
        />
      </div>
      {camera.value !== null && (
        <video ref={video} class="camera" muted playsInline aria-label={t('Camera')} />
      )}
    </>
  );
};
