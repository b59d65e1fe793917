import type { Moment } from './moment.ts';

/** The runner passing a place of the course: foreseen, or found in arrears. */
export interface Crossing {
  readonly atMs: number;
  /** Own time there, unrounded. */
  readonly ownS: number;
  /** Plan's time at the place less the goal clock there. */
  readonly aheadS: number;
  /** Standard deviation of the crossing's instant, so of both. */
  readonly sdS: number;
  /** No usable fix for a while: by dead reckoning. */
  readonly reckoned: boolean;
}

/** Slower than this nobody gets anywhere: a place ahead is not foreseen. */
const STANDING_MPS = 0.3;
/** A place passed is dated back at no less than a walk, so that a runner who stopped behind it did not pass it long ago. */
const WALK_MPS = 1.2;
/** How long without a usable fix a number rests on reckoning alone. */
export const RECKONED_AFTER_S = 10;

/** When the runner passes a place, by the speed now; Infinity when standing short of it. */
export const crossingMs = ({ nowMs, progress }: Moment, atM: number): number => {
  const aheadM = atM - progress.distanceM;
  if (aheadM <= 0) return nowMs + (aheadM / Math.max(progress.speedMps, WALK_MPS)) * 1000;
  return progress.speedMps < STANDING_MPS
    ? Number.POSITIVE_INFINITY
    : nowMs + (aheadM / progress.speedMps) * 1000;
};

export const crossingAt = (moment: Moment, atM: number): Crossing => {
  const { race, startMs, goalZeroMs, progress } = moment;
  const atMs = Math.max(startMs, crossingMs(moment, atM));
  return {
    atMs,
    ownS: (atMs - startMs) / 1000,
    aheadS: race.schedule.timeAtS(atM) - (atMs - goalZeroMs) / 1000,
    sdS: progress.distanceSdM / Math.max(progress.speedMps, WALK_MPS),
    reckoned: progress.sinceFixS > RECKONED_AFTER_S,
  };
};
