import type { Sound } from './wav.ts';

/** Silence between two clips, so that a decoder that shifts by an encoder delay still cuts in silence. */
const GUARD_S = 0.1;

export interface Sprite {
  readonly sound: Sound;
  /** [first sample, length] of each clip, in samples of `rateHz`. */
  readonly spans: ReadonlyMap<string, readonly [number, number]>;
}

/** Lays clips one after the other with silence between. */
export const layOut = (clips: ReadonlyMap<string, Sound>, rateHz: number): Sprite => {
  const guard = Math.round(GUARD_S * rateHz);
  const spans = new Map<string, readonly [number, number]>();
  let at = guard;
  for (const [name, { samples }] of clips) {
    spans.set(name, [at, samples.length]);
    at += samples.length + guard;
  }
  const all = new Float32Array(at);
  for (const [name, { samples }] of clips) all.set(samples, spans.get(name)?.[0] ?? 0);
  return { sound: { samples: all, rateHz }, spans };
};
