/**
 * Parts a shaken line into straight runs: least cost of Σ residual²/σ² + PENALTY per run, found exactly by dynamic
 * programming over the last point of each run (the optimal partitioning of Jackson et al., IEEE Signal Processing
 * Letters 12 (2005) 105), lines by orthogonal regression from running sums. A curve becomes a chain of short runs, which
 * follow it.
 */

/** A run must earn its existence: three numbers of its own (offset, direction, where it ends) at about 4 each. */
const PENALTY = 12;
const SHORT_M = 50;
const SHORT_PENALTY = 8;
/** Longest run in points: bounds the work to points × this. */
const MAX_RUN = 80;

export interface Polyline {
  readonly eastM: Float64Array;
  readonly northM: Float64Array;
}
export interface Run {
  readonly from: number;
  /** Last point, included. */
  readonly to: number;
  readonly eastM: number;
  readonly northM: number;
  readonly dirE: number;
  readonly dirN: number;
}
export const at = (a: Float64Array, i: number): number => a[i] as number;
/** What the line measures on its plane, m. */
export const lengthM = ({ eastM, northM }: Polyline): number =>
  eastM.reduce(
    (sum, e, i) => (i === 0 ? 0 : sum + Math.hypot(e - at(eastM, i - 1), at(northM, i) - at(northM, i - 1))),
    0,
  );
/** Beyond a right angle and well more, and on the same road, not round a block: the road is run back. */
export const turnsRound = (a: Run, b: Run, sigmaM: number): boolean => {
  if (a.dirE * b.dirE + a.dirN * b.dirN > -0.7) return false;
  const apartM = Math.abs((b.eastM - a.eastM) * a.dirN - (b.northM - a.northM) * a.dirE);
  return apartM < 4 * sigmaM;
};
/** How far each point lies off the chord of its neighbours, m; 0 at the ends. */
const offChordM = ({ eastM, northM }: Polyline): Float64Array => {
  const off = new Float64Array(eastM.length);
  for (let i = 1; i + 1 < eastM.length; i++) {
    const ce = at(eastM, i + 1) - at(eastM, i - 1);
    const cn = at(northM, i + 1) - at(northM, i - 1);
    const de = at(eastM, i) - at(eastM, i - 1);
    const dn = at(northM, i) - at(northM, i - 1);
    off[i] = Math.abs(ce * dn - cn * de) / (Math.hypot(ce, cn) || 1);
  }
  return off;
};

/** Shake is judged over so many points to either side: some streets of a recording shake, others do not. */
const AROUND_POINTS = 40;
const EVERY_POINTS = 20;

/** A street whose shake is within this factor of the whole line's shakes like the rest: more points tell it better. */
const LIKE_THE_REST = 1.6;

/** The median of |N(0,1)| is 0.6745; a point against the middle of two others has variance 1.5 σ². */
const sigmaOf = (off: Float64Array): number => {
  const sorted = off.slice().sort();
  return (sorted[sorted.length >> 1] ?? 0) / 0.6745 / Math.sqrt(1.5);
};

/** Standard deviation of the shake per axis around each point: points against the chord of their neighbours, by the median. */
export const shakeM = (line: Polyline): Float64Array => {
  const off = offChordM(line);
  const whole = sigmaOf(off.subarray(1, off.length - 1));
  const shake = new Float64Array(off.length);
  for (let i = 0; i < off.length; i += EVERY_POINTS) {
    const around = off.subarray(Math.max(1, i - AROUND_POINTS), Math.min(off.length - 1, i + AROUND_POINTS));
    const here = sigmaOf(around);
    const alike = here < whole * LIKE_THE_REST && here > whole / LIKE_THE_REST;
    shake.fill(alike ? whole : here, i, i + EVERY_POINTS);
  }
  return shake;
};

