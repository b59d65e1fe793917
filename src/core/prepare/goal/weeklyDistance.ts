import { message } from '../../units/message.ts';
import { PRACTICE, read, type Source } from '../source.ts';

/**
 * How much more a runner slows with distance than the formulas say, from the weekly distance.
 * Only ever slows a prediction: many kilometres earn no bonus beyond the formulas.
 */

const HALF_M = 21_097.5;
const TEN_K_M = 10_000;

/**
 * Beyond the half marathon, where no weekly distance is given. Vickers & Vertosick 2016: half of recreational
 * marathoners ran at least 10 min slower than Riegel; 10 min on about four hours is 4.2 %, and ln 1.042 / ln 2 = 0.06.
 */
export const EXTRA_BEYOND_HALF = 0.06;
/** That figure is taken to stand for this weekly distance (common practice, no source). */
const TYPICAL_WEEKLY_KM = 60;
/** Change of the exponent for each weekly kilometre, and its bounds (common practice, no source; kept cautious). */
const EXTRA_PER_WEEKLY_KM = -0.001;
const EXTRA_BOUNDS = { least: 0.02, most: 0.1 };

/** From 10 km to the half the formulas are about right; under this weekly distance a little is added (no source). */
const ENOUGH_FOR_HALF_WEEKLY_KM = 40;
const SHORT_EXTRA_PER_MISSING_KM = 0.001;
const SHORT_EXTRA_MOST = 0.03;

const clamp = (x: number, least: number, most: number): number => Math.min(most, Math.max(least, x));

const beyondHalf = (weeklyKm: number | null): number =>
  weeklyKm === null
    ? EXTRA_BEYOND_HALF
    : clamp(
        EXTRA_BEYOND_HALF + EXTRA_PER_WEEKLY_KM * (weeklyKm - TYPICAL_WEEKLY_KM),
        EXTRA_BOUNDS.least,
        EXTRA_BOUNDS.most,
      );

const upToHalf = (weeklyKm: number | null): number =>
  weeklyKm === null
    ? 0
    : clamp(SHORT_EXTRA_PER_MISSING_KM * (ENOUGH_FOR_HALF_WEEKLY_KM - weeklyKm), 0, SHORT_EXTRA_MOST);

/** How many e-folds of distance from one race to another lie between two marks. */
const foldsBetween = (fromM: number, toM: number, aM: number, bM: number): number =>
  Math.max(0, Math.log(Math.min(toM, bM) / Math.max(fromM, aM)));

/** What to add to the logarithm of a predicted time; 0 or more. `weeklyKm` null = not given. */
export const weeklyDistanceLog = (fromM: number, toM: number, weeklyKm: number | null): number =>
  upToHalf(weeklyKm) * foldsBetween(fromM, toM, TEN_K_M, HALF_M) +
  beyondHalf(weeklyKm) * foldsBetween(fromM, toM, HALF_M, Number.POSITIVE_INFINITY);

export const WEEKLY_DISTANCE_SOURCES: readonly Source[] = [
  read(
    message(
      'Vickers and Vertosick 2016: predictions that know the weekly distance are better; fewer kilometres, slower marathon',
    ),
  ),
  {
    ...PRACTICE,
    text: message(
      'How much a weekly kilometre counts is our own cautious figure (common practice, no source)',
    ),
  },
];
