import { isReckoned, type Moment } from './moment.ts';

/** The runner passing a place of the course: foreseen, or found in arrears. */
export interface Crossing {
  readonly atMs: number;
  /** Since the start line was crossed. */
  readonly ownS: number;
  /** On the clock that the goal is by. */
  readonly goalClockS: number;
  /** Plan's time at the place less the goal clock there. */
  readonly aheadS: number;
  /** Standard deviation of the crossing's instant, and so of all of these. */
  readonly sdS: number;
  /** No usable fix for a while: by dead reckoning. */
  readonly reckoned: boolean;
}

/** Slower than this nobody gets anywhere: a place ahead is not foreseen. */
const STANDING_MPS = 0.3;
/** A place passed is dated back at no less than a walk, so that a runner who stopped behind it did not pass it long ago. */
const WALK_MPS = 1.2;

/** When the runner passes a place, by the speed now; Infinity when standing short of it. */
export const crossingMs = ({ nowMs, progress }: Moment, atM: number): number => {
  const aheadM = atM - progress.distanceM;
  if (aheadM <= 0) return nowMs + (aheadM / Math.max(progress.speedMps, WALK_MPS)) * 1000;
  return progress.speedMps < STANDING_MPS
    ? Number.POSITIVE_INFINITY
    : nowMs + (aheadM / progress.speedMps) * 1000;
};

/** How well the instant of a crossing near by is known. */
export const crossingSdS = ({ progress }: Moment): number =>
  progress.distanceSdM / Math.max(progress.speedMps, WALK_MPS);

/** By dead reckoning a crossing known no better than this is not called: the moment means nothing. */
const HOLD_SD_S = 8;

/**
 * Nobody can tell now when a place is crossed, but fixes to come will. (Where there is no line and so never a better
 * number, there is nothing to wait for.)
 */
export const isAnybodysGuess = (moment: Moment): boolean =>
  isReckoned(moment) && crossingSdS(moment) > HOLD_SD_S;

/** Everything about a crossing that happens at a given instant. */
export const crossingOf = (moment: Moment, atM: number, instantMs: number): Crossing => {
  const { race, startMs, goalZeroMs } = moment;
  const atMs = Math.max(startMs, instantMs);
  const goalClockS = (atMs - goalZeroMs) / 1000;
  return {
    atMs,
    ownS: (atMs - startMs) / 1000,
    goalClockS,
    aheadS: race.schedule.timeAtS(atM) - goalClockS,
    sdS: crossingSdS(moment),
    reckoned: isReckoned(moment),
  };
};

export const crossingAt = (moment: Moment, atM: number): Crossing =>
  crossingOf(moment, atM, crossingMs(moment, atM));
