/**
 * Takes the shake out of a recorded line, so that its length is spread along the course as on the ground.
 *
 * A recorded line is a chain of points that each miss the road by a metre or more, often with every other point left
 * out. Shake makes straight streets too long, a corner that fell between two points makes the course too short there;
 * scaling the whole to the official distance then leaves 5 to 15 m of error in the middle (measured on simulated
 * lines with 1.5 m of shake). Roads are mostly straight runs and corners: so the points are parted into runs that a
 * straight line explains within the shake, and where two runs meet at an angle, the corner is where their lines cross.
 *
 * Parting: least cost of Σ residual²/σ² + PENALTY per run, found exactly by dynamic programming over the last point of
 * each run (the optimal partitioning of Jackson et al., IEEE Signal Processing Letters 12 (2005) 105), lines by
 * orthogonal regression from running sums. A curve becomes a chain of short runs, which follow it.
 */

/** A run must earn its existence: three numbers of its own (offset, direction, where it ends) at about 4 each. */
const PENALTY = 12;
/** Longest run in points: bounds the work to points × this. */
const MAX_RUN = 80;
/** Shake below this is rounding; the line is then left nearly as it is. */
const MIN_SHAKE_M = 0.2;
/** A line drawn by hand or by an organiser with few points has corners, not shake. */
const MAX_SHAKE_M = 5;
const MAX_LEG_M = 40;

export interface Polyline {
  readonly eastM: Float64Array;
  readonly northM: Float64Array;
}

interface Run {
  readonly from: number;
  /** Last point, included. */
  readonly to: number;
  readonly eastM: number;
  readonly northM: number;
  readonly dirE: number;
  readonly dirN: number;
}

const at = (a: Float64Array, i: number): number => a[i] as number;

/** Beyond a right angle and well more, and on the same road, not round a block: the road is run back. */
const turnsRound = (a: Run, b: Run, sigmaM: number): boolean => {
  if (a.dirE * b.dirE + a.dirN * b.dirN > -0.7) return false;
  const apartM = Math.abs((b.eastM - a.eastM) * a.dirN - (b.northM - a.northM) * a.dirE);
  return apartM < 4 * sigmaM;
};

/** Standard deviation of the shake per axis: points against the chord of their neighbours, by the median. */
export const shakeM = ({ eastM, northM }: Polyline): number => {
  const off: number[] = [];
  for (let i = 1; i + 1 < eastM.length; i++) {
    const ce = at(eastM, i + 1) - at(eastM, i - 1);
    const cn = at(northM, i + 1) - at(northM, i - 1);
    const chord = Math.hypot(ce, cn);
    if (chord === 0) continue;
    const de = at(eastM, i) - at(eastM, i - 1);
    const dn = at(northM, i) - at(northM, i - 1);
    off.push(Math.abs(ce * dn - cn * de) / chord);
  }
  if (off.length === 0) return 0;
  off.sort((a, b) => a - b);
  // The median of |N(0,1)| is 0.6745; a point against the middle of two others has variance 1.5 σ².
  return (off[off.length >> 1] as number) / 0.6745 / Math.sqrt(1.5);
};

const medianLegM = ({ eastM, northM }: Polyline): number => {
  const legs = Array.from(eastM.subarray(1), (e, i) =>
    Math.hypot(e - at(eastM, i), at(northM, i + 1) - at(northM, i)),
  );
  return legs.sort((a, b) => a - b)[legs.length >> 1] || 1;
};

/** Parts the points into straight runs. */
const runsOf = ({ eastM, northM }: Polyline, sigmaM: number): Run[] => {
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
  const reach = Math.max(1, Math.ceil((4 * sigmaM) / medianLegM({ eastM, northM })));
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
      const c = at(cost, i) + PENALTY + moments(i, j).residual / (sigmaM * sigmaM);
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
  return runs.filter((m, k) => !isTip(runs[k - 1], m, runs[k + 1], sigmaM));
};

/** Shake at a turn-round can make a little run of its own out of the points at the cone: it says nothing. */
const TIP_POINTS = 3;
const isTip = (a: Run | undefined, m: Run, b: Run | undefined, sigmaM: number): boolean =>
  a !== undefined && b !== undefined && m.to - m.from < TIP_POINTS && turnsRound(a, b, sigmaM);

/** Below this angle two runs have no sharp crossing and the joint is taken between their ends. */
const MIN_CORNER_SIN = 0.12;

/** Where the run's line passes closest to a point, and how far along the run's direction that is. */
const foot = (r: Run, e: number, n: number) => {
  const t = (e - r.eastM) * r.dirE + (n - r.northM) * r.dirN;
  return { e: r.eastM + t * r.dirE, n: r.northM + t * r.dirN, t };
};

/**
 * The joint of two runs: the crossing of their lines where that is near, and neither line has to be cut back to it by
 * more than the shake; else the middle between their ends.
 */
