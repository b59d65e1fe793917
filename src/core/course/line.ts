import type { LatLon, Plane } from '../geo/ruler.ts';
import { eastM, legM, northM, planeAt, pointOn, wayM } from '../geo/ruler.ts';
import { bendDoubts } from './bends.ts';
import type { Corner } from './corners.ts';
import { DETOUR_SHARE, type Gap, gapsExplain, gapsIn } from './gaps.ts';
import { lapsIn, unrollLaps } from './laps.ts';
import { straightenPieces } from './straightenPieces.ts';
import { tidy } from './tidy.ts';

/** A point of a recorded line, in order of running. */
export interface LinePoint extends LatLon {
  /** Metres; null where the recording has none. */
  readonly elevationM: number | null;
}

/** A corner with its place. */
export interface LineCorner extends Corner {
  readonly alongM: number;
}

/** The line on the ground, measured on the ellipsoid and scaled so that its length is the official distance. */
export interface CourseLine {
  readonly officialM: number;
  /** What the recording of the line measures by itself. */
  readonly recordedM: number;
  /** By what share the line, its shake taken out, is longer than the official distance; 0 where gaps explain it. */
  readonly mismatch: number;
  readonly plane: Plane;
  /** Vertices in metres east and north of the plane's origin. At least two. */
  readonly eastM: Float64Array;
  readonly northM: Float64Array;
  /** Official metres along the line at each vertex; strictly increasing from 0 to officialM. */
  readonly alongM: Float64Array;
  /** Running variance of the distance between line and official course at each vertex, before the ends tie it down. */
  readonly doubtM2: Float64Array;
  /** The straight runs of a line that was shaken, in order; none where it was not. */
  readonly corners: readonly LineCorner[];
  /** Distances that are known whatever the line's error: where a road run out and back turns, where a lap ends. */
  readonly knownM: readonly number[];
  /** Official metres of one lap, where the line of one was run over again; null where the whole line was given. */
  readonly lapM: number | null;
  /** Where the recording left out the way: the line is straight there and the course is not. */
  readonly gaps: readonly Gap[];
  /** How far the line's ends may lie off the official start and finish along it, m. */
  readonly endSdM: number;
  /** Height at each vertex, metres; null where the recording has none. */
  readonly elevationM: Float64Array | null;
}

/**
 * What a mismatch with the official distance adds to the variance of the line's length per metre: where a recording is
 * 1 % too long as a whole, kilometres of it are too long by 0.6 to 1.4 %.
 */
const MISMATCH_SHARE = 0.4;
const MISMATCH_OVER_M = 1000;
/**
 * A line that is much too short is not so all along: an end was cut off, the corners of one part. Then ten and more
 * kilometres are off one way, and what the speeds say counts for more than the line. One that is too long mostly is so
 * evenly, by its receiver's noise (+0.2 to +2.8 % in recorded races). Measured on lines 2 to 5 % off.
 */
const MUCH_MISMATCH = 0.01;
const TOO_SHORT_OVER_M = 16_000;
const overM = (mismatch: number): number =>
  mismatch > 0
    ? MISMATCH_OVER_M
    : MISMATCH_OVER_M + (TOO_SHORT_OVER_M - MISMATCH_OVER_M) * Math.min(1, (mismatch / MUCH_MISMATCH) ** 2);
/** Recordings begin and end a step from the line. */
const END_SD_M = 0.5;

/** A leg keeps at least this share of its measured length, whatever the closing asks of it. */
const LEAST_SHARE = 0.5;

/**
 * Spreads the difference between what is known of a stretch's length and what the line has as surveyors close a
 * traverse: to each leg its share by how uncertain its length is. A uniform line is scaled as a whole; where the doubt
 * lies in corners, the straights keep their metres. In place, from one vertex to another.
 */
