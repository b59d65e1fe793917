import { at, type Polyline } from './runs.ts';

/** Points that a tool set at even steps: where each was seen, and which step of the way it is. */
export interface PointRow extends Polyline {
  /** Steps since the first point, whole and growing: one for each point where none is missing. */
  readonly step: Int32Array;
}

/** Over this many usual steps from one point to the next, points between them were left out. */
const LEFT_OUT_STEPS = 1.6;

/** @param stepM the usual way from one point to the next */
export const pointRow = ({ eastM, northM }: Polyline, stepM: number): PointRow => {
  const step = new Int32Array(eastM.length);
  for (let i = 1; i < step.length; i++) {
    const legM = Math.hypot(at(eastM, i) - at(eastM, i - 1), at(northM, i) - at(northM, i - 1));
    const steps = legM > LEFT_OUT_STEPS * stepM ? Math.round(legM / stepM) : 1;
    step[i] = (step[i - 1] as number) + steps;
  }
  return { eastM, northM, step };
};

/** Running sums over the points of a row, from which the sums of any stretch of it follow at once. */
export interface RowSums {
  readonly count: Float64Array;
  readonly step: Float64Array;
  readonly step2: Float64Array;
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly stepEast: Float64Array;
  readonly stepNorth: Float64Array;
  /** For each step of the way, how many points come before it. */
  readonly before: Int32Array;
}

/** Coordinates are taken from the first point: sums of squares keep their digits. */
export const rowSums = ({ eastM, northM, step }: PointRow): RowSums => {
  const n = step.length;
  const sums = () => new Float64Array(n + 1);
  const s = {
    count: sums(),
    step: sums(),
    step2: sums(),
    east: sums(),
    north: sums(),
    stepEast: sums(),
    stepNorth: sums(),
  };
  for (let i = 0; i < n; i++) {
    const j = step[i] as number;
    const e = at(eastM, i) - at(eastM, 0);
    const m = at(northM, i) - at(northM, 0);
    s.count[i + 1] = i + 1;
    s.step[i + 1] = at(s.step, i) + j;
    s.step2[i + 1] = at(s.step2, i) + j * j;
    s.east[i + 1] = at(s.east, i) + e;
    s.north[i + 1] = at(s.north, i) + m;
    s.stepEast[i + 1] = at(s.stepEast, i) + j * e;
    s.stepNorth[i + 1] = at(s.stepNorth, i) + j * m;
  }
  const before = new Int32Array((step[n - 1] ?? 0) + 2);
  let i = 0;
  for (let j = 0; j < before.length; j++) {
    while (i < n && (step[i] as number) < j) i++;
    before[j] = i;
  }
  return { ...s, before };
};

/** A value given at the points, at a step of the way between two of them. */
export const valueAtStep = (row: PointRow, values: ArrayLike<number>, step: number): number => {
  let [low, high] = [0, row.step.length - 1];
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if ((row.step[mid] as number) <= step) low = mid;
    else high = mid;
  }
  const [a, b] = [row.step[low] as number, row.step[high] as number];
  const share = (step - a) / (b - a);
  return (values[low] as number) * (1 - share) + (values[high] as number) * share;
};
