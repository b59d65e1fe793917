import { parseJson } from './json.ts';
import { withField } from './planReceiver.ts';
import { fields, numberThat, orElse } from './shape.ts';

/**
 * What was believed of the runner when a race began, out of their own kept races, kept in its plan file as a field of
 * ours, so that the log folds to the same calls ever after: `"runner": { "fadeMore": 0.01, "wanderSd": 0.02, "races": 3 }`.
 * What the numbers mean: core/drift/ownManner.ts.
 */
export interface PlanRunner {
  readonly fadeMore: number;
  readonly wanderSd: number;
  readonly races: number;
}

const runner = fields<PlanRunner>({
  fadeMore: numberThat('a share, -0.2 to 0.2', (n) => Math.abs(n) <= 0.2),
  wanderSd: numberThat('a share, 0.001 to 0.2', (n) => n >= 0.001 && n <= 0.2),
  races: numberThat('a count, 1 to 1000', (n) => Number.isInteger(n) && n >= 1 && n <= 1000),
});

/** Null where the file has none, or none that makes sense. */
export const runnerOf = (planFile: string): PlanRunner | null => {
  const got = parseJson(planFile, (value) => fields({ runner: orElse(runner, null) })(value, ''));
  return got.ok ? got.value.runner : null;
};

/** The same file with what is believed of the runner in it. */
export const withRunner = (planFile: string, believed: PlanRunner | null): string => {
  if (believed === null) return planFile;
  const { fadeMore, wanderSd, races } = believed;
  return withField(planFile, 'runner', { fadeMore, wanderSd, races });
};
