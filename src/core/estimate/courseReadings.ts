import { frameAt } from '../course/line.ts';
import {
  ASIDE,
  at,
  BASE,
  HILL,
  LAG,
  LINE,
  levelSpeedOf,
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
  WAVER,
} from './courseState.ts';
import { easeAt, type Hills, type Road } from './hills.ts';
import { copyOf, dot, type Gaussian, quadratic, type Row, update } from './kalman.ts';
import type { PlaneFix } from './planeFix.ts';
import { WHITE_SD_M } from './receiver.ts';

/** Half the chord over which the line's direction is taken: shorter than a street corner, longer than a jitter. */
const CHORD_HALF_M = 6;

/** What a position reading should be, and how it changes with the state (the measurement's Jacobian). */
export interface Expectation {
  readonly eastM: number;
  readonly northM: number;
  readonly hEast: Row;
  readonly hNorth: Row;
  /** The place on the line, and the direction there, of length 1. */
  readonly placeEastM: number;
  readonly placeNorthM: number;
  readonly towardsE: number;
  readonly towardsN: number;
}

const EAST_AT = [S, LINE, BASE, WAVER, HILL, LAG, ASIDE, OFFSET, SLOW_E, QUICK_E, STAY_E];
const NORTH_AT = [S, LINE, BASE, WAVER, HILL, LAG, ASIDE, OFFSET, SLOW_N, QUICK_N, STAY_N];

/** What a position reading should be at the mean x of a belief. */
export const expectAt = ({ line, hills }: Road, x: readonly number[]): Expectation => {
  const of = (i: number): number => x[i] as number;
  const level = of(BASE) + of(WAVER);
  const ease = easeAt(hills, of(S));
  const slope = slopeFactor(of(HILL), ease);
  const lag = of(LAG);
  const place = frameAt(line, of(S) + of(LINE) - lag * level * slope, CHORD_HALF_M);
  const { eastM, northM, dirE, dirN } = place;
  const length = Math.hypot(dirE, dirN) || 1;
  const [towardsE, towardsN] = [dirE / length, dirN / length];
  const aside = of(ASIDE) - of(OFFSET);
  const row = (at: readonly number[], t: number, asideBy: number): Row => ({
    at,
    by: [
      t,
      t,
      -lag * slope * t,
      -lag * slope * t,
      -lag * ease * level * t,
      -level * slope * t,
      asideBy,
      -asideBy,
      1,
      1,
      1,
    ],
  });
  return {
    eastM: eastM + of(SLOW_E) + of(QUICK_E) + of(STAY_E) - aside * towardsN,
    northM: northM + of(SLOW_N) + of(QUICK_N) + of(STAY_N) + aside * towardsE,
    hEast: row(EAST_AT, dirE, -towardsN),
    hNorth: row(NORTH_AT, dirN, towardsE),
    placeEastM: eastM,
    placeNorthM: northM,
    towardsE,
    towardsN,
  };
};

/** How far aside of the line (left is positive) a reading falls at the believed place. */
export const acrossM = (e: Expectation, { eastM, northM }: PlaneFix): number =>
  (northM - e.placeNorthM) * e.towardsE - (eastM - e.placeEastM) * e.towardsN;

/** How a reading stands to the belief. */
export interface Fit {
  /** Squared Mahalanobis distance of the innovation (2 degrees of freedom). */
  readonly distance2: number;
  /** Log of the innovation's density. */
  readonly logLikelihood: number;
  readonly innovationEastM: number;
  readonly innovationNorthM: number;
}

/** Variance of a reading's own noise: what the air has, and more where the reading itself admits to be worse than usual. */
const noiseOf = ({ extraSdM }: PlaneFix): number => WHITE_SD_M ** 2 + extraSdM ** 2;

export const fitPosition = (g: Gaussian, e: Expectation, fix: PlaneFix): Fit => {
  const r = noiseOf(fix);
  const see = quadratic(g, e.hEast, e.hEast) + r;
  const snn = quadratic(g, e.hNorth, e.hNorth) + r;
  const sen = quadratic(g, e.hEast, e.hNorth);
  const det = see * snn - sen * sen;
  const ie = fix.eastM - e.eastM;
  const inn = fix.northM - e.northM;
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
const MOST_ROUNDS = 3;

/**
 * Takes a position in, in place.
 * @param first what is expected at the belief's mean
 */
export const takePosition = (g: Gaussian, road: Road, first: Expectation, fix: PlaneFix): void => {
  const r = noiseOf(fix);
  const offEastM = fix.eastM - first.eastM;
  const offNorthM = fix.northM - first.northM;
  // What is off by less than that cannot lead further: the common case, without keeping the prior.
  const isNear = Math.hypot(offEastM, offNorthM) < RELINEARISE_M;
  const prior = isNear ? g : copyOf(g);
  updateBoth(g, first, offEastM, offNorthM, r);
  if (isNear) return;
  let from: readonly number[] = prior.x;
  for (let round = 1; round < MOST_ROUNDS; round++) {
    if (Math.abs((g.x[S] as number) - (from[S] as number)) < RELINEARISE_M) return;
    from = g.x.slice();
    const e = expectAt(road, from);
    const back = prior.x.map((x, i) => x - (from[i] as number));
    for (const [i, x] of prior.x.entries()) g.x[i] = x;
    for (const [i, p] of prior.P.entries()) g.P[i] = p;
    updateBoth(
      g,
      e,
      fix.eastM - e.eastM - dot(e.hEast, back),
      fix.northM - e.northM - dot(e.hNorth, back),
      r,
    );
  }
};

/** The two axes one after the other, their noise being independent. */
const updateBoth = (g: Gaussian, e: Expectation, eastOff: number, northOff: number, r: number): void => {
  const before = dot(e.hNorth, g.x);
  update(g, e.hEast, eastOff, r);
  update(g, e.hNorth, northOff - (dot(e.hNorth, g.x) - before), r);
};

/** How a Doppler speed stands to the belief; `variance` is without the reading's own noise. */
export interface SpeedFit {
  readonly innovation: number;
  readonly variance: number;
  readonly h: Row;
}

const SPEED_AT = [BASE, WAVER, HILL, SPEED_SCALE];

export const fitSpeed = (g: Gaussian, hills: Hills | null, speedMps: number): SpeedFit => {
  const ease = easeAt(hills, at(g, S));
  const slope = slopeFactor(at(g, HILL), ease);
  const scale = 1 + at(g, SPEED_SCALE);
  const level = levelSpeedOf(g);
  const h = { at: SPEED_AT, by: [scale * slope, scale * slope, scale * ease * level, level * slope] };
  return { innovation: speedMps - level * slope * scale, variance: quadratic(g, h, h), h };
};

/** Takes a Doppler speed in, in place. The belief may have been widened since it was fitted, not moved. */
export const takeSpeed = (g: Gaussian, { h, innovation }: SpeedFit, sdMps: number): void => {
  update(g, h, innovation, sdMps ** 2);
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
  update(g, { at: [LAG], by: [1] }, bound - lag, LAG_BOUND_SD_S ** 2);
};

/** Takes in that the runner is at a known distance now (the start line, a board), in place. */
export const takeDistance = (g: Gaussian, distanceM: number, sdM: number): void => {
  update(g, { at: [S], by: [1] }, distanceM - at(g, S), sdM ** 2);
};
