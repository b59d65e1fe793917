/** How the audio clock stands to the page's. */
export interface ClockLine {
  /** Takes a look at both at the same instant. */
  readonly see: (audioS: number, pageMs: number) => void;
  /** Audio seconds at an instant of the page; to be asked after a look. */
  readonly audioS: (pageMs: number) => number;
}

/** Clocks of two crystals part by less than a millisecond in this time. */
const KEPT_MS = 10_000;
/** Seen so far behind the audio clock did not lag by a block, but stood: what was seen before counts no more. */
const STOOD_S = 0.08;

/**
 * The audio clock stands between two blocks of the device (3 to 25 ms) and is therefore seen behind, never ahead: one look
 * would set sounds early by as much, now more, now less. The most advanced of the last looks is the clock.
 */
export const createClockLine = (): ClockLine => {
  let seen: readonly { readonly pageMs: number; readonly aheadS: number }[] = [];
  return {
    see: (audioS, pageMs) => {
      const aheadS = audioS - pageMs / 1000;
      const most = Math.max(...seen.map((s) => s.aheadS));
      const stood = aheadS < most - STOOD_S;
      seen = [...(stood ? [] : seen.filter((s) => s.pageMs > pageMs - KEPT_MS)), { pageMs, aheadS }];
    },
    audioS: (pageMs) => pageMs / 1000 + Math.max(...seen.map((s) => s.aheadS)),
  };
};
