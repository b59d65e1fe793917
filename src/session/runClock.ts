import type { PageTime } from '../voice/device/pageTime.ts';

/**
 * The engine's clock, live: the wall clock's time when the page was opened plus what the monotonic clock has run since.
 * It never steps, whatever the network or the runner does to the wall clock.
 */
export interface RunClock {
  readonly nowMs: () => number;
  /** The page's instant (performance.now) of an engine instant. */
  readonly pageMs: (engineMs: number) => number;
}

/** @param originMs performance.timeOrigin: the epoch ms of the page's instant 0 */
export const runClockOf = (time: PageTime, originMs: number): RunClock => ({
  nowMs: () => originMs + time.nowMs(),
  pageMs: (engineMs) => engineMs - originMs,
});
