import { CLIP_PHASE, FRAME_SAMPLES, LATE_SAMPLES } from '../voice/file/frames.ts';
import type { Sound } from './wav.ts';

/** Least silence between two clips, so that a decoder that shifts by an encoder delay still cuts in silence. */
const GUARD_S = 0.1;

export interface Sprite {
  readonly sound: Sound;
  /** [first sample, length] of each clip, in samples of `rateHz`. */
  readonly spans: ReadonlyMap<string, readonly [number, number]>;
}

/** The first sample from `at` on which falls on the place in a frame where clips begin, so that frames can be cut out. */
const onFrame = (at: number): number => {
  const past = (at + LATE_SAMPLES - CLIP_PHASE) % FRAME_SAMPLES;
  return past === 0 ? at : at + FRAME_SAMPLES - past;
};

/** Lays clips one after the other with silence between, each at the same place in a frame of the MP3 to be. */
export const layOut = (clips: ReadonlyMap<string, Sound>, rateHz: number): Sprite => {
  const guard = Math.round(GUARD_S * rateHz);
  const spans = new Map<string, readonly [number, number]>();
  let at = guard;
  for (const [name, { samples }] of clips) {
    const begin = onFrame(at);
    spans.set(name, [begin, samples.length]);
    at = begin + samples.length + guard;
  }
  const all = new Float32Array(at);
  for (const [name, { samples }] of clips) all.set(samples, spans.get(name)?.[0] ?? 0);
  return { sound: { samples: all, rateHz }, spans };
};
