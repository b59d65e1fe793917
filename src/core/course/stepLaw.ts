import { GRID, type KnotEvidence, type StepLaw } from './knotEvidence.ts';

/** Before anything is known: steps are alike to so much of a street's length. */
export const anyLaw = (stepM: number): StepLaw => ({ stepM, moreM: 0, sdM: 0.01, share: 0.04 });

/** What streets' lengths may stray by, tried one with another: m, and as a share of the length. */
const STRAYS_M = [0.3, 0.6, 1.2, 2.4, 4.8];
const STRAY_SHARES = [0.002, 0.01, 0.03];
/** Shorter streets tell more of the shake than of the steps. */
const LEAST_STEPS = 3;
const LEAST_STREETS = 8;

/**
 * The law that the streets of a line keep: length over steps by regression, and of several strays the most probable
 * (empirical Bayes).
 */
export const lawOf = (evidence: KnotEvidence, knots: readonly number[], known: StepLaw): StepLaw => {
  const { eastM, northM } = evidence.places(knots);
  const streets = knots.slice(1).flatMap((y, k) => {
    const steps = (y - (knots[k] as number)) / GRID;
    const [e, n] = [eastM, northM].map((at) => (at[k + 1] as number) - (at[k] as number)) as [number, number];
    return steps < LEAST_STEPS ? [] : [{ steps, lengthM: Math.hypot(e, n) }];
  });
  if (streets.length < LEAST_STREETS) return known;
  const meanOf = (f: (s: (typeof streets)[number]) => number) =>
    streets.reduce((sum, s) => sum + f(s), 0) / streets.length;
  const [steps, lengthM] = [meanOf((s) => s.steps), meanOf((s) => s.lengthM)];
  const spread = meanOf((s) => (s.steps - steps) ** 2);
  if (spread === 0) return known;
  const stepM = meanOf((s) => (s.steps - steps) * (s.lengthM - lengthM)) / spread;
  const laws = STRAYS_M.flatMap((sdM) =>
    STRAY_SHARES.map((share): StepLaw => ({ stepM, moreM: lengthM - stepM * steps, sdM, share })),
  );
  const costs = laws.map((law) => {
    evidence.obey(law);
    return evidence.cost(knots);
  });
  return laws[costs.indexOf(Math.min(...costs))] ?? known;
};
