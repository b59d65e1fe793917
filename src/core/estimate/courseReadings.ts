import { frameAt } from '../course/line.ts';
import {
  ASIDE,
  at,
  BASE,
  HILL,
  LAG,
  LINE,
  levelSpeedOf,
  N,
  OFFSET,
  QUICK_E,
  QUICK_N,
  S,
  SLOW_E,
  SLOW_N,
  SPEED_SCALE,
  STAY_E,
  STAY_N,
  slopeFactor,
  speedOf,
  WAVER,
} from './courseState.ts';
import { easeAt, type Hills, type Road } from './hills.ts';
import type { Gaussian } from './kalman.ts';
import { copyOf, update } from './kalman.ts';
import { WHITE_SD_M } from './receiver.ts';

/** Half the chord over which the line's direction is taken: shorter than a street corner, longer than a jitter. */
const CHORD_HALF_M = 6;

/** How far aside of the line (left is positive) a reading falls at the believed place. */
export const acrossM = (g: Gaussian, road: Road, eastM: number, northM: number): number => {
  const along = at(g, S) + at(g, LINE) - at(g, LAG) * speedOf(g, road.hills);
  const f = frameAt(road.line, along, CHORD_HALF_M);
  return ((northM - f.northM) * f.dirE - (eastM - f.eastM) * f.dirN) / (Math.hypot(f.dirE, f.dirN) || 1);
};

interface Expectation {
  readonly eastM: number;
  readonly northM: number;
  readonly hEast: Float64Array;
  readonly hNorth: Float64Array;
}

/** What a reading should be at the state x, and how it changes with the state (the measurement's Jacobian). */
const expectAt = (road: Road, g: Gaussian): Expectation => {
  const { x } = g;
  const ease = easeAt(road.hills, at(g, S));
  const slope = slopeFactor(g, ease);
  const v = levelSpeedOf(g) * slope;
  const lag = x[LAG] as number;
  const along = (x[S] as number) + (x[LINE] as number) - lag * v;
  const { eastM: east, northM: north, dirE: te, dirN: tn } = frameAt(road.line, along, CHORD_HALF_M);
  const length = Math.hypot(te, tn) || 1;
  const hEast = new Float64Array(N);
  const hNorth = new Float64Array(N);
  const put = (h: Float64Array, t: number, aside: number): void => {
    h[S] = t;
    h[LINE] = t;
    h[BASE] = -lag * slope * t;
    h[WAVER] = -lag * slope * t;
    h[HILL] = -lag * ease * levelSpeedOf(g) * t;
    h[LAG] = -v * t;
    h[ASIDE] = aside;
    h[OFFSET] = -aside;
  };
  put(hEast, te, -tn / length);
  put(hNorth, tn, te / length);
  hEast[SLOW_E] = hEast[QUICK_E] = hEast[STAY_E] = 1;
  hNorth[SLOW_N] = hNorth[QUICK_N] = hNorth[STAY_N] = 1;
  const aside = (x[ASIDE] as number) - (x[OFFSET] as number);
  return {
    eastM:
      east +
      (x[SLOW_E] as number) +
      (x[QUICK_E] as number) +
      (x[STAY_E] as number) +
      aside * (hEast[ASIDE] as number),
    northM:
      north +
      (x[SLOW_N] as number) +
      (x[QUICK_N] as number) +
      (x[STAY_N] as number) +
      aside * (hNorth[ASIDE] as number),
    hEast,
    hNorth,
  };
};

const quadratic = (g: Gaussian, a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < N; i++) {
    const ai = a[i] as number;
    if (ai === 0) continue;
    for (let j = 0; j < N; j++) sum += ai * (g.P[i * N + j] as number) * (b[j] as number);
  }
  return sum;
};

/** How a reading stands to the belief. */
export interface Fit {
  /** Squared Mahalanobis distance of the innovation (2 degrees of freedom). */
  readonly distance2: number;
  /** Log of the innovation's density. */
  readonly logLikelihood: number;
  readonly innovationEastM: number;
  readonly innovationNorthM: number;
}

/** @param extraSdM noise on top of what the air has, for a reading that itself admits to be worse than usual */
export const fitPosition = (
  g: Gaussian,
  road: Road,
  eastM: number,
  northM: number,
  extraSdM: number,
): Fit => {
  const e = expectAt(road, g);
  const r = WHITE_SD_M ** 2 + extraSdM ** 2;
  const see = quadratic(g, e.hEast, e.hEast) + r;
  const snn = quadratic(g, e.hNorth, e.hNorth) + r;
  const sen = quadratic(g, e.hEast, e.hNorth);
  const det = see * snn - sen * sen;
  const ie = eastM - e.eastM;
  const inn = northM - e.northM;
  const distance2 = (ie * ie * snn - 2 * ie * inn * sen + inn * inn * see) / det;
  return {
    distance2,
    logLikelihood: -0.5 * (distance2 + Math.log(det)) - Math.log(2 * Math.PI),
    innovationEastM: ie,
    innovationNorthM: inn,
  };
};

