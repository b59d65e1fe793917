import { eastAtM, type LinePoint, measureLine, northAtM } from '../../../src/core/course/line.ts';
import type { Polyline } from '../../../src/core/course/runs.ts';
import { legM, planeAt, pointOn } from '../../../src/core/geo/ruler.ts';
import { type Chance, chanceOf } from '../../../src/core/units/chance.ts';

/** A corner of an invented street map, metres east and north. */
export type Corner = readonly [number, number];

/** Streets of 70 to 400 m that meet at right angles or nearly so, from a seed. */
export const streets = (lengthM: number, seed: number): Corner[] => {
  const chance = chanceOf(seed);
  const corners: Corner[] = [[0, 0]];
  let heading = chance.uniform() * 2 * Math.PI;
  let left = lengthM;
  while (left > 0) {
    const m = Math.min(left, 70 + 330 * chance.uniform());
    const [e, n] = corners.at(-1) as Corner;
    corners.push([e + m * Math.sin(heading), n + m * Math.cos(heading)]);
    heading += (chance.uniform() < 0.5 ? 1 : -1) * (1.2 + 0.6 * chance.uniform());
    left -= m;
  }
  return corners;
};

export const lengthOf = (corners: readonly Corner[]): number =>
  corners.reduce((sum, c, i) => {
    const before = corners[i - 1];
    return before ? sum + Math.hypot(c[0] - before[0], c[1] - before[1]) : 0;
  }, 0);

/** The place at a distance along corners. */
const placeAt = (corners: readonly Corner[], distanceM: number): Corner => {
  let from = 0;
  for (let i = 1; i < corners.length; i++) {
    const [a, b] = [corners[i - 1] as Corner, corners[i] as Corner];
    const m = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (distanceM <= from + m || i === corners.length - 1) {
      const k = (distanceM - from) / m;
      return [a[0] + k * (b[0] - a[0]), a[1] + k * (b[1] - a[1])];
    }
    from += m;
  }
  return corners[0] as Corner;
};

/** What a recorder keeps: a point at each step, each one missing the street by the shake. */
export const recorded = (
  corners: readonly Corner[],
  shakeM: number,
  chance: Chance,
  stepOf: () => number = () => 15,
): Corner[] => {
  const points: Corner[] = [];
  const lengthM = lengthOf(corners);
  for (let d = 0; d < lengthM; d += stepOf()) points.push(placeAt(corners, d));
  points.push(corners.at(-1) as Corner);
  return points.map(([e, n]) => [e + shakeM * chance.normal(), n + shakeM * chance.normal()]);
};

export const polyline = (points: readonly Corner[]): Polyline => ({
  eastM: Float64Array.from(points, ([e]) => e),
  northM: Float64Array.from(points, ([, n]) => n),
});

const PLANE = planeAt({ latitudeDeg: 51.2, longitudeDeg: 3.1 });
export const linePointsOf = (points: readonly Corner[]): LinePoint[] =>
  points.map(([e, n]) => ({ ...pointOn(PLANE, e, n), elevationM: null }));

/** How far a measured line's distances are off the true ones along the corners, m RMS, at every 100 m. */
export const alongErrorM = (points: readonly Corner[], corners: readonly Corner[]): number => {
  const ground = linePointsOf(corners);
  const officialM = ground.reduce((sum, p, i) => sum + (i > 0 ? legM(ground[i - 1] as LinePoint, p) : 0), 0);
  const line = measureLine(linePointsOf(points), officialM, PLANE);
  if (!line) throw new Error('no line');
  const factor = lengthOf(corners) / officialM;
  let sum = 0;
  let count = 0;
  for (let d = 100; d < officialM - 50; d += 100) {
    const [e, n] = placeAt(corners, d * factor);
    let best = { offM: Number.POSITIVE_INFINITY, errorM: 0 };
    for (let error = -40; error <= 40; error += 0.5) {
      const offM = Math.hypot(eastAtM(line, d + error) - e, northAtM(line, d + error) - n);
      if (offM < best.offM) best = { offM, errorM: error };
    }
    sum += best.errorM ** 2;
    count++;
  }
  return Math.sqrt(sum / count);
};
