import type { Input } from '../estimate/input.ts';

/** Heart rate as it came in, and how long it has been above what is asked. */
export interface Heart {
  /** Smoothed, beats a minute; null while none is heard. */
  readonly bpm: number | null;
  readonly atMs: number;
  readonly overSinceMs: number | null;
  readonly saidMs: number;
}

/** One odd beat is no rate. */
const SMOOTH_S = 6;
/** Older than this it is not the heart rate now. */
const FRESH_MS = 10_000;
/** So long above the ceiling before a word: the heart follows the legs by half a minute anyway. */
const OVER_MS = 15_000;
/** And not again before this: it needs that long to fall. */
const AGAIN_MS = 180_000;
/** From the pulse of a rest the heart takes so long to find its level (common practice, no source). */
export const SETTLE_MS = 60_000;

export const beginHeart: Heart = {
  bpm: null,
  atMs: Number.NEGATIVE_INFINITY,
  overSinceMs: null,
  saidMs: Number.NEGATIVE_INFINITY,
};

export const hearHeart = (heart: Heart, { bpm, atMs }: Input & { type: 'heart' }): Heart => {
  if (bpm === null) return { ...heart, bpm: null, atMs, overSinceMs: null };
  const sinceS = (atMs - heart.atMs) / 1000;
  const keep = heart.bpm === null || sinceS > 3 * SMOOTH_S ? 0 : Math.exp(-sinceS / SMOOTH_S);
  return { ...heart, bpm: bpm + keep * ((heart.bpm ?? bpm) - bpm), atMs };
};

/** Beats a minute now; null where it is not known. */
export const heartNow = (heart: Heart, nowMs: number): number | null =>
  nowMs - heart.atMs <= FRESH_MS ? heart.bpm : null;

/** Holds the rate against a ceiling; `over` when it is time for a word. */
export const underCeiling = (
  heart: Heart,
  mostBpm: number | null,
  nowMs: number,
): { readonly heart: Heart; readonly over: boolean } => {
  const bpm = heartNow(heart, nowMs);
  if (mostBpm === null || bpm === null || bpm <= mostBpm)
    return { heart: heart.overSinceMs === null ? heart : { ...heart, overSinceMs: null }, over: false };
  const sinceMs = heart.overSinceMs ?? nowMs;
  const over = nowMs - sinceMs >= OVER_MS && nowMs - heart.saidMs >= AGAIN_MS;
  return { heart: { ...heart, overSinceMs: sinceMs, saidMs: over ? nowMs : heart.saidMs }, over };
};
