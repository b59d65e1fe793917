import { message } from '../../units/message.ts';
import { PRACTICE, read, type Source } from '../source.ts';

/**
 * What is known about the error of a prediction, as standard deviations of the logarithm of the time
 * (0.03 = about 3 %). The figures that no source gives are set wide, and say so.
 */

/**
 * How much one runner's time varies from race to race, all else equal.
 * Hopkins & Hewson 2001 gives about 2.5 to 3 % for road races of half-marathon length and over [recalled, not checked].
 */
export const DAY_SD_LOG = 0.03;

/**
 * How much runners differ in how they slow with distance, per e-fold of distance: the exponent's own spread.
 * Set so that a marathon predicted from a half comes out with the root mean square error of the better models
 * in Vickers & Vertosick 2016 (n = 2303): sqrt(208) = 14 min on a marathon of about four hours.
 */
export const FALL_OFF_SD = 0.05;

/** A result says less the older it is: 1 % after a month, growing with the square root (common practice, no source). */
const AGE_SD_LOG_PER_ROOT_MONTH = 0.01;
const DAYS_PER_MONTH = 30;
/** Age taken for a result whose age was not given. */
const UNKNOWN_AGE_DAYS = 90;

/** Standard deviation of one result about what the runner can do now. */
export const resultSdLog = (daysAgo: number | null): number => {
  const months = (daysAgo ?? UNKNOWN_AGE_DAYS) / DAYS_PER_MONTH;
  return Math.hypot(DAY_SD_LOG, AGE_SD_LOG_PER_ROOT_MONTH * Math.sqrt(months));
};

/** What the range says about itself, for the line beneath it. */
export const RANGE_EVIDENCE: readonly Source[] = [
  read(
    message(
      'Vickers and Vertosick 2016, 2303 runners: the usual formula is about right up to the half marathon, and at least 10 minutes too fast for half of recreational marathoners; the better models were still off by about 14 minutes (root mean square)',
    ),
  ),
  {
    ...PRACTICE,
    text: message(
      'Width from race-day variation of about 3 %, differences between runners and the age of the result: our own figures, set wide',
    ),
  },
];
