import { type CourseLine, type LinePoint, measureLine } from '../../src/core/course/line.ts';
import { eastM, northM, pointOn } from '../../src/core/geo/ruler.ts';

/**
 * The best line that a course file's points can tell to one who is told where the road turns: straight streets between
 * the road's own corners, each point at its own place between two of them, by least squares (regression on a linear
 * spline of known knots). Nobody has that knowledge; so no way of laying the file can be expected below its error.
 */

/** A street turns where its direction changes by more than rounding does, radians. */
const TURNS_RAD = 0.01;

const headingRad = (road: CourseLine, i: number): number =>
  Math.atan2(
    (road.eastM[i + 1] as number) - (road.eastM[i] as number),
    (road.northM[i + 1] as number) - (road.northM[i] as number),
  );

/** Vertices of the road where it turns, with its ends. */
const knotsOf = (road: CourseLine): number[] => {
  const last = road.eastM.length - 1;
  const turns = (i: number): boolean =>
    Math.abs(Math.sin(headingRad(road, i) - headingRad(road, i - 1))) > TURNS_RAD;
  return [...road.eastM.keys()].filter((i) => i === 0 || i === last || turns(i));
};

/** Values at the knots of the broken line that fits values seen at places best. Thomas' algorithm on its normal equations. */
const splineThrough = (
  knots: readonly number[],
  places: readonly number[],
  seen: readonly number[],
): number[] => {
  const n = knots.length;
  // A knot without points of its own lies on the line between its neighbours: all but no weight decides nothing else.
  const diagonal = new Array<number>(n).fill(1e-9);
  const beside = new Array<number>(n).fill(0);
  const right = new Array<number>(n).fill(0);
  const add = (to: number[], i: number, value: number): void => {
    to[i] = (to[i] ?? 0) + value;
  };
  let k = 0;
  places.forEach((place, i) => {
    while (k < n - 2 && (knots[k + 1] as number) <= place) k++;
    const from = knots[k] as number;
    const b = (place - from) / ((knots[k + 1] as number) - from);
    const a = 1 - b;
    const value = seen[i] as number;
    add(diagonal, k, a * a);
    add(diagonal, k + 1, b * b);
    add(beside, k, a * b);
    add(right, k, a * value);
    add(right, k + 1, b * value);
  });
  for (let i = 1; i < n; i++) {
    const f = (beside[i - 1] as number) / (diagonal[i - 1] as number);
    add(diagonal, i, -f * (beside[i - 1] as number));
    add(right, i, -f * (right[i - 1] as number));
  }
  const values = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--)
    values[i] =
      ((right[i] as number) - (beside[i] as number) * (values[i + 1] ?? 0)) / (diagonal[i] as number);
  return values;
};

/** @param vertex which vertex of the road each point stands for */
export const lineToldItsCorners = (
  road: CourseLine,
  points: readonly LinePoint[],
  vertex: readonly number[],
): CourseLine | null => {
  const knots = knotsOf(road);
  const east = splineThrough(
    knots,
    vertex,
    points.map((p) => eastM(road.plane, p)),
  );
  const north = splineThrough(
    knots,
    vertex,
    points.map((p) => northM(road.plane, p)),
  );
  const corners = east.map((e, i) => ({ ...pointOn(road.plane, e, north[i] as number), elevationM: null }));
  return measureLine(corners, road.officialM);
};
