import { parseJson } from './json.ts';
import { withField } from './planReceiver.ts';
import { fields, numberThat, orElse } from './shape.ts';

/**
 * What was believed of the foot pod when a run began, kept in its plan file as a field of ours, so that the log folds to
 * the same calls ever after: `"footPod": { "factor": 0.97, "slope": -0.04, "factorVar": 4e-5, "slopeVar": 1e-4, "covar": 0 }`.
 * What the numbers mean: core/estimate/podScale.ts.
 */
export interface PlanPod {
  readonly factor: number;
  readonly slope: number;
  readonly factorVar: number;
  readonly slopeVar: number;
  readonly covar: number;
}

const variance = numberThat('a variance, up to 0.1', (n) => n > 0 && n <= 0.1);

const podFields = fields<PlanPod>({
  factor: numberThat('a factor, 0.7 to 1.4', (n) => n >= 0.7 && n <= 1.4),
  slope: numberThat('a share, -0.5 to 0.5', (n) => Math.abs(n) <= 0.5),
  factorVar: variance,
  slopeVar: variance,
  covar: numberThat('a covariance', (n) => Math.abs(n) <= 0.1),
});

/** A pod's scale of a value as JSON gives it; null where it makes no sense. */
export const readPod = (value: unknown): PlanPod | null => {
  const got = podFields(value, '');
  return got.ok && got.value.covar ** 2 <= got.value.factorVar * got.value.slopeVar ? got.value : null;
};

/** Null where the file has none, or none that makes sense. */
export const footPodOf = (planFile: string): PlanPod | null => {
  const got = parseJson(planFile, (value) => fields({ footPod: orElse(podFields, null) })(value, ''));
  return got.ok && got.value.footPod !== null ? readPod(got.value.footPod) : null;
};

/** The same file with what is believed of the pod in it. */
export const withFootPod = (planFile: string, believed: PlanPod | null): string => {
  if (believed === null) return planFile;
  const { factor, slope, factorVar, slopeVar, covar } = believed;
  return withField(planFile, 'footPod', { factor, slope, factorVar, slopeVar, covar });
};
