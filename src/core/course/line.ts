import type { LatLon, Plane } from '../geo/ruler.ts';
import { eastM, legM, northM, planeAt, pointOn } from '../geo/ruler.ts';

/** A point of a recorded line, in order of running. */
export interface LinePoint extends LatLon {
  /** Metres; null where the recording has none. */
  readonly elevationM: number | null;
}

/** The line on the ground, measured on the ellipsoid and scaled so that its length is the official distance. */
export interface CourseLine {
  readonly officialM: number;
  /** What the recording of the line measures by itself. */
  readonly recordedM: number;
  readonly plane: Plane;
  /** Vertices in metres east and north of the plane's origin. At least two. */
  readonly eastM: Float64Array;
  readonly northM: Float64Array;
  /** Official metres along the line at each vertex; strictly increasing from 0 to officialM. */
  readonly alongM: Float64Array;
  /** Height at each vertex, metres; null where the recording has none. */
  readonly elevationM: Float64Array | null;
}

/** Points closer than this to the one before say nothing new and would make a direction out of rounding. */
const MIN_LEG_M = 0.05;

/**
 * Measures a recorded line leg by leg on the ellipsoid and scales it to the official distance: a recording's own length
 * is wrong by 0.3 to 3 %, the measured course's is not.
 * @returns null where fewer than two distinct points are left
 */
export const measureLine = (points: readonly LinePoint[], officialM: number): CourseLine | null => {
  const kept: LinePoint[] = [];
  const sumM: number[] = [];
  for (const p of points) {
    const last = kept.at(-1);
    const lengthM = last ? legM(last, p) : 0;
    if (last && lengthM < MIN_LEG_M) continue;
    sumM.push((sumM.at(-1) ?? 0) + lengthM);
    kept.push(p);
  }
  const recordedM = sumM.at(-1) ?? 0;
  const first = kept[0];
  if (!first || recordedM === 0) return null;
  const plane = planeAt(first);
  const hasHeights = kept.every((p) => p.elevationM !== null);
  return {
    officialM,
    recordedM,
    plane,
    eastM: Float64Array.from(kept, (p) => eastM(plane, p)),
    northM: Float64Array.from(kept, (p) => northM(plane, p)),
    alongM: Float64Array.from(sumM, (d) => (d / recordedM) * officialM),
    elevationM: hasHeights ? Float64Array.from(kept, (p) => p.elevationM ?? 0) : null,
  };
};

/** The vertices as points on the ground again. */
export const linePoints = (line: CourseLine): LinePoint[] =>
  Array.from(line.eastM, (east, i) => ({
    ...pointOn(line.plane, east, line.northM[i] as number),
    elevationM: line.elevationM?.[i] ?? null,
  }));

/** Index i of the leg (vertex i to i + 1) that holds a distance; the first or last leg beyond the ends. */
export const legIndexAt = (line: CourseLine, distanceM: number): number => {
  const along = line.alongM;
  let low = 0;
  let high = along.length - 1;
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if ((along[mid] as number) <= distanceM) low = mid;
    else high = mid;
  }
  return low;
};

/** Interpolates a quantity given at the vertices; beyond the ends the end legs go on straight. */
const valueAt = (line: CourseLine, values: Float64Array, distanceM: number): number => {
  const i = legIndexAt(line, distanceM);
  const from = line.alongM[i] as number;
  const k = (distanceM - from) / ((line.alongM[i + 1] as number) - from);
  const a = values[i] as number;
  return a + k * ((values[i + 1] as number) - a);
};

export const eastAtM = (line: CourseLine, distanceM: number): number => valueAt(line, line.eastM, distanceM);
export const northAtM = (line: CourseLine, distanceM: number): number => valueAt(line, line.northM, distanceM);

/** The point on the ground at a distance; beyond the ends the line goes on straight. */
export const pointAtM = (line: CourseLine, distanceM: number): LatLon =>
  pointOn(line.plane, eastAtM(line, distanceM), northAtM(line, distanceM));

/** Height at a distance, metres; null where the recording has none. */
export const elevationAtM = (line: CourseLine, distanceM: number): number | null =>
  line.elevationM && valueAt(line, line.elevationM, Math.min(Math.max(distanceM, 0), line.officialM));