const closeStretch = (
  closed: Float64Array,
  sumM: Float64Array,
  doubtM2: Float64Array,
  [from, to]: readonly [number, number],
  knownM: number,
): void => {
  const at = (values: Float64Array, i: number): number => values[i] as number;
  const gapM = knownM - (at(sumM, to) - at(sumM, from));
  const perM2 = gapM / (at(doubtM2, to) - at(doubtM2, from));
  const legs = Float64Array.from({ length: to - from }, (_, k) => {
    const i = from + k + 1;
    const legM = at(sumM, i) - at(sumM, i - 1);
    const share = perM2 * (at(doubtM2, i) - at(doubtM2, i - 1));
    return Math.max(LEAST_SHARE * legM, legM + share);
  });
  const factor = knownM / legs.reduce((sum, leg) => sum + leg, 0);
  legs.forEach((leg, k) => {
    closed[from + k + 1] = at(closed, from + k) + leg * factor;
  });
};

/** Closes the line to the official distance, and each pass over a road run more than once to its part of it. */
const closeTraverse = (
  sumM: Float64Array,
  doubtM2: Float64Array,
  seams: readonly number[],
  officialM: number,
): Float64Array => {
  const last = sumM.length - 1;
  const closed = new Float64Array(sumM.length);
  const stops = [0, ...seams, last];
  stops.slice(1).forEach((to, k) => {
    closeStretch(closed, sumM, doubtM2, [stops[k] as number, to], officialM / (stops.length - 1));
  });
  closed[last] = officialM;
  return closed;
};

/**
 * Measures a recorded line leg by leg on the ellipsoid and scales it to the official distance: a recording's own length
 * is wrong by 0.3 to 3 %, the measured course's is not.
 * @param on the plane to lay it on; absent: one at its first point
 * @param steps 'cut' where a step between two points was cut in mid-line, so that the points are no row of even steps
 * @returns null where fewer than two distinct points are left
 */
export const measureLine = (
  points: readonly LinePoint[],
  officialM: number,
  on?: Plane,
  steps: 'whole' | 'cut' = 'whole',
): CourseLine | null => {
  const recordedM = wayM(points);
  const laps = lapsIn(points, recordedM, officialM);
  const kept = tidy(unrollLaps(points, recordedM, laps));
  const first = kept[0];
  if (!first || kept.length < 2) return null;
  const plane = on ?? planeAt(first);
  const asRecorded = {
    eastM: Float64Array.from(kept, (p) => eastM(plane, p)),
    northM: Float64Array.from(kept, (p) => northM(plane, p)),
  };
  const straight = straightenPieces(asRecorded, gapsIn(asRecorded), steps);
  const vertices = Array.from(straight.eastM, (e, i) => pointOn(plane, e, straight.northM[i] as number));
  const n = vertices.length;
  const sumM = new Float64Array(n);
  for (let i = 1; i < n; i++) {
    // A leg of no length would leave the line without a direction there.
    const laidM = legM(vertices[i - 1] as LatLon, vertices[i] as LatLon);
    const addM = ((straight.addM[i - 1] as number) + (straight.addM[i] as number)) / 2;
    const length = Math.max(1e-6, LEAST_SHARE * laidM, laidM + addM);
    sumM[i] = (sumM[i - 1] as number) + length;
  }
  const lengthM = sumM[n - 1] as number;
  const gaps = gapsExplain(sumM, straight.gaps, officialM) ? straight.gaps : [];
  const mismatch = gaps.length > 0 ? 0 : lengthM / officialM - 1;
  const perM = straight.doubtM2PerM + (MISMATCH_SHARE * mismatch) ** 2 * overM(mismatch);
  const bends = bendDoubts(straight.eastM, straight.northM, sumM);
  let bent = 0;
  let corners = 0;
  const bentM2 = new Float64Array(n);
  const doubtM2 = sumM.map((d, i) => {
    corners += straight.doubtM2[i] as number;
    const legM = d - (sumM[i - 1] ?? 0);
    bent += legM * (((bends[i] as number) + (bends[i - 1] ?? 0)) / 2);
    bentM2[i] = bent;
    if (gaps.includes(i - 1)) corners += (DETOUR_SHARE * (d - (sumM[i - 1] as number))) ** 2;
    return d * perM + bent + corners;
  });
  const hasHeights = kept.every((p) => p.elevationM !== null);
  const heightAt = (index: number): number => {
    const a = kept[Math.floor(index)]?.elevationM ?? 0;
    const b = kept[Math.ceil(index)]?.elevationM ?? a;
    return a + (b - a) * (index - Math.floor(index));
  };
  const alongM = closeTraverse(sumM, doubtM2, straight.seams, officialM);
  return {
    officialM,
    recordedM,
    mismatch,
    plane,
    eastM: straight.eastM,
    northM: straight.northM,
    alongM,
    // What the corners add comes in at the corners.
    doubtM2: alongM.map((d, i) => d * perM + (bentM2[i] as number)),
    corners: straight.corners.map((c) => ({ ...c, alongM: alongM[c.vertex] as number })),
    knownM: [...straight.seams.map((i) => alongM[i] as number), officialM],
    lapM: laps === 1 ? null : officialM / laps,
    gaps: gaps.map((vertex) => ({
      fromM: alongM[vertex] as number,
      toM: alongM[vertex + 1] as number,
    })),
    endSdM: Math.max(END_SD_M, straight.shakeM),
    elevationM: hasHeights ? straight.index.map(heightAt) : null,
  };
};

