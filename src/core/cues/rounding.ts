import { type DistanceUnit, pacePer } from '../units/units.ts';
import type { Ahead, Pace } from './saying.ts';

/**
 * Seconds ahead or behind are said in one of these steps, the smallest that is not below the standard deviation: about
 * two times in three the truth lies within a step of what was said, and a finer number would be made up.
 */
const AHEAD_STEPS_S = [1, 2, 5, 10, 30, 60] as const;
/** Times of day and finishes: every number on a clock face is as good as another, so the steps are the clock's own. */
const TIME_STEPS_S = [1, 5, 10, 30, 60] as const;
/** A time to the second claims less than a drift to the second: nobody hears 21:12 as a promise of the half second. */
const TIME_SLACK = 2.5;
/** A forecast is heard as one, but it is acted upon. */
const FORECAST_SLACK = 1.25;
/** Longest time there are words for: 9:59:59. */
const LONGEST_S = 35_999;
/** The side is named only when it is right nine times in ten; else it is 'on plan'. */
const SIDE_Z = 1.2816;
/** Below this many standard deviations a number is 'about'. */
const SURE_Z = 2;
/** 'On plan' is 'about on plan' when it may hide more than this. */
const SURE_EVEN_SD_S = 3;
/** From here on whole minutes are said. */
const MINUTES_FROM_S = 600;
/** Nobody needs to hear more. */
const MOST_AHEAD_S = 99 * 60;

const stepFor = (steps: readonly number[], sdS: number): number =>
  steps.find((step) => step >= sdS) ?? (steps.at(-1) as number);

const roundTo = (value: number, step: number): number => Math.round(value / step) * step;

/**
 * Drift as it may be said.
 * @param reckoned no fixes carry it: the number is never 'sure'
 * @returns whole seconds up to 600, whole minutes up to 5940 from there
 */
export const aheadFor = (aheadS: number, sdS: number, reckoned = false): Ahead => {
  const size = Math.abs(aheadS);
  const sdStep = stepFor(AHEAD_STEPS_S, sdS);
  const rounded = roundTo(size, sdStep);
  const seconds = Math.min(MOST_AHEAD_S, rounded > MINUTES_FROM_S ? roundTo(size, 60) : rounded);
  if (size < SIDE_Z * sdS || seconds === 0)
    return { side: 'even', seconds: 0, sure: !reckoned && sdS <= SURE_EVEN_SD_S };
  return { side: aheadS > 0 ? 'up' : 'down', seconds, sure: !reckoned && size >= SURE_Z * sdS };
};

const timeIn = (timeS: number, stepS: number): number =>
  Math.min(LONGEST_S, Math.max(0, roundTo(timeS, stepS)));

/** A time that was taken, as it may be said: whole seconds in steps that the uncertainty allows, 0 to 9:59:59. */
export const timeFor = (timeS: number, sdS: number): number =>
  timeIn(timeS, stepFor(TIME_STEPS_S, sdS / TIME_SLACK));

/** A time that is foreseen, as it may be said; the same range. */
export const forecastFor = (timeS: number, sdS: number): number =>
  timeIn(timeS, stepFor(TIME_STEPS_S, sdS / FORECAST_SLACK));

/** A planned pace in whole seconds per unit, 60 to 3599. */
export const paceFor = (paceSPerKm: number, unit: DistanceUnit): Pace => ({
  sPerUnit: Math.min(3599, Math.max(60, Math.round(pacePer(unit, paceSPerKm)))),
  unit,
});

/** Seconds per unit are asked for in these steps; coarser ones would miss by more than what is not known. */
const BY_STEPS_S = [1, 2, 5] as const;
/** In the open a size is known to 2.4 s/km: in twos, the rounding adds nothing to that. */
const BY_SLACK = 1.25;
/** More is not asked for at once. */
const BY_MOST_S = 100;

/** How much quicker or slower, whole seconds per unit, 1 to 100. */
export const byFor = (byS: number, sdS: number): number => {
  const step = stepFor(BY_STEPS_S, sdS / BY_SLACK);
  return Math.min(BY_MOST_S, Math.max(step, roundTo(byS, step)));
};
