import { M_PER_KM } from '../units/units.ts';

/** What noise there is in a rate (schedule seconds passed per second) that comes from the estimate's speed. */
export interface RateNoise {
  /** Power per second of averaging: the mean over `t` seconds has the variance `power / t`. */
  readonly power: number;
  /** The estimate's lag behind the runner, seconds. */
  readonly lagS: number;
  /** Variance of the rate of one instant about what the estimate follows. */
  readonly variance: number;
}

/** The estimate's own belief in how fast a speed changes, (m/s)² per second: leads from its deviation to the noise behind. */
const SPEED_WALK = 2.6e-4;

/**
 * The noise behind an estimate that knows the speed to `speedSdMps`. A filter that follows a walk of power q in white
 * noise of power r settles at the variance √(q r), with a lag of √(r/q).
 */
export const rateNoise = (speedSdMps: number, paceSPerKm: number): RateNoise => {
  const variance = ((speedSdMps * paceSPerKm) / M_PER_KM) ** 2;
  const lagS = speedSdMps ** 2 / SPEED_WALK;
  // Half of the variance is noise; the other half is what it cannot follow.
  return { power: lagS * variance, lagS, variance: variance / 2 };
};