export const medianLegM = ({ eastM, northM }: Polyline): number => {
  const legs = Array.from(eastM.subarray(1), (e, i) =>
    Math.hypot(e - at(eastM, i), at(northM, i + 1) - at(northM, i)),
  );
  return legs.sort((a, b) => a - b)[legs.length >> 1] || 1;
};
/** Parts the points into straight runs. @param legM the usual way from one point to the next */
export const runsOf = ({ eastM, northM }: Polyline, shake: Float64Array, legM: number): Run[] => {
  const n = eastM.length;
  const sums = [0, 1, 2, 3, 4].map(() => new Float64Array(n + 1));
  const [se, sn, see, snn, sen] = sums as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  for (let i = 0; i < n; i++) {
    const e = at(eastM, i);
    const m = at(northM, i);
    se[i + 1] = at(se, i) + e;
    sn[i + 1] = at(sn, i) + m;
    see[i + 1] = at(see, i) + e * e;
    snn[i + 1] = at(snn, i) + m * m;
    sen[i + 1] = at(sen, i) + e * m;
  }
  const moments = (i: number, j: number) => {
    const count = j - i + 1;
    const me = (at(se, j + 1) - at(se, i)) / count;
    const mn = (at(sn, j + 1) - at(sn, i)) / count;
    const cee = at(see, j + 1) - at(see, i) - count * me * me;
    const cnn = at(snn, j + 1) - at(snn, i) - count * mn * mn;
    const cen = at(sen, j + 1) - at(sen, i) - count * me * mn;
    const root = Math.hypot((cee - cnn) / 2, cen);
    return { me, mn, cee, cnn, cen, residual: Math.max(0, (cee + cnn) / 2 - root) };
  };
  const reach = Math.max(1, Math.ceil((4 * Math.max(...shake)) / legM));
  /** A turn-round would fit one line both ways: a run must end the way it began. */
  const turnsBack = (i: number, j: number): boolean => {
    const k = Math.min(reach, j - i);
    const headE = at(eastM, i + k) - at(eastM, i);
    const headN = at(northM, i + k) - at(northM, i);
    return headE * (at(eastM, j) - at(eastM, j - k)) + headN * (at(northM, j) - at(northM, j - k)) <= 0;
  };
  const cost = new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY);
  const begin = new Int32Array(n + 1);
  cost[0] = 0;
  for (let j = 0; j < n; j++) {
    for (let i = Math.max(0, j - MAX_RUN + 1); i <= j; i++) {
      // A run of one point would be free of residuals and of direction: only allowed where nothing else is left.
      if (i === j || turnsBack(i, j)) continue;
      const short =
        Math.hypot(at(eastM, j) - at(eastM, i), at(northM, j) - at(northM, i)) < SHORT_M ? SHORT_PENALTY : 0;
      const c = at(cost, i) + PENALTY + short + moments(i, j).residual / at(shake, (i + j) >> 1) ** 2;
      if (c < at(cost, j + 1)) {
        cost[j + 1] = c;
        begin[j + 1] = i;
      }
    }
  }
  const runs: Run[] = [];
  for (let end = n; end > 0; end = begin[end] as number) {
    const from = begin[end] as number;
    const to = end - 1;
    const m = moments(from, to);
    const angle = 0.5 * Math.atan2(2 * m.cen, m.cee - m.cnn);
    let dirE = Math.cos(angle);
    let dirN = Math.sin(angle);
    const forward = (at(eastM, to) - at(eastM, from)) * dirE + (at(northM, to) - at(northM, from)) * dirN;
    if (forward < 0) {
      dirE = -dirE;
      dirN = -dirN;
    }
    runs.unshift({ from, to, eastM: m.me, northM: m.mn, dirE, dirN });
  }
  return runs.filter((m, k) => !isTip(runs[k - 1], m, runs[k + 1], at(shake, m.from)));
};

/** Shake at a turn-round can make a little run of its own out of the points at the cone: it says nothing. */
const TIP_POINTS = 3;
const isTip = (a: Run | undefined, m: Run, b: Run | undefined, sigmaM: number): boolean =>
  a !== undefined && b !== undefined && m.to - m.from < TIP_POINTS && turnsRound(a, b, sigmaM);
