import { at, type Polyline } from './runs.ts';

/**
 * A road that is run more than once: out and back, or in laps. Each pass is a recording of the same road; taken as one,
 * its points are as many times as many, and the line's error is known to be nothing wherever a pass is complete.
 */
export interface Road {
  /** Points of all passes in the order of the first. */
  readonly merged: Polyline;
  /** For each of the merged points: which point of the line it is. */
  readonly source: Int32Array;
  readonly passes: readonly RoadPass[];
}

/** One pass over the road: the points of the line from one to another, both included. */
export interface RoadPass {
  readonly from: number;
  readonly to: number;
  readonly backward: boolean;
  /** For each of the merged points: where it falls between the points of this pass. */
  readonly index: Float64Array;
}

type Stretch = Pick<RoadPass, 'from' | 'to' | 'backward'>;

/** A pass must lie on the first but for this share of its points. */
const STRAY_SHARE = 0.05;
/** So many standard deviations of the shake may a point of a pass lie off the first. */
const ON_ROAD_SDS = 4;
/** How far around its expected place a point is looked for, as a share of the pass. */
const LOOK_SHARE = 0.03;
/** Fewer points a pass are no road. */
const LEAST_POINTS = 12;
/** Passes must be of equal length to this share. */
const SAME_LENGTH_SHARE = 0.02;
/** More laps than this are no road race. */
const MOST_LAPS = 25;

const lengthsOf = ({ eastM, northM }: Polyline): Float64Array => {
  const sum = new Float64Array(eastM.length);
  for (let i = 1; i < sum.length; i++)
    sum[i] = at(sum, i - 1) + Math.hypot(at(eastM, i) - at(eastM, i - 1), at(northM, i) - at(northM, i - 1));
  return sum;
};

/** The point nearest to a length. */
const pointAt = (sum: Float64Array, lengthM: number): number => {
  let i = 1;
  while (i < sum.length - 1 && at(sum, i) < lengthM) i++;
  return at(sum, i) - lengthM < lengthM - at(sum, i - 1) ? i : i - 1;
};

/** The nearest place of the stretch from vertex `low` to `high`: its index, in parts of a leg, and how far off. */
const nearest = (road: Polyline, e: number, n: number, low: number, high: number) => {
  let best = { index: low, offM: Number.POSITIVE_INFINITY };
  for (let i = low; i < high; i++) {
    const [ae, an] = [at(road.eastM, i), at(road.northM, i)];
    const [de, dn] = [at(road.eastM, i + 1) - ae, at(road.northM, i + 1) - an];
    const k = Math.min(1, Math.max(0, ((e - ae) * de + (n - an) * dn) / (de * de + dn * dn || 1)));
    const offM = Math.hypot(e - ae - k * de, n - an - k * dn);
    if (offM < best.offM) best = { index: i + k, offM };
  }
  return best;
};

/** Lays the passes on the first; null where one of them runs elsewhere. */
const roadOf = (line: Polyline, shakeM: number, stretches: readonly Stretch[]): Road | null => {
  const [first, ...others] = stretches;
  if (!first || stretches.some(({ from, to }) => to - from < LEAST_POINTS)) return null;
  const points = first.to - first.from;
  const places: { readonly point: number; readonly index: number }[] = [];
  for (let i = first.from; i <= first.to; i++) places.push({ point: i, index: i });
  for (const { from, to, backward } of others) {
    const look = Math.max(4, Math.ceil(LOOK_SHARE * points));
    let stray = 0;
    for (let i = from; i <= to; i++) {
      const along = (i - from) / (to - from);
      const expected = (backward ? 1 - along : along) * points;
      const low = Math.max(0, Math.floor(expected) - look);
      const high = Math.min(points, Math.ceil(expected) + look);
      const { index, offM } = nearest(line, at(line.eastM, i), at(line.northM, i), low, high);
      if (offM > ON_ROAD_SDS * shakeM) stray++;
      // The same point again is no second recording: a line of one lap that was rolled out.
      else if (offM > 0) places.push({ point: i, index });
    }
    if (stray > STRAY_SHARE * (to - from)) return null;
  }
  places.sort((a, b) => a.index - b.index);
  return {
    merged: {
      eastM: Float64Array.from(places, ({ point }) => at(line.eastM, point)),
      northM: Float64Array.from(places, ({ point }) => at(line.northM, point)),
    },
    source: Int32Array.from(places, ({ point }) => point),
    passes: stretches.map((pass) => ({
      ...pass,
      index: Float64Array.from(places, ({ index }) => {
        const along = (index / points) * (pass.to - pass.from);
        return pass.backward ? pass.to - along : pass.from + along;
      }),
    })),
  };
};

/** @returns null where the line does not come back the way it went */
const outAndBack = (line: Polyline, sum: Float64Array, shakeM: number): Road | null => {
  const last = sum.length - 1;
  const pivot = pointAt(sum, at(sum, last) / 2);
  const halfM = at(sum, pivot);
  if (Math.abs(at(sum, last) - 2 * halfM) > SAME_LENGTH_SHARE * halfM) return null;
  const ends = Math.hypot(
    at(line.eastM, last) - at(line.eastM, 0),
    at(line.northM, last) - at(line.northM, 0),
  );
  if (ends > SAME_LENGTH_SHARE * halfM) return null;
  return roadOf(line, shakeM, [
    { from: 0, to: pivot, backward: false },
    { from: pivot + 1, to: last, backward: true },
  ]);
};

/** @returns null where the line is not a whole number of laps, begun and ended at one place */
const inLaps = (line: Polyline, sum: Float64Array, shakeM: number): Road | null => {
  const last = sum.length - 1;
  for (let laps = MOST_LAPS; laps >= 2; laps--) {
    const seams = Array.from({ length: laps + 1 }, (_, k) => pointAt(sum, (at(sum, last) * k) / laps));
    const legM = at(sum, last) / last;
    const closed = seams.every((i) => {
      const offM = Math.hypot(at(line.eastM, i) - at(line.eastM, 0), at(line.northM, i) - at(line.northM, 0));
      return offM < 2 * legM + ON_ROAD_SDS * shakeM;
    });
    if (!closed) continue;
    const road = roadOf(
      line,
      shakeM,
      seams.slice(1).map((to, k) => ({ from: seams[k] as number, to, backward: false })),
    );
    if (road) return road;
  }
  return null;
};

/** The road that the line runs more than once; null where it does not. */
export const roadRunAgain = (line: Polyline, shakeM: number): Road | null => {
  const sum = lengthsOf(line);
  return outAndBack(line, sum, shakeM) ?? inLaps(line, sum, shakeM);
};
