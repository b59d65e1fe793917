/**
 * How the clock of a rehearsal runs against the clock of the page. Between calls the race runs at `rate`; while a call
 * sounds it runs at true speed. So every call is heard as on the day, and none can overlap at any rate.
 */
export interface TapeClock {
  /** An instant on both clocks, ms. */
  readonly engineMs: number;
  readonly pageMs: number;
  /** Engine seconds for a page second, between calls; 0 = paused. */
  readonly rate: number;
  /** When calls sound, engine ms, ascending and apart. */
  readonly calls: readonly { readonly startMs: number; readonly endMs: number }[];
}

interface Stretch {
  readonly untilMs: number;
  readonly rate: number;
}

/** The stretches of constant rate from the anchor on; the last one has no end. */
const stretchesOf = (clock: TapeClock): Stretch[] => {
  const stretches: Stretch[] = [];
  for (const call of clock.calls) {
    if (call.endMs <= clock.engineMs) continue;
    stretches.push(
      { untilMs: call.startMs, rate: clock.rate },
      { untilMs: call.endMs, rate: Math.min(1, clock.rate) },
    );
  }
  stretches.push({ untilMs: Number.POSITIVE_INFINITY, rate: clock.rate });
  return stretches;
};

/** What the race clock shows at an instant of the page, not before the anchor. */
export const engineAtMs = (clock: TapeClock, pageMs: number): number => {
  let engineMs = clock.engineMs;
  let leftMs = Math.max(0, pageMs - clock.pageMs);
  if (clock.rate === 0) return engineMs;
  for (const { untilMs, rate } of stretchesOf(clock)) {
    const lengthMs = Math.max(0, untilMs - engineMs);
    if (leftMs * rate <= lengthMs) return engineMs + leftMs * rate;
    engineMs += lengthMs;
    leftMs -= lengthMs / rate;
  }
  return engineMs;
};

/** When the page will see an instant of the race; Infinity while paused, unless it is now or past. */
export const pageAtMs = (clock: TapeClock, engineMs: number): number => {
  let atMs = clock.engineMs;
  let pageMs = clock.pageMs;
  if (engineMs <= atMs) return pageMs;
  if (clock.rate === 0) return Number.POSITIVE_INFINITY;
  for (const { untilMs, rate } of stretchesOf(clock)) {
    const toMs = Math.min(untilMs, engineMs);
    if (toMs > atMs) {
      pageMs += (toMs - atMs) / rate;
      atMs = toMs;
    }
    if (engineMs <= untilMs) break;
  }
  return pageMs;
};

/** The same race clock from a new anchor. */
export const anchored = (clock: TapeClock, engineMs: number, pageMs: number): TapeClock => ({
  ...clock,
  engineMs,
  pageMs,
  calls: clock.calls.filter((call) => call.endMs > engineMs),
});

/** Goes on at another rate from an instant of the page. */
export const atRate = (clock: TapeClock, rate: number, pageMs: number): TapeClock => ({
  ...anchored(clock, engineAtMs(clock, pageMs), pageMs),
  rate,
});

/** Makes room for a call. */
export const withCall = (clock: TapeClock, startMs: number, endMs: number): TapeClock => ({
  ...clock,
  calls: [...clock.calls, { startMs, endMs }].sort((a, b) => a.startMs - b.startMs),
});
