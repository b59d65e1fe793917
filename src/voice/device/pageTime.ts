/** The page's monotonic clock and its timers, so that tests can bring their own. */
export interface PageTime {
  /** performance.now: ms since the page was opened; never steps. */
  readonly nowMs: () => number;
  /** Calls again and again, about every `ms`; returns what ends it. */
  readonly every: (ms: number, run: () => void) => () => void;
}

export const pageTime: PageTime = {
  nowMs: () => performance.now(),
  every: (ms, run) => {
    const timer = setInterval(run, ms);
    return () => clearInterval(timer);
  },
};
