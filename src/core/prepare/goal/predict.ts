import { type Message, message } from '../../units/message.ts';
import { Z_FOUR_FIFTHS, Z_HALF } from '../normal.ts';
import type { Source } from '../source.ts';
import { DAY_SD_LOG, FALL_OFF_SD, RANGE_EVIDENCE, resultSdLog } from './error.ts';
import { FORMULAS, type FormulaName, formulas, RIEGEL_FITTED_S } from './formulas.ts';
import type { RaceResult } from './raceResult.ts';
import { WEEKLY_DISTANCE_SOURCES, weeklyDistanceLog } from './weeklyDistance.ts';

/** A span of times, seconds. */
export interface TimeRange {
  readonly quickS: number;
  readonly slowS: number;
}

/** What the results say about a distance. */
export interface Prediction {
  readonly distanceM: number;
  /** As likely to be beaten as missed. */
  readonly middleS: number;
  /** Standard deviation of the logarithm of the time: 0.05 is about 5 %. */
  readonly sdLog: number;
  /** Half of all runners with such results finish in here. */
  readonly likely: TimeRange;
  /** Four in five do. */
  readonly wide: TimeRange;
  /** What each formula makes of each result, before any correction. */
  readonly byResult: readonly {
    readonly result: RaceResult;
    readonly timesS: Readonly<Record<FormulaName, number>>;
    /** Per cent added for weekly distance and marathon experience; 0 or more. */
    readonly addedPercent: number;
  }[];
  /** What the reader must know about this very prediction. */
  readonly notes: readonly Message[];
  /** What the range and the corrections rest on; the formulas' own sources stand in formulas.ts. */
  readonly sources: readonly Source[];
}

const meanOf = (xs: readonly number[]): number => xs.reduce((sum, x) => sum + x, 0) / xs.length;

/** One result's view of the target: mean and spread of the formulas' logarithms, distance in e-folds, weight. */
const viewOf = (result: RaceResult, toM: number, weeklyKm: number | null) => {
  const timesS = Object.fromEntries(
    FORMULAS.map((name) => [name, formulas[name].timeS(result.distanceM, result.timeS, toM)]),
  ) as Record<FormulaName, number>;
  const logs = FORMULAS.map((name) => Math.log(timesS[name]));
  const mean = meanOf(logs);
  const added = weeklyDistanceLog(result.distanceM, toM, weeklyKm);
  return {
    result,
    timesS,
    addedPercent: 100 * Math.expm1(added),
    logS: mean + added,
    formulaVar: meanOf(logs.map((l) => (l - mean) ** 2)),
    folds: Math.log(toM / result.distanceM),
    sdLog: resultSdLog(result.daysAgo),
  };
};

type View = ReturnType<typeof viewOf>;

/**
 * Weighted least squares for x (log time today) and k (how much more than the formulas this runner slows, per e-fold):
 * log time of view i = x - k folds_i + noise, with k ~ N(0, FALL_OFF_SD^2). Results over several distances thus
 * teach the runner's own fall-off, and results of one distance do not pretend to.
 */
const leastSquares = (views: readonly View[]) => {
  let [w, wf, wff, wy, wfy] = [0, 0, 1 / FALL_OFF_SD ** 2, 0, 0];
  for (const v of views) {
    const weight = 1 / v.sdLog ** 2;
    w += weight;
    wf += weight * v.folds;
    wff += weight * v.folds ** 2;
    wy += weight * v.logS;
    wfy += weight * v.folds * v.logS;
  }
  const determinant = w * wff - wf * wf;
  return {
    x: (wff * wy - wf * wfy) / determinant,
    k: (wf * wy - w * wfy) / determinant,
    variance: wff / determinant,
  };
};

/** A result this many standard deviations from what the others say is pointed out. */
const DISAGREE_SD = 2;
/** Results older than this say little (common practice, no source). */
const OLD_DAYS = 180;
/** Further than this ratio of distances, every formula is a guess (common practice, no source). */
const FAR_RATIO = 3;

const notesOf = (views: readonly View[], x: number, k: number): readonly Message[] => {
  const notes: Message[] = [];
  const apart = views.some((v) => Math.abs(v.logS - (x - k * v.folds)) > DISAGREE_SD * v.sdLog);
  if (apart)
    notes.push(
      message('Your results point to different times. Leave out any that you did not race all out.'),
    );
  if (views.every((v) => (v.result.daysAgo ?? 0) > OLD_DAYS))
    notes.push(
      message('Your results are more than half a year old. A recent race or time trial would say more.'),
    );
  if (views.every((v) => v.folds > Math.log(FAR_RATIO)))
    notes.push(
      message('This race is much longer than those you gave. A result nearer to its length would say more.'),
    );
  if (Math.exp(x) > RIEGEL_FITTED_S.longest)
    notes.push(
      message('Beyond 3 h 50 min the usual formula was never fitted: take the slow side seriously.'),
    );
  if (views.some((v) => v.addedPercent > 0))
    notes.push(
      message(
        'Slowed on purpose: beyond what you have raced or trained for, most runners slow more than the formulas say.',
      ),
    );
  return notes;
};

/**
 * The time to expect over `toM` metres on a normal day and a flat course, from at least one result (parsed).
 * Range: see error.ts; corrections: see weeklyDistance.ts. `weeklyKm` null = not given.
 */
export const predict = (
  results: readonly [RaceResult, ...RaceResult[]],
  toM: number,
  weeklyKm: number | null,
): Prediction => {
  const views = results.map((result) => viewOf(result, toM, weeklyKm));
  const { x, k, variance } = leastSquares(views);
  const sdLog = Math.sqrt(variance + DAY_SD_LOG ** 2 + meanOf(views.map((v) => v.formulaVar)));
  const middleS = Math.exp(x);
  const range = (z: number): TimeRange => ({
    quickS: Math.exp(x - z * sdLog),
    slowS: Math.exp(x + z * sdLog),
  });
  return {
    distanceM: toM,
    middleS,
    sdLog,
    likely: range(Z_HALF),
    wide: range(Z_FOUR_FIFTHS),
    byResult: views.map(({ result, timesS, addedPercent }) => ({ result, timesS, addedPercent })),
    notes: notesOf(views, x, k),
    sources: [...RANGE_EVIDENCE, ...WEEKLY_DISTANCE_SOURCES],
  };
};