const joint = (
  line: Polyline,
  a: Run,
  b: Run,
  sigmaM: number,
  legM: number,
): readonly (readonly [number, number])[] => {
  const fa = foot(a, at(line.eastM, a.to), at(line.northM, a.to));
  const fb = foot(b, at(line.eastM, b.from), at(line.northM, b.from));
  const gap = Math.hypot(fb.e - fa.e, fb.n - fa.n);
  const sin = a.dirE * b.dirN - a.dirN * b.dirE;
  if (Math.abs(sin) > MIN_CORNER_SIN) {
    const ta = ((b.eastM - a.eastM) * b.dirN - (b.northM - a.northM) * b.dirE) / sin;
    const e = a.eastM + ta * a.dirE;
    const n = a.northM + ta * a.dirN;
    const onwardA = ta - fa.t;
    const onwardB = fb.t - foot(b, e, n).t;
    const far = gap * 1.3 + sigmaM;
    if (onwardA > -3 * sigmaM && onwardB > -3 * sigmaM && onwardA < far && onwardB < far) return [[e, n]];
  }
  if (turnsRound(a, b, sigmaM)) {
    // Points come at even steps, so the step that holds the cone went out and back: out beyond the last point as far
    // as is left of a usual step.
    const seenM = farthestM(line, a, a.to, b.from);
    const outM = Math.max(seenM, (legM - Math.abs(foot(a, fb.e, fb.n).t - fa.t)) / 2);
    const tip = (r: Run, f: typeof fa, t: number): readonly [number, number] => [
      f.e + r.dirE * t,
      f.n + r.dirN * t,
    ];
    return [tip(a, fa, outM), tip(b, fb, -outM)];
  }
  // Two streets that do not meet: from the end of the one to the beginning of the other.
  if (a.dirE * b.dirE + a.dirN * b.dirN < 0)
    return [
      [fa.e, fa.n],
      [fb.e, fb.n],
    ];
  return [[(fa.e + fb.e) / 2, (fa.n + fb.n) / 2]];
};

/** How far beyond the end of a run its line is followed by the points between two others, m. */
const farthestM = (line: Polyline, a: Run, from: number, to: number): number => {
  const end = foot(a, at(line.eastM, from), at(line.northM, from)).t;
  let out = 0;
  for (let i = from + 1; i < to; i++)
    out = Math.max(out, foot(a, at(line.eastM, i), at(line.northM, i)).t - end);
  return out;
};

/**
 * How badly a corner's place along the line is known, as a variance in m²: each run's line has at its end a sideways
 * error of 2σ/√n, which moves the crossing along the other, the more the sharper the turn (tan² of half the angle). At
 * a turn-round nothing tells how far the road went on beyond the last point.
 */
const cornerDoubtM2 = (a: Run, b: Run, sigmaM: number, legM: number): number => {
  if (turnsRound(a, b, sigmaM)) return 4 * sigmaM * sigmaM + (TIP_DOUBT * legM) ** 2;
  const cos = a.dirE * b.dirE + a.dirN * b.dirN;
  const sideways = 4 * sigmaM * sigmaM * (1 / (a.to - a.from + 1) + 1 / (b.to - b.from + 1));
  const sharpness = Math.min(SHARPEST, (1 - cos) / Math.max(1e-9, 1 + cos));
  return PARTING_DOUBT * sharpness * sideways;
};
const SHARPEST = 4;
const TIP_DOUBT = 0.3;
/** Points given to the wrong run at a corner add to it: measured on simulated lines. */
const PARTING_DOUBT = 1.4;

export interface Straightened extends Polyline {
  /** Which point of the input each vertex stands for; corners get a value between their neighbours. */
  readonly index: Float64Array;
  /** Variance of length, m², that comes in at each vertex. */
  readonly doubtM2: Float64Array;
}

/** @param line points in metres, in order of running; left as it is where it does not shake */
export const straighten = (line: Polyline): Straightened => {
  const sigma = shakeM(line);
  const east: number[] = [];
  const north: number[] = [];
  const index: number[] = [];
  const doubt: number[] = [];
  const push = (e: number, n: number, i: number, d = 0): void => {
    east.push(e);
    north.push(n);
    index.push(i);
    doubt.push(d);
  };
  if (sigma < MIN_SHAKE_M || sigma > MAX_SHAKE_M || line.eastM.length < 12 || medianLegM(line) > MAX_LEG_M) {
    return {
      ...line,
      index: Float64Array.from(line.eastM, (_, i) => i),
      doubtM2: new Float64Array(line.eastM.length),
    };
  }
  const runs = runsOf(line, Math.max(sigma, MIN_SHAKE_M));
  const usualLegM = medianLegM(line);
  let startT = Number.NEGATIVE_INFINITY;
  runs.forEach((run, k) => {
    const next = runs[k + 1];
    const ends = next ? joint(line, run, next, sigma, usualLegM) : [];
    const stop = ends[0] ? foot(run, ends[0][0], ends[0][1]).t : Number.POSITIVE_INFINITY;
    for (let i = run.from; i <= run.to; i++) {
      const f = foot(run, at(line.eastM, i), at(line.northM, i));
      if (f.t > startT && f.t < stop) {
        push(f.e, f.n, i);
        startT = f.t;
      }
    }
    const cornerDoubt = next ? cornerDoubtM2(run, next, sigma, usualLegM) : 0;
    ends.forEach(([e, n], m) => {
      push(e, n, run.to + (m + 1) / (ends.length + 1), cornerDoubt / ends.length);
    });
    const last = ends.at(-1);
    startT = next && last ? foot(next, last[0], last[1]).t : Number.NEGATIVE_INFINITY;
  });
  return {
    eastM: Float64Array.from(east),
    northM: Float64Array.from(north),
    index: Float64Array.from(index),
    doubtM2: Float64Array.from(doubt),
  };
};
