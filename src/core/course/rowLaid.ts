import { type Corner, cornerAt, cornerDoubtM2, foot } from './corners.ts';
import { GRID } from './knotEvidence.ts';
import { cornersOf, type Meeting, type Vertex } from './lay.ts';
import { type PointRow, pointRow, valueAtStep } from './pointRow.ts';
import { type RowKnots, rowKnots } from './rowKnots.ts';
import { at, type Polyline, type Run } from './runs.ts';

/**
 * Lays a line whose points a tool set at even steps along the way: which step of the way a point is tells how far along
 * its street it lies, besides where the street runs. Streets and corners are found together as a broken line with free
 * knots (`rowKnots.ts`). On simulated city streets with 1.5 m of shake and every
 * other point left out that leaves 2.3 m RMS of error along the course where runs and crossings alone leave 3.1.
 */

/** A last step that is shorter than the row's by more than so many standard deviations was cut. */
const CUT_SDS = 2.5;
/** Points further off than the shake alone would have them by this factor: no broken line, or no even steps. */
const WORST_FIT = 1.4;

/**
 * What the crossing and the steps leave of a corner's doubt apart is less when streets are found together, and a street
 * is held aside by its neighbours: with these factors the error is least (12 simulated city courses, open sky and
 * streets). The rest of the doubt is spread along the way, so that the stated deviation holds: 87 to 99 % of the time on
 * streets of two simulators.
 */
const LEFT_TOGETHER = 0.5;
const ASIDE_TOGETHER = 0.07;
const DOUBT_M2_PER_M = 2 / 1000;

export interface RowLaid {
  readonly vertices: readonly Vertex[];
  readonly corners: readonly Corner[];
  /** Variance of length along the way, m² per m. */
  readonly doubtM2PerM: number;
}

/** One street of the laid line: from one knot to the next, in parts of a step, and what is seen of it. */
interface Street {
  readonly fromStep: number;
  readonly toStep: number;
  readonly eastM: number;
  readonly northM: number;
  /** From its first corner to its last, m. */
  readonly overEastM: number;
  readonly overNorthM: number;
  readonly run: Run;
  /** How much longer it is than from corner to corner as laid, m. */
  readonly addM: number;
}

const streetsOf = (
  row: PointRow,
  { knots, places, lengthM }: RowKnots,
  indexOf: (step: number) => number,
): Street[] =>
  knots.slice(1).map((y, k) => {
    const [fromStep, toStep] = [(knots[k] as number) / GRID, y / GRID];
    const [eastM, northM] = [at(places.eastM, k), at(places.northM, k)];
    const [overEastM, overNorthM] = [at(places.eastM, k + 1) - eastM, at(places.northM, k + 1) - northM];
    const laidM = Math.hypot(overEastM, overNorthM) || 1e-6;
    const from = Math.ceil(indexOf(fromStep));
    // The last street has its last point; of all others the point at the corner is the next one's.
    const to = k === knots.length - 2 ? indexOf(toStep) : Math.ceil(indexOf(toStep)) - 1;
    const run = {
      from,
      to: Math.max(from, to),
      eastM: eastM + overEastM / 2,
      northM: northM + overNorthM / 2,
      dirE: overEastM / laidM,
      dirN: overNorthM / laidM,
    };
    const addM = valueAtStep(row, lengthM, toStep) - valueAtStep(row, lengthM, fromStep) - laidM;
    return { fromStep, toStep, eastM, northM, overEastM, overNorthM, run, addM };
  });

/** Length error at the corner of two streets, m², and what is left of it beside what their crossing alone would have. */
const cornerLeft = (before: Run, after: Run, sigmaM: number, stepM: number, strayM: number) => {
  const crossing = cornerDoubtM2(before, after, sigmaM, stepM);
  const points = (run: Run): number => run.to - run.from + 1;
  const steps = 4 * sigmaM * sigmaM * (1 / points(before) + 1 / points(after)) + strayM ** 2;
  const doubtM2 = crossing > 0 ? 1 / (1 / crossing + 1 / steps) : 0;
  return { doubtM2, left: crossing > 0 ? LEFT_TOGETHER * Math.sqrt(doubtM2 / crossing) : 1 };
};

