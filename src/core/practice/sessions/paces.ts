import { riegelS } from '../../prepare/goal/formulas.ts';

/**
 * Paces of practice from the goal of a race. Threshold pace is the one a trained runner can hold for about an hour; at
 * about half-marathon pace it is a little easier, and for runners of an hour and a half or more it is near enough the
 * same (common practice, no source). Computed by the same formula that predicts races, so a goal over any distance
 * gives the same paces.
 */
export interface PracticePaces {
  /** The race's own pace. */
  readonly goalSPerKm: number;
  /** What the same runner can hold for about an hour. */
  readonly thresholdSPerKm: number;
  /** What they would race a half marathon in. */
  readonly halfSPerKm: number;
  /** Quick enough to run, slow enough to talk: a guess from the goal, for the plan's clock alone. */
  readonly easySPerKm: number;
}

const HALF_M = 21_097.5;
const HOUR_S = 3600;
/** Easy running is a quarter slower than the pace of an hour (common practice, no source). */
const EASY_SHARE = 1.25;

/** The distance that takes an hour, by halving. */
const hourM = (distanceM: number, goalS: number): number => {
  let [low, high] = [1000, 60_000];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (riegelS(distanceM, goalS, middle) < HOUR_S) low = middle;
    else high = middle;
  }
  return low;
};

export const practicePaces = (distanceM: number, goalS: number): PracticePaces => {
  const thresholdSPerKm = (1000 * HOUR_S) / hourM(distanceM, goalS);
  return {
    goalSPerKm: (1000 * goalS) / distanceM,
    thresholdSPerKm,
    halfSPerKm: (1000 * riegelS(distanceM, goalS, HALF_M)) / HALF_M,
    easySPerKm: EASY_SHARE * thresholdSPerKm,
  };
};
