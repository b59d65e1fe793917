import type { ReadyMade, ReadyMadeWish } from './readyMade.ts';

/**
 * Weeks that grow one thing at a time, and ease every fourth (common practice, no source). What grows is said, so that
 * a runner sees that it is one.
 */
export interface Week {
  /** 1 for the first. */
  readonly number: number;
  readonly eases: boolean;
  /** What is more than in the week before. */
  readonly grows: 'nothing' | 'threshold' | 'long';
  readonly sessions: readonly { readonly which: ReadyMade; readonly wish: ReadyMadeWish }[];
}

/** The threshold, from its first form to its last: each step a little more than the one before. */
const THRESHOLD_STEPS: readonly { readonly which: ReadyMade; readonly wish: ReadyMadeWish }[] = [
  { which: 'threshold', wish: { thresholdMin: 10 } },
  { which: 'threshold', wish: { thresholdMin: 15 } },
  { which: 'threshold', wish: { thresholdMin: 20 } },
  { which: 'thrice10', wish: {} },
  { which: 'twice15', wish: {} },
  { which: 'twice20', wish: {} },
];
const LONG_STEP_MIN = 10;
const LONG_MOST_MIN = 150;
/** An easy week has about three fifths of the week before. */
const EASE_SHARE = 0.6;

/**
 * @param weeks  how many, 1 to 20
 * @param longMin  the longest run of the last weeks, minutes: the first is no longer
 */
export const progression = (weeks: number, longMin: number): readonly Week[] => {
  let step = 0;
  let long = Math.min(LONG_MOST_MIN, Math.max(45, longMin));
  let growLong = false;
  return Array.from({ length: weeks }, (_, i) => {
    const number = i + 1;
    const eases = number % 4 === 0;
    let grows: Week['grows'] = 'nothing';
    if (!eases && i > 0) {
      const canGrowLong = long + LONG_STEP_MIN <= LONG_MOST_MIN;
      const canGrowThreshold = step < THRESHOLD_STEPS.length - 1;
      grows =
        growLong && canGrowLong ? 'long' : canGrowThreshold ? 'threshold' : canGrowLong ? 'long' : 'nothing';
      if (grows === 'long') long += LONG_STEP_MIN;
      if (grows === 'threshold') step++;
      growLong = grows !== 'long';
    }
    const threshold = THRESHOLD_STEPS[eases ? 0 : step] ?? { which: 'threshold' as const, wish: {} };
    const longToday = eases ? Math.round((EASE_SHARE * long) / 5) * 5 : long;
    return {
      number,
      eases,
      grows,
      sessions: [
        threshold,
        { which: number % 3 === 2 && !eases ? ('openings' as const) : ('easyStrides' as const), wish: {} },
        { which: 'long' as const, wish: { longMin: longToday } },
      ],
    };
  });
};