/**
 * Where the line begins or ends: on the street's row one step on where that step was not cut, else where it was seen.
 * @param point of the line; `edge` the vertex next to it; `sign` -1 at the beginning and 1 at the end
 */
const endOf = (
  line: Polyline,
  point: number,
  street: Street,
  edge: Vertex,
  sign: -1 | 1,
  sigmaM: number,
): Vertex => {
  const { run } = street;
  const stepM = Math.hypot(street.overEastM, street.overNorthM) / (street.toStep - street.fromStep);
  const seenT = foot(run, at(line.eastM, point), at(line.northM, point)).t;
  const edgeT = foot(run, edge.eastM, edge.northM).t;
  const rowT = edgeT + sign * stepM;
  const seenM2 = sigmaM * sigmaM;
  const rowM2 = (4 * seenM2) / (run.to - run.from + 1);
  const weight = Math.abs(seenT - rowT) < CUT_SDS * Math.sqrt(seenM2 + rowM2) ? 1 / rowM2 : 0;
  const whereT = (seenT / seenM2 + weight * rowT) / (1 / seenM2 + weight);
  const t = edgeT + sign * Math.max(stepM / GRID, sign * (whereT - edgeT));
  return {
    eastM: run.eastM + t * run.dirE,
    northM: run.northM + t * run.dirN,
    index: point,
    doubtM2: 0,
    addM: 0,
  };
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
  const found = rowKnots(row, runs, sigmaM, stepM);
  const order = row.step.map((_, i) => i);
  const indexOf = (step: number): number => 1 + valueAtStep(row, order, step);
  const streets = streetsOf(row, found, indexOf);

  const vertices: Vertex[] = [];
  const meetings: Meeting[] = [];
  let squares = 0;
  streets.forEach((street, k) => {
    const { fromStep, toStep, eastM, northM, run } = street;
    const before = streets[k - 1]?.run;
    const addM = street.addM / (run.to - run.from + 2);
    if (before) {
      const { doubtM2, left } = cornerLeft(before, run, sigmaM, stepM, found.law.sdM);
      // The line's first vertex comes before all of these.
      meetings.push({ vertex: vertices.length + 1, before, after: run, sigmaM, left });
      vertices.push({ eastM, northM, index: indexOf(fromStep), doubtM2, addM });
    }
    for (let i = run.from; i <= run.to; i++) {
      const share = ((row.step[i - 1] as number) - fromStep) / (toStep - fromStep);
      const e = eastM + share * street.overEastM;
      const n = northM + share * street.overNorthM;
      squares += (at(line.eastM, i) - e) ** 2 + (at(line.northM, i) - n) ** 2;
      // A point at the corner is the corner.
      if (share > 0 || !before) vertices.push({ eastM: e, northM: n, index: i, doubtM2: 0, addM });
    }
  });
  const [first, final] = [streets[0], streets.at(-1)];
  const [begin, end] = [vertices[0], vertices.at(-1)];
  // Not a number where too many knots left a street without points: no such line either.
  const sdM = Math.sqrt(squares / Math.max(1, 2 * (last - 1) - 3 * found.knots.length));
  if (!first || !final || !begin || !end || !(sdM <= WORST_FIT * sigmaM)) return null;
  return {
    vertices: [
      endOf(line, 0, first, begin, -1, sigmaM),
      ...vertices,
      endOf(line, last, final, end, 1, sigmaM),
    ],
    corners: [cornerAt(0, null, first.run, sigmaM, stepM), ...cornersOf(meetings, stepM)].map((c) => ({
      ...c,
      asideM2: ASIDE_TOGETHER * c.asideM2,
    })),
    doubtM2PerM: DOUBT_M2_PER_M,
  };
};
