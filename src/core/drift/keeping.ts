import type { Progress } from '../estimate/progress.ts';
import type { Schedule } from '../plan/schedule.ts';
import { M_PER_KM } from '../units/units.ts';

/**
 * How the runner keeps the schedule over the last minutes: schedule seconds passed for each second of the clock. 1 is on
 * plan, above 1 quicker. Hills, the opening and the push are in the schedule, so they do not move it.
 */
export interface Keeping {
  /** Mean over the memory below. */
  readonly rate: number;
  /** Seconds of running that it rests on, the belief before the start counted as BELIEF_S. */
  readonly weightS: number;
}

/** How long the past counts: a few kilometres, so that a slow station is forgotten and a fade is seen. */
const MEMORY_S = 300;
/** Before anything is seen the runner is believed to do what they planned, with the weight of the first minute. */
const BELIEF_S = 60;

export const beginKeeping: Keeping = { rate: 1, weightS: BELIEF_S };

/** Schedule seconds passed per second at the runner's speed now. */
export const rateNow = (schedule: Schedule, progress: Progress): number =>
  (schedule.paceAtSPerKm(progress.distanceM) / M_PER_KM) * progress.speedMps;

/** Takes in a stretch of `dtS` seconds at a rate. */
export const keepOn = (keeping: Keeping, rate: number, dtS: number): Keeping => {
  const weightS = Math.min(MEMORY_S, keeping.weightS + dtS);
  return { rate: keeping.rate + ((rate - keeping.rate) * dtS) / weightS, weightS };
};
