import type { LinePoint } from '../core/course/line.ts';
import { eastM, northM, planeAt } from '../core/geo/ruler.ts';

/** A course line as whole numbers: degrees in steps of 1e-6 (a decimetre) or coarser, heights in decimetres. */
export interface PackedLine {
  /** Steps to a degree. */
  readonly steps: number;
  /** First point, then differences: latitude and longitude in turn. */
  readonly places: readonly number[];
  /** The same for heights, decimetres; null where the recording has none. */
  readonly heights: readonly number[] | null;
}

const deltas = (values: readonly number[]): number[] =>
  values.map((v, i) => v - (i === 0 ? 0 : (values[i - 1] ?? 0)));
const sums = (values: readonly number[]): number[] => {
  let sum = 0;
  return values.map((v) => {
    sum += v;
    return sum;
  });
};

const DM_PER_M = 10;

export const packLine = (points: readonly LinePoint[], steps: number): PackedLine => {
  const lat = deltas(points.map((p) => Math.round(p.latitudeDeg * steps)));
  const lon = deltas(points.map((p) => Math.round(p.longitudeDeg * steps)));
  const high = points.every((p) => p.elevationM !== null);
  return {
    steps,
    places: lat.flatMap((v, i) => [v, lon[i] ?? 0]),
    heights: high ? deltas(points.map((p) => Math.round((p.elevationM ?? 0) * DM_PER_M))) : null,
  };
};

export const unpackLine = ({ steps, places, heights }: PackedLine): LinePoint[] => {
  const lat = sums(places.filter((_, i) => i % 2 === 0));
  const lon = sums(places.filter((_, i) => i % 2 === 1));
  const high = heights === null ? null : sums(heights);
  return lat.map((v, i) => ({
    latitudeDeg: v / steps,
    longitudeDeg: (lon[i] ?? 0) / steps,
    elevationM: high === null ? null : (high[i] ?? 0) / DM_PER_M,
  }));
};

/**
 * The line with fewer points, none of the others farther than `withinM` from it: D. Douglas and T. Peucker, Algorithms for
 * the reduction of the number of points required to represent a digitized line, Cartographica 10 (1973) (memory).
 */
export const simplified = (points: readonly LinePoint[], withinM: number): LinePoint[] => {
  const first = points[0];
  if (first === undefined || points.length < 3) return [...points];
  const plane = planeAt(first);
  const xy = points.map((p) => [eastM(plane, p), northM(plane, p)] as const);
  const keep = new Set([0, points.length - 1]);
  const stack: [number, number][] = [[0, points.length - 1]];
  for (let pair = stack.pop(); pair !== undefined; pair = stack.pop()) {
    const [from, to] = pair;
    const [ax, ay] = xy[from] ?? [0, 0];
    const [bx, by] = xy[to] ?? [0, 0];
    const length2 = (bx - ax) ** 2 + (by - ay) ** 2;
    let worst = withinM;
    let at = -1;
    for (let i = from + 1; i < to; i++) {
      const [x, y] = xy[i] ?? [0, 0];
      const t =
        length2 === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2));
      const off = Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
      if (off > worst) [worst, at] = [off, i];
    }
    if (at < 0) continue;
    keep.add(at);
    stack.push([from, at], [at, to]);
  }
  return points.filter((_, i) => keep.has(i));
};
