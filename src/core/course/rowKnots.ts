import { chanceOf } from '../units/chance.ts';
import { GRID, type KnotEvidence, knotEvidence, type StepLaw } from './knotEvidence.ts';
import { best, drawn, sweep } from './knots.ts';
import type { PointRow } from './pointRow.ts';
import { at, type Polyline, type Run } from './runs.ts';
import { anyLaw, lawOf } from './stepLaw.ts';

/**
 * The knots of a row of points, and how long the way between its points is. The most probable line is sought, then lines
 * are drawn as they are probable, and lengths are their means: one line alone, however good, has some corner on the
 * wrong side of a point.
 */

/** Rounds of finding knots and learning how long steps are; sweeps in each. */
const ROUNDS = 2;
const SWEEPS = 3;
/** Lines drawn, and those before them that do not count; fewer where there are many points, so that work is bounded. */
const DRAWN = 120;
const NOT_COUNTED = 40;
const FEWEST_DRAWN = 20;
const POINTS_OF_ALL = 1200;
/** Every third sweep is a coarse one: it costs five fine ones. */
const COARSE_EVERY = 3;

/** Knots where one run ends and the next begins, at least two steps apart. */
const knotsOf = (row: PointRow, runs: readonly Run[]): number[] => {
  const end = GRID * (row.step.at(-1) as number);
  const knots = [0];
  for (const run of runs.slice(1)) {
    const i = Math.max(0, run.from - 1);
    const x = Math.round(GRID * (((row.step[i] as number) + (row.step[Math.max(0, i - 1)] as number)) / 2));
    if (x - (knots.at(-1) as number) >= 2 * GRID && end - x >= 2 * GRID) knots.push(x);
  }
  return [...knots, end];
};

/** Metres from the row's first point to each of its points along the broken line. */
const lengthsAt = (row: PointRow, knots: readonly number[], evidence: KnotEvidence): Float64Array => {
  const { eastM, northM } = evidence.places(knots);
  let k = 0;
  let beforeM = 0;
  const streetM = () => Math.hypot(at(eastM, k + 1) - at(eastM, k), at(northM, k + 1) - at(northM, k));
  let hereM = streetM();
  return Float64Array.from(row.step, (step) => {
    while (k < knots.length - 2 && (knots[k + 1] as number) <= step * GRID) {
      beforeM += hereM;
      k++;
      hereM = streetM();
    }
    const [x, y] = [knots[k] as number, knots[k + 1] as number];
    return beforeM + (hereM * (step * GRID - x)) / (y - x);
  });
};

export interface RowKnots {
  /** Of the most probable line that was drawn, in parts of a step. */
  readonly knots: readonly number[];
  readonly law: StepLaw;
  /** Where its corners are, m. */
  readonly places: Pick<Polyline, 'eastM' | 'northM'>;
  /** Metres from the row's first point to each of its points, mean of the lines drawn. */
  readonly lengthM: Float64Array;
}

/**
 * @param runs straight runs of the line of which the row leaves out the first point and the last
 * @param stepM the usual way from one point to the next
 */
export const rowKnots = (row: PointRow, runs: readonly Run[], sigmaM: number, stepM: number): RowKnots => {
  let knots = knotsOf(row, runs);
  const evidence = knotEvidence(row, sigmaM, (row.step.at(-1) as number) / (knots.length - 1));
  let law = anyLaw(stepM);
  for (let round = 0; round < ROUNDS; round++) {
    evidence.obey(law);
    for (let i = 0; i < SWEEPS; i++) {
      knots = sweep(evidence, knots, { coarse: true, phase: i, choose: best, seeks: true });
      knots = sweep(evidence, knots, { coarse: false, phase: (i * GRID) / 2, choose: best, seeks: true });
    }
    law = lawOf(evidence, knots, law);
  }
  evidence.obey(law);
  // The same line is always laid the same way.
  const chance = chanceOf(row.step.length);
  const choose = drawn(chance);
  const sumM = new Float64Array(row.step.length);
  const count = Math.max(
    FEWEST_DRAWN,
    Math.min(DRAWN, Math.round((DRAWN * POINTS_OF_ALL) / row.step.length)),
  );
  let state = knots;
  let least = Number.POSITIVE_INFINITY;
  for (let i = -NOT_COUNTED; i < count; i++) {
    const phase = Math.floor(GRID * chance.uniform());
    state = sweep(evidence, state, { coarse: i % COARSE_EVERY === 0, phase, choose, seeks: false });
    if (i < 0) continue;
    const cost = evidence.cost(state);
    if (cost < least) [least, knots] = [cost, state];
    lengthsAt(row, state, evidence).forEach((m, j) => {
      sumM[j] = at(sumM, j) + m;
    });
  }
  return { knots, law, places: evidence.places(knots), lengthM: sumM.map((m) => m / count) };
};
