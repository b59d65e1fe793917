import { normalBelow } from '../units/normal.ts';
import type { Keeping } from './keeping.ts';
import { restsBy, weightsOf } from './manner.ts';

/** How long the rest of a race takes: a mixture of normal distributions, two for each guess at the runner's manner. */
export interface Projection {
  readonly parts: readonly { readonly weight: number; readonly restS: number; readonly sdS: number }[];
  /** Mean and standard deviation of the whole. */
  readonly restS: number;
  readonly sdS: number;
}

/** What is not known of the rest by anything else: a corner, a crowd, a station. */
const LEAST_SD_S = 0.5;
/** Nobody is projected to go slower than this for the rest of a race. */
const LEAST_RATE = 0.2;

/**
 * The rest of the race.
 * @param remainingPlanS schedule seconds that are left
 * @param aheadSdS how well the place is known, in seconds
 */
export const projectRest = (keeping: Keeping, remainingPlanS: number, aheadSdS: number): Projection => {
  const weights = weightsOf(keeping.manners);
  const parts = keeping.manners.flatMap((manner, i) =>
    restsBy(manner, Math.max(0, remainingPlanS)).map(({ share, rate, sdS }) => {
      const atRate = Math.max(LEAST_RATE, rate);
      return {
        weight: share * (weights[i] ?? 0),
        restS: remainingPlanS / atRate,
        sdS: Math.hypot(sdS / atRate, aheadSdS, LEAST_SD_S),
      };
    }),
  );
  const restS = parts.reduce((sum, p) => sum + p.weight * p.restS, 0);
  const variance = parts.reduce((sum, p) => sum + p.weight * (p.sdS ** 2 + (p.restS - restS) ** 2), 0);
  return { parts, restS, sdS: Math.sqrt(variance) };
};

/** Probability that the rest takes no longer than `leftS`. */
export const chanceWithin = ({ parts }: Projection, leftS: number): number =>
  parts.reduce((sum, p) => sum + p.weight * normalBelow((leftS - p.restS) / p.sdS), 0);
