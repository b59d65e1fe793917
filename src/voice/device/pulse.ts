/**
 * Whether sound really flows. A context's `state` lies after interruptions (a phone call, a lock), so the only test is
 * that its clock moves.
 */
export interface Pulse {
  /** Takes a look at the clock. */
  readonly look: (audioS: number, pageMs: number) => Beat;
}

export type Beat = 'moving' | 'still' | 'dead';

/** Looks closer together than this say nothing: the clock moves in steps of the device's buffer (up to 0.1 s). */
const SHORTEST_LOOK_MS = 400;
/** Still for this long although resume was asked for: only a new context helps. */
const DEAD_AFTER_MS = 4000;

export const createPulse = (): Pulse => {
  let seen: { audioS: number; pageMs: number } | null = null;
  let stillSinceMs: number | null = null;
  let beat: Beat = 'still';
  return {
    look: (audioS, pageMs) => {
      if (seen !== null && audioS < seen.audioS) seen = null; // a new context
      if (seen === null) {
        seen = { audioS, pageMs };
        stillSinceMs = pageMs;
        beat = 'still';
        return beat;
      }
      if (audioS > seen.audioS) {
        seen = { audioS, pageMs };
        stillSinceMs = null;
        beat = 'moving';
      } else if (pageMs - seen.pageMs >= SHORTEST_LOOK_MS) {
        stillSinceMs ??= seen.pageMs;
        beat = pageMs - stillSinceMs >= DEAD_AFTER_MS ? 'dead' : 'still';
      }
      return beat;
    },
  };
};