/** The line bends within the step of an update: measure again from where the update led (iterated filter). */
const RELINEARISE_M = 2;

/** Takes a position in, in place. */
export const takePosition = (
  g: Gaussian,
  road: Road,
  eastM: number,
  northM: number,
  extraSdM: number,
): void => {
  const r = WHITE_SD_M ** 2 + extraSdM ** 2;
  const first = expectAt(road, g);
  const offEastM = eastM - first.eastM;
  const offNorthM = northM - first.northM;
  // What is off by less than that cannot lead further: the common case, without keeping the prior.
  if (Math.hypot(offEastM, offNorthM) < RELINEARISE_M) {
    updateBoth(g, first, offEastM, offNorthM, r);
    return;
  }
  const prior = copyOf(g);
  updateBoth(g, first, offEastM, offNorthM, r);
  let from: Float64Array = prior.x;
  for (let round = 1; round < MOST_ROUNDS; round++) {
    if (Math.abs((g.x[S] as number) - (from[S] as number)) < RELINEARISE_M) return;
    from = g.x.slice();
    const e = expectAt(road, { x: from, P: g.P });
    let eastOff = eastM - e.eastM;
    let northOff = northM - e.northM;
    for (let i = 0; i < N; i++) {
      const step = (prior.x[i] as number) - (from[i] as number);
      eastOff -= (e.hEast[i] as number) * step;
      northOff -= (e.hNorth[i] as number) * step;
    }
    g.x.set(prior.x);
    g.P.set(prior.P);
    updateBoth(g, e, eastOff, northOff, r);
  }
};
const MOST_ROUNDS = 3;

/** The two axes one after the other, their noise being independent. */
const updateBoth = (g: Gaussian, e: Expectation, eastOff: number, northOff: number, r: number): void => {
  const before = g.x.slice();
  update(g, e.hEast, eastOff, r);
  let left = northOff;
  for (let i = 0; i < N; i++) left -= (e.hNorth[i] as number) * ((g.x[i] as number) - (before[i] as number));
  update(g, e.hNorth, left, r);
};

const speedRow = (g: Gaussian, hills: Hills | null): Float64Array => {
  const ease = easeAt(hills, at(g, S));
  const slope = slopeFactor(g, ease);
  const scale = 1 + at(g, SPEED_SCALE);
  const h = new Float64Array(N);
  h[BASE] = h[WAVER] = scale * slope;
  h[HILL] = scale * ease * levelSpeedOf(g);
  h[SPEED_SCALE] = levelSpeedOf(g) * slope;
  return h;
};

/** Innovation of a Doppler speed and its variance without the reading's own noise. */
export const fitSpeed = (
  g: Gaussian,
  hills: Hills | null,
  speedMps: number,
): { readonly innovation: number; readonly variance: number } => {
  const h = speedRow(g, hills);
  return {
    innovation: speedMps - speedOf(g, hills) * (1 + at(g, SPEED_SCALE)),
    variance: quadratic(g, h, h),
  };
};

/** Takes a Doppler speed in, in place. */
export const takeSpeed = (g: Gaussian, hills: Hills | null, speedMps: number, sdMps: number): void => {
  const { innovation } = fitSpeed(g, hills, speedMps);
  update(g, speedRow(g, hills), innovation, sdMps ** 2);
};

/** Positions come late, never early, and not by more than this (phones in the open: up to 1.5 s). */
const MOST_LAG_S = 2;
/** How soft the bounds are: a reading of the bound with this error, whenever the belief is beyond it. */
const LAG_BOUND_SD_S = 0.3;

/**
 * Holds the belief about how late positions come within what receivers do, in place: where a runner's own changes of
 * speed were put down to it, the distance takes them back.
 */
export const boundLag = (g: Gaussian): void => {
  const lag = at(g, LAG);
  const bound = Math.min(MOST_LAG_S, Math.max(0, lag));
  if (bound === lag) return;
  const h = new Float64Array(N);
  h[LAG] = 1;
  update(g, h, bound - lag, LAG_BOUND_SD_S ** 2);
};

/** Takes in that the runner is at a known distance now (the start line, a board), in place. */
export const takeDistance = (g: Gaussian, distanceM: number, sdM: number): void => {
  const h = new Float64Array(N);
  h[S] = 1;
  update(g, h, distanceM - at(g, S), sdM ** 2);
};