/** The vertices as points on the ground again. */
export const linePoints = (line: CourseLine): LinePoint[] =>
  Array.from(line.eastM, (east, i) => ({
    ...pointOn(line.plane, east, line.northM[i] as number),
    elevationM: line.elevationM?.[i] ?? null,
  }));

/** Index i of the leg (vertex i to i + 1) that holds a distance; the first or last leg beyond the ends. */
const legIndexAt = (line: CourseLine, distanceM: number): number => {
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

export const doubtAtM2 = (line: CourseLine, distanceM: number): number =>
  valueAt(line, line.doubtM2, distanceM);

export const eastAtM = (line: CourseLine, distanceM: number): number => valueAt(line, line.eastM, distanceM);
export const northAtM = (line: CourseLine, distanceM: number): number =>
  valueAt(line, line.northM, distanceM);

/**
 * Place and direction at a distance: metres on the line's plane, and metres east and north per official metre, over a
 * chord that reaches halfM to either side.
 */
export const frameAt = (
  line: CourseLine,
  distanceM: number,
  halfM: number,
): { readonly eastM: number; readonly northM: number; readonly dirE: number; readonly dirN: number } => {
  const i = legIndexAt(line, distanceM);
  const b = legNear(line, i, distanceM - halfM);
  const f = legNear(line, i, distanceM + halfM);
  const between = (values: Float64Array, leg: number, d: number): number => {
    const from = line.alongM[leg] as number;
    const k = (d - from) / ((line.alongM[leg + 1] as number) - from);
    const a = values[leg] as number;
    return a + k * ((values[leg + 1] as number) - a);
  };
  const { eastM: east, northM: north } = line;
  return {
    eastM: between(east, i, distanceM),
    northM: between(north, i, distanceM),
    dirE: (between(east, f, distanceM + halfM) - between(east, b, distanceM - halfM)) / (2 * halfM),
    dirN: (between(north, f, distanceM + halfM) - between(north, b, distanceM - halfM)) / (2 * halfM),
  };
};

/** The leg that holds a distance, looked for from a leg near by. */
const legNear = (line: CourseLine, leg: number, distanceM: number): number => {
  let i = leg;
  while (i > 0 && (line.alongM[i] as number) > distanceM) i--;
  while (i < line.alongM.length - 2 && (line.alongM[i + 1] as number) <= distanceM) i++;
  return i;
};

/** The point on the ground at a distance; beyond the ends the line goes on straight. */
export const pointAtM = (line: CourseLine, distanceM: number): LatLon =>
  pointOn(line.plane, eastAtM(line, distanceM), northAtM(line, distanceM));

/** Height at a distance, metres; null where the recording has none. */
export const elevationAtM = (line: CourseLine, distanceM: number): number | null =>
  line.elevationM && valueAt(line, line.elevationM, Math.min(Math.max(distanceM, 0), line.officialM));
