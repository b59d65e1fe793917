import { chanceOf } from '../units/chance.ts';
import { type Corner, cornerAt, cornerDoubtM2, foot } from './corners.ts';
import { GRID, type KnotEvidence, knotEvidence } from './knotEvidence.ts';
import { best, drawn, sweep } from './knots.ts';
import { cornersOf, type Meeting, type Vertex } from './lay.ts';
import { type PointRow, pointRow } from './pointRow.ts';
import { at, type Polyline, type Run } from './runs.ts';
import { anyLaw, lawOf } from './stepLaw.ts';

/**
 * Lays a line whose points a tool set at even steps along the way: which step of the way a point is tells how far along its
 * street it lies, besides where the street runs. Streets and corners are found together as a broken line with free
 * knots; the lengths of its streets are means over many such lines, drawn as they are probable, since one alone,
 * however good, has some corner on the wrong side of a point. On simulated city streets with 1.5 m of shake and every
 * other point left out that leaves 2.4 m RMS of error along the course where runs and crossings alone leave 3.1.
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
/** A last step that is shorter than the row's by more than so many standard deviations was cut. */
const CUT_SDS = 2.5;
/** Points further off than the shake alone would have them by this factor: no broken line, or no even steps. */
const WORST_FIT = 1.4;

/**
 * What the crossing and the steps leave of a corner's doubt apart is less when streets are found together, and a street
 * is held aside by its neighbours: by these factors the stated deviation holds 94 to 98 % of the time and the error is
 * least (12 simulated city courses, open sky and streets); the rest of the doubt is spread along the way.
 */
const LEFT_TOGETHER = 0.5;
const ASIDE_TOGETHER = 0.07;
const DOUBT_M2_PER_M = 1 / 1000;

export interface RowLaid {
  readonly vertices: readonly Vertex[];
  readonly corners: readonly Corner[];
  /** Variance of length along the way, m² per m. */
  readonly doubtM2PerM: number;
}

/** Knots where one run ends and the next begins, at least two steps apart. */
const knotsOf = (row: PointRow, runs: readonly Run[], end: number): number[] => {
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

/** A value given at the points, at a place between them. */
const valueAt = (row: PointRow, values: ArrayLike<number>, x: number): number => {
  let [low, high] = [0, row.step.length - 1];
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if ((row.step[mid] as number) * GRID <= x) low = mid;
    else high = mid;
  }
  const [a, b] = [row.step[low] as number, row.step[high] as number];
  const share = (x / GRID - a) / (b - a);
  return (values[low] as number) * (1 - share) + (values[high] as number) * share;
};

const found = (row: PointRow, start: readonly number[], evidence: KnotEvidence, stepM: number) => {
  let knots = start;
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
  let [state, least] = [knots, evidence.cost(knots)];
  for (let i = -NOT_COUNTED; i < count; i++) {
    const phase = Math.floor(GRID * chance.uniform());
    state = sweep(evidence, state, { coarse: i % COARSE_EVERY === 0, phase, choose, seeks: false });
    const cost = evidence.cost(state);
    if (cost < least) [least, knots] = [cost, state];
    if (i >= 0)
      lengthsAt(row, state, evidence).forEach((m, j) => {
        sumM[j] = at(sumM, j) + m;
      });
  }
  return { knots, law, lengthM: sumM.map((m) => m / count) };
};

/**
 * @param runs the line's straight runs, to begin with; `stepM` the usual way from one point to the next
 * @returns null where the points do not lie on such a line
 */
