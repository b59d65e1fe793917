import { type Chance, chanceOf } from '../../src/core/units/chance.ts';
import { type RunnerModel, STEADY } from '../../src/sensors/simulatedRunner.ts';

/**
 * Fields of runners: nobody runs like the next one, and an interval that is right for a metronome is wrong for everybody
 * else. Sizes from real fields, lower ends where a voice in the ear steadies: the second half of major marathons is slower
 * by 3.4 ± 2.7 % among good men and 2.8 ± 2.1 % among good women (Kais et al. 2019); speed changes by 4.1 % over a half
 * marathon, each part slower than the one before (Nikolaidis et al., Medicina 55 (2019) 14).
 */
export const FIELDS = ['steady', 'wander', 'change late', 'most fade'] as const;
export type Field = (typeof FIELDS)[number];

/** The day's speed is off the plan by this share. */
const DAY_SD = 0.012;
/** By how much the speed has changed at the finish, evenly from a place on. */
const CHANGE_SD = 0.02;
const FADE_MEAN = 0.02;
/** The speed kept up walks by this share in the root of a second. */
const WALK_PER_SQRT_S = 0.0004;
/** Some waver like a clock, some run by feel. */
const WAVER = { least: 0.006, most: 0.02 } as const;
/** The last of it: in four recorded races the last tenth was run 0 to 6 % quicker than the rest. */
const SPURT = { fromShare: 0.95, mean: 0.01, sd: 0.02 } as const;
/** Speeds are laid out in stretches of this length. */
const STRETCH_M = 250;

/** Share of speed more than meant, by how much of the race is run. */
type Shape = (run: number) => number;

/** Evenly from a place to the finish. */
const changing = (from: number, by: number): Shape => {
  return (run) => (run > from ? (by * (run - from)) / (1 - from) : 0);
};

const shapeOf = (field: Field, goalS: number, stepS: number, chance: Chance): Shape => {
  const day = DAY_SD * chance.normal();
  if (field === 'steady') return () => day / 2;
  const spurt = SPURT.mean + SPURT.sd * chance.normal();
  const end: Shape = (run) => (run > SPURT.fromShare ? spurt : 0);
  if (field === 'wander') {
    const walk = [day];
    for (let s = 0; s < 2 * goalS; s += stepS)
      walk.push((walk.at(-1) ?? 0) + WALK_PER_SQRT_S * Math.sqrt(stepS) * chance.normal());
    return (run) => (walk[Math.round((run * goalS) / stepS)] ?? 0) + end(run);
  }
  if (field === 'change late') {
    const change = changing(0.5, CHANGE_SD * chance.normal());
    return (run) => day + change(run) + end(run);
  }
  const from = 0.4 + 0.4 * chance.uniform();
  const change = changing(from, -FADE_MEAN + CHANGE_SD * chance.normal());
  // As much quicker before as the fade costs on average: the field makes the goal half of the time.
  const before = (FADE_MEAN * (1 - from)) / 2;
  return (run) => day + before + change(run) + end(run);
};

/**
 * One of a field.
 * @param goalS how long the plan takes
 */
export const runnerOf = (
  field: Field,
  distanceM: number,
  goalS: number,
  seed: number,
): Partial<RunnerModel> => {
  const chance = chanceOf(seed + 5000);
  const waverShare =
    field === 'steady' ? STEADY.waverShare : WAVER.least + (WAVER.most - WAVER.least) * chance.uniform();
  const shape = shapeOf(field, goalS, (goalS * STRETCH_M) / distanceM, chance);
  const stretches = Array.from({ length: Math.ceil(distanceM / STRETCH_M) }, (_, i) => {
    const fromM = i * STRETCH_M;
    return { fromM, toM: fromM + STRETCH_M, share: shape((fromM + STRETCH_M / 2) / distanceM) };
  });
  return { waverShare, stretches };
};
