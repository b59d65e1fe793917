import type { Rival } from './racePlan.ts';

/** Where the rival's schedule is at a place: seconds on the clock of the plan's goal. Clamped to the course. */
export const rivalTimeAtS = (rival: Rival, distanceM: number): number => {
  let before = { atM: 0, timeS: 0 };
  for (const split of rival.splits) {
    if (distanceM <= split.atM) {
      const part = (Math.max(0, distanceM) - before.atM) / (split.atM - before.atM);
      return before.timeS + part * (split.timeS - before.timeS);
    }
    before = split;
  }
  return before.timeS;
};
