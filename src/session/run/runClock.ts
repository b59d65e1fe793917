import type { PageTime } from '../../voice/device/pageTime.ts';

/**
 * The engine's clock, live: the phone's time when the run was begun plus what the monotonic clock has run since. It does
 * not step when the phone's clock is set. Only sleep moves it on: many phones stop the monotonic clock while they sleep.
 */
export interface RunClock {
  readonly nowMs: () => number;
  /** The page's instant (performance.now) of an engine instant. */
  readonly pageMs: (engineMs: number) => number;
  /** Counts time that the monotonic clock slept through. */
  readonly moveOn: (ms: number) => void;
}

/** @param originMs engine ms of the page's instant 0; for a new run performance.timeOrigin */
export const runClockOf = (time: PageTime, originMs: number): RunClock => {
  let sleptMs = 0;
  return {
    nowMs: () => originMs + sleptMs + time.nowMs(),
    pageMs: (engineMs) => engineMs - originMs - sleptMs,
    moveOn: (ms) => {
      sleptMs += ms;
    },
  };
};

/** Both clocks read at one instant, as the log keeps them. */
export interface ClockPair {
  readonly engineMs: number;
  readonly wallMs: number;
}

/**
 * The origin with which a new page goes on with a run: as much time has passed on its clock as on the phone's. A phone's
 * clock that was set back in between tells nothing: then the run goes on from where it was.
 */
export const originAfter = (last: ClockPair, wallMs: number, pageMs: number): number =>
  last.engineMs + Math.max(0, wallMs - last.wallMs) - pageMs;

/** Less than this is how clocks drift and are trimmed. */
const SET_MS = 2000;

/** What became of the phone's clock since the last look. */
export type WallChange =
  | { readonly what: 'same' }
  | { readonly what: 'set' | 'slept'; readonly byMs: number };

/**
 * Tells a clock that was set from a phone that slept. A page in view does not sleep, so a jump is somebody setting the
 * clock; out of view a jump forward is sleep that the monotonic clock did not count.
 */
export const createWallWatch = (first: ClockPair): ((now: ClockPair, wasHidden: boolean) => WallChange) => {
  let aheadMs = first.wallMs - first.engineMs;
  return (now, wasHidden) => {
    const byMs = now.wallMs - now.engineMs - aheadMs;
    if (Math.abs(byMs) < SET_MS) return { what: 'same' };
    if (wasHidden && byMs > 0) return { what: 'slept', byMs };
    aheadMs += byMs;
    return { what: 'set', byMs };
  };
};
