/**
 * What the times in a log are worth. Receivers stamp fixes with their own clock, and some of those clocks are wrong; a
 * log without arrival times must still give the engine one clock that never runs backwards.
 */

/** 2001-01-01 in Unix time: some platforms count from there, and some of their browsers hand that through. */
export const EPOCH_2001_MS = 978_307_200_000;
/** GPS counts its weeks in ten bits: an old receiver takes the week for the one 1024 weeks before. */
const WEEK_ROLLOVER_MS = 1024 * 7 * 24 * 3600 * 1000;
/** A log holds one day. */
const SAME_DAY_MS = 2 * 24 * 3600 * 1000;

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const sameDay = (a: number, b: number): boolean => Math.abs(a - b) < SAME_DAY_MS;

/** No receiver gives this many positions a second; ten of them are no accident. */
const MOST_FIXES_PER_S = 100;
const LEAST_STEPS = 10;
const NEARLY_ALL = 0.9;

/** Whether stamps that should be milliseconds are seconds: nearly all of them lie too close behind each other. */
export const countsSeconds = (timestampsMs: readonly number[]): boolean => {
  const inOrder = timestampsMs.toSorted((a, b) => a - b);
  const stepsMs = inOrder.slice(1).map((t, i) => t - (inOrder[i] ?? t));
  const forward = stepsMs.filter((step) => step > 0).sort((a, b) => a - b);
  const nearlyLongestMs = forward[Math.floor(NEARLY_ALL * forward.length)] ?? Number.POSITIVE_INFINITY;
  return forward.length >= LEAST_STEPS && nearlyLongestMs < 1000 / MOST_FIXES_PER_S;
};

/**
 * Times that are just the epoch of 2001 (or 1024 weeks) before the log's others are moved by as much. Where nothing
 * in the log shows it, times are let be: all that counts is that they agree.
 */
export const repairEpoch = (timestampsMs: readonly number[]): number[] => {
  const shifts = [EPOCH_2001_MS, WEEK_ROLLOVER_MS];
  const middle = median(timestampsMs);
  const late = shifts.find((shift) => timestampsMs.some((t) => sameDay(t, middle + shift)));
  const today = middle + (late ?? 0);
  return timestampsMs.map((t) => t + (shifts.find((shift) => sameDay(t + shift, today)) ?? 0));
};

/** A clock set back: so many lines in a row, all so far before the lines above, are not late but on another clock. */
const SET_BACK_LINES = 20;
const SET_BACK_MS = 300_000;

/** Where the device's clock was set back in mid-log, the rest is moved on to where the log was. */
export const undoSetBack = (timestampsMs: readonly number[]): number[] => {
  let shift = 0;
  let latest = Number.NEGATIVE_INFINITY;
  return timestampsMs.map((t, i) => {
    const behind = (x: number): boolean => x + shift < latest - SET_BACK_MS;
    const run = behind(t) ? timestampsMs.slice(i, i + SET_BACK_LINES) : [];
    if (run.length === SET_BACK_LINES && run.every(behind)) shift = latest - t;
    const soon = median(timestampsMs.slice(i, i + WITNESSES));
    if (t <= soon + LATENESS_MS) latest = Math.max(latest, t + shift);
    return t + shift;
  });
};

/** Later lines that must bear a time out, and by how much they may lie before it: fixes arrive late by seconds. */
const WITNESSES = 5;
const LATENESS_MS = 60_000;
/** The last lines have nobody after them: they may be this far on from what went before. */
const LAST_GAP_MS = 3_600_000;

/**
 * Arrival times for timestamps in order of arrival: the latest sane time so far. A time is not sane when most of the
 * lines after it are more than a minute before it: a single stamp from next week must not stop the clock until then.
 * The first line (often a fix from yesterday's cache) is held against what follows on both sides.
 */
export const arrivalTimesMs = (timestampsMs: readonly number[]): number[] => {
  let clock = Number.NEGATIVE_INFINITY;
  return timestampsMs.map((t, i) => {
    const after = timestampsMs.slice(i + 1, i + 1 + WITNESSES);
    const soon = median(after);
    const tooLate = after.length > 1 ? t > soon + LATENESS_MS : t > clock + LAST_GAP_MS && i > 0;
    const tooEarly = i === 0 && t < soon - LAST_GAP_MS;
    if (i === 0 && (tooLate || tooEarly))
      clock = Math.min(...after.filter((a) => Math.abs(a - soon) < LAST_GAP_MS));
    else if (!tooLate) clock = Math.max(clock, t);
    return clock;
  });
};

/**
 * By how much the receiver's clock is ahead of the device's: a fix that came before a press bears an earlier time, unless
 * the two clocks differ. The least lead that any press shows, so that one odd stamp makes none; 0 where presses show none.
 */
const receiverLeadMs = (timestampsMs: readonly number[], pressed: readonly boolean[]): number => {
  let lastFixMs: number | null = null;
  let leadMs = Number.POSITIVE_INFINITY;
  for (const [i, t] of timestampsMs.entries()) {
    if (!pressed[i]) lastFixMs = t;
    else if (lastFixMs !== null) leadMs = Math.min(leadMs, Math.max(0, lastFixMs - t));
  }
  return leadMs < LATENESS_MS ? leadMs : 0;
};

/**
 * The receiver's stamps on the clock of the device, which presses bear: the lead taken off, and no stamp later than the
 * press after it. Own clock 0 is a press; a stamp some seconds wrong before it must not move it.
 * @param pressed  which lines bear the device's own time
 */
export const onDeviceClock = (timestampsMs: readonly number[], pressed: readonly boolean[]): number[] => {
  const leadMs = receiverLeadMs(timestampsMs, pressed);
  let nextPressMs = Number.POSITIVE_INFINITY;
  return timestampsMs
    .toReversed()
    .map((t, k) => {
      if (pressed[timestampsMs.length - 1 - k]) {
        nextPressMs = t;
        return t;
      }
      const overMs = t - leadMs - nextPressMs;
      return overMs > 0 && overMs < LATENESS_MS ? nextPressMs : t - leadMs;
    })
    .reverse();
};