export const layRow = (
  line: Polyline,
  runs: readonly Run[],
  sigmaM: number,
  stepM: number,
): RowLaid | null => {
  const last = line.eastM.length - 1;
  // The first step and the last are cut where the course begins and ends.
  const row = pointRow({ eastM: line.eastM.subarray(1, last), northM: line.northM.subarray(1, last) }, stepM);
  const end = (row.step.at(-1) as number) * GRID;
  const start = knotsOf(row, runs, end);
  const evidence = knotEvidence(row, sigmaM, end / GRID / (start.length - 1));
  const { knots, law, lengthM } = found(row, start, evidence, stepM);
  const { eastM, northM } = evidence.places(knots);
  const order = row.step.map((_, i) => i);
  const indexOf = (x: number): number => 1 + valueAt(row, order, x);

  const streets = knots.slice(1).map((y, k) => {
    const x = knots[k] as number;
    const [e, n] = [at(eastM, k + 1) - at(eastM, k), at(northM, k + 1) - at(northM, k)];
    const laidM = Math.hypot(e, n) || 1e-6;
    const from = Math.ceil(indexOf(x));
    const to = k === knots.length - 2 ? last - 1 : Math.ceil(indexOf(y)) - 1;
    const run: Run = {
      from,
      to: Math.max(from, to),
      eastM: at(eastM, k) + e / 2,
      northM: at(northM, k) + n / 2,
      dirE: e / laidM,
      dirN: n / laidM,
    };
    return { x, y, e, n, run, addM: valueAt(row, lengthM, y) - valueAt(row, lengthM, x) - laidM };
  });

  const vertices: Vertex[] = [];
  const meetings: Meeting[] = [];
  let squares = 0;
  streets.forEach(({ x, y, e, n, run, addM }, k) => {
    const before = streets[k - 1];
    const points = run.to - run.from + 1;
    const each = addM / (points + 1);
    if (before) {
      const corner = cornerDoubtM2(before.run, run, sigmaM, stepM);
      const own =
        4 * sigmaM * sigmaM * (1 / points + 1 / (before.run.to - before.run.from + 1)) + law.sdM ** 2;
      const doubtM2 = 1 / (1 / Math.max(1e-9, corner) + 1 / own);
      const left = corner > 0 ? LEFT_TOGETHER * Math.sqrt(doubtM2 / corner) : 1;
      meetings.push({ vertex: vertices.length, before: before.run, after: run, sigmaM, left });
      vertices.push({ eastM: at(eastM, k), northM: at(northM, k), index: indexOf(x), doubtM2, addM: each });
    }
    for (let i = run.from; i <= run.to; i++) {
      const share = ((row.step[i - 1] as number) * GRID - x) / (y - x);
      const [pe, pn] = [at(eastM, k) + share * e, at(northM, k) + share * n];
      squares += (at(line.eastM, i) - pe) ** 2 + (at(line.northM, i) - pn) ** 2;
      // A point at the corner is the corner.
      if (share > 0 || k === 0) vertices.push({ eastM: pe, northM: pn, index: i, doubtM2: 0, addM: each });
    }
  });
  const [first, final] = [streets[0], streets.at(-1)];
  const [firstVertex, lastVertex] = [vertices[0], vertices.at(-1)];
  // Not a number where too many knots left a street without points: no such line either.
  const sdM = Math.sqrt(squares / Math.max(1, 2 * (last - 1) - 3 * knots.length));
  if (!first || !final || !firstVertex || !lastVertex || !(sdM <= WORST_FIT * sigmaM)) return null;
  /** Where the line begins or ends: on the street's row a step on where it was not cut there, else where it was seen. */
  const ends = (
    point: number,
    { run, x, y, e, n }: (typeof streets)[number],
    edge: Vertex,
    sign: number,
  ): Vertex => {
    const seenT = foot(run, at(line.eastM, point), at(line.northM, point)).t;
    const edgeT = foot(run, edge.eastM, edge.northM).t;
    const rowT = edgeT + (sign * GRID * Math.hypot(e, n)) / (y - x);
    const rowM2 = (4 * sigmaM * sigmaM) / (run.to - run.from + 1);
    const weight = Math.abs(seenT - rowT) < CUT_SDS * Math.sqrt(sigmaM * sigmaM + rowM2) ? 1 / rowM2 : 0;
    const whereT = (seenT / (sigmaM * sigmaM) + weight * rowT) / (1 / (sigmaM * sigmaM) + weight);
    const t = sign > 0 ? Math.max(whereT, edgeT + stepM / GRID) : Math.min(whereT, edgeT - stepM / GRID);
    return {
      eastM: run.eastM + t * run.dirE,
      northM: run.northM + t * run.dirN,
      index: point,
      doubtM2: 0,
      addM: 0,
    };
  };
  return {
    vertices: [ends(0, first, firstVertex, -1), ...vertices, ends(last, final, lastVertex, 1)],
    corners: [
      cornerAt(0, null, first.run, sigmaM, stepM),
      ...cornersOf(
        meetings.map((m) => ({ ...m, vertex: m.vertex + 1 })),
        stepM,
      ),
    ].map((c) => ({ ...c, asideM2: ASIDE_TOGETHER * c.asideM2 })),
    doubtM2PerM: DOUBT_M2_PER_M,
  };
};
