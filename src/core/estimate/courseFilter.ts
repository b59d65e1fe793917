import type { CourseLine } from '../course/line.ts';
import { doubtAtM2, eastAtM, northAtM } from '../course/line.ts';
import type { Coupling, Gaussian } from './kalman.ts';
import { independent, predict, update } from './kalman.ts';
import type { Air, ReceiverPrior } from './receiver.ts';
import { WHITE_SD_M } from './receiver.ts';
import * as runner from './runner.ts';

/**
 * The filter on a known line. What it keeps, as one Gaussian:
 * distance along the course, speed kept up, waver; the receiver's error east and north in its slow, quick and staying
 * parts; how late positions come; how far aside of the line the runner is; the Doppler speed's relative error.
 * The error is kept in east and north, not along and across: as the course turns, what was seen across the line on one
 * street tells what must be taken off along the line on the next.
 */
export const S = 0;
export const BASE = 1;
export const WAVER = 2;
export const SLOW_E = 3;
export const SLOW_N = 4;
export const QUICK_E = 5;
export const QUICK_N = 6;
export const STAY_E = 7;
export const STAY_N = 8;
export const LAG = 9;
export const ASIDE = 10;
export const SPEED_SCALE = 11;
export const LINE = 12;
const N = 13;

export const firstBelief = (
  air: Air,
  prior: ReceiverPrior,
  distanceM: number,
  distanceSdM: number,
): Gaussian =>
  independent(
    [distanceM, runner.FIRST_SPEED_MPS, 0, 0, 0, 0, 0, 0, 0, prior.lagS, 0, 0, 0],
    [
      distanceSdM,
      runner.FIRST_SPEED_SD_MPS,
      runner.GETAWAY_SD_MPS,
      air.slowSdM,
      air.slowSdM,
      air.quickSdM,
      air.quickSdM,
      prior.stayingSdM,
      prior.stayingSdM,
      prior.lagSdS,
      runner.ASIDE_SD_M,
      prior.speedScaleSd,
      0,
    ],
  );

/** Moves the belief on by dtS seconds, in place. */
export const advance = (g: Gaussian, line: CourseLine, air: Air, dtS: number): void => {
  if (!(dtS > 0)) return;
  const waver = Math.exp(-dtS / runner.WAVER_TAU_S);
  const slow = Math.exp(-dtS / air.slowTauS);
  const quick = Math.exp(-dtS / air.quickTauS);
  const aside = Math.exp(-dtS / runner.ASIDE_TAU_S);
  const from = Math.max(0, at(g, S));
  const stepM = Math.max(0, speedOf(g) * dtS);
  const restM = Math.max(line.officialM - from, stepM, 1);
  // The line's ends are the course's ends: its error is a bridge, drawn to nothing as the finish comes near.
  const bridge = 1 - Math.min(0.5, stepM / restM);
  const decay = Float64Array.of(1, 1, waver, slow, slow, quick, quick, 1, 1, 1, aside, 1, bridge);
  const couplings: Coupling[] = [
    { row: S, col: BASE, value: dtS },
    { row: S, col: WAVER, value: runner.WAVER_TAU_S * (1 - waver) },
  ];
  const qWaver = runner.WAVER_SD_MPS ** 2 * (1 - waver * waver);
  const qSlow = air.slowSdM ** 2 * (1 - slow * slow);
  const qQuick = air.quickSdM ** 2 * (1 - quick * quick);
  const q = new Float64Array(N);
  q[S] = (qWaver * dtS * dtS) / 3;
  q[BASE] = runner.BASE_WALK_MPS_PER_SQRT_S ** 2 * dtS;
  q[WAVER] = qWaver;
  q[SLOW_E] = qSlow;
  q[SLOW_N] = qSlow;
  q[QUICK_E] = qQuick;
  q[QUICK_N] = qQuick;
  q[ASIDE] = runner.ASIDE_SD_M ** 2 * (1 - aside * aside);
  q[LINE] = from < line.officialM ? Math.max(0, doubtAtM2(line, from + stepM) - doubtAtM2(line, from)) : 0;
  predict(g, decay, couplings, q);
};

const at = (g: Gaussian, i: number): number => g.x[i] as number;
const cov = (g: Gaussian, i: number, j: number): number => g.P[i * N + j] as number;

/** Half the chord over which the line's direction is taken: shorter than a street corner, longer than a jitter. */
const CHORD_HALF_M = 6;

/** How far aside of the line (left is positive) a reading falls at the believed place. */
export const acrossM = (g: Gaussian, line: CourseLine, eastM: number, northM: number): number => {
  const e = expectAt(line, g.x);
  const along = at(g, S) + at(g, LINE) - at(g, LAG) * speedOf(g);
  return (
    (eastM - eastAtM(line, along)) * (e.hEast[ASIDE] as number) +
    (northM - northAtM(line, along)) * (e.hNorth[ASIDE] as number)
  );
};

interface Expectation {
  readonly eastM: number;
  readonly northM: number;
  readonly hEast: Float64Array;
  readonly hNorth: Float64Array;
}

/** What a reading should be at the state x, and how it changes with the state (the measurement's Jacobian). */
const expectAt = (line: CourseLine, x: Float64Array): Expectation => {
  const v = (x[BASE] as number) + (x[WAVER] as number);
  const lag = x[LAG] as number;
  const along = (x[S] as number) + (x[LINE] as number) - lag * v;
  const east = eastAtM(line, along);
  const north = northAtM(line, along);
  const te = (eastAtM(line, along + CHORD_HALF_M) - eastAtM(line, along - CHORD_HALF_M)) / (2 * CHORD_HALF_M);
  const tn =
    (northAtM(line, along + CHORD_HALF_M) - northAtM(line, along - CHORD_HALF_M)) / (2 * CHORD_HALF_M);
  const length = Math.hypot(te, tn) || 1;
  const hEast = new Float64Array(N);
  const hNorth = new Float64Array(N);
  const put = (h: Float64Array, t: number, aside: number): void => {
    h[S] = t;
    h[LINE] = t;
    h[BASE] = -lag * t;
    h[WAVER] = -lag * t;
    h[LAG] = -v * t;
    h[ASIDE] = aside;
  };
  put(hEast, te, -tn / length);
  put(hNorth, tn, te / length);
  hEast[SLOW_E] = hEast[QUICK_E] = hEast[STAY_E] = 1;
  hNorth[SLOW_N] = hNorth[QUICK_N] = hNorth[STAY_N] = 1;
  const aside = x[ASIDE] as number;
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
  line: CourseLine,
  eastM: number,
  northM: number,
  extraSdM: number,
): Fit => {
  const e = expectAt(line, g.x);
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
  line: CourseLine,
  eastM: number,
  northM: number,
  extraSdM: number,
): void => {
  const r = WHITE_SD_M ** 2 + extraSdM ** 2;
  const x0 = g.x.slice();
  const P0 = g.P.slice();
  let from = x0;
  for (let round = 0; round < 3; round++) {
    const e = expectAt(line, from);
    let eastOff = eastM - e.eastM;
    let northOff = northM - e.northM;
    for (let i = 0; i < N; i++) {
      const step = (x0[i] as number) - (from[i] as number);
      eastOff -= (e.hEast[i] as number) * step;
      northOff -= (e.hNorth[i] as number) * step;
    }
    g.x.set(x0);
    g.P.set(P0);
    update(g, e.hEast, eastOff, r);
    let expected = northOff;
    for (let i = 0; i < N; i++)
      expected -= (e.hNorth[i] as number) * ((g.x[i] as number) - (x0[i] as number));
    update(g, e.hNorth, expected, r);
    if (Math.abs((g.x[S] as number) - (from[S] as number)) < RELINEARISE_M) return;
    from = g.x.slice();
  }
};

const speedRow = (g: Gaussian): Float64Array => {
  const h = new Float64Array(N);
  h[BASE] = h[WAVER] = 1 + at(g, SPEED_SCALE);
  h[SPEED_SCALE] = speedOf(g);
  return h;
};

/** Innovation of a Doppler speed and its variance without the reading's own noise. */
export const fitSpeed = (
  g: Gaussian,
  speedMps: number,
): { readonly innovation: number; readonly variance: number } => {
  const h = speedRow(g);
  return { innovation: speedMps - speedOf(g) * (1 + at(g, SPEED_SCALE)), variance: quadratic(g, h, h) };
};

/** Takes a Doppler speed in, in place. */
export const takeSpeed = (g: Gaussian, speedMps: number, sdMps: number): void => {
  const { innovation } = fitSpeed(g, speedMps);
  update(g, speedRow(g), innovation, sdMps ** 2);
};

/** Takes in that the runner is at a known distance now (the start line, a board), in place. */
export const takeDistance = (g: Gaussian, distanceM: number, sdM: number): void => {
  const h = new Float64Array(N);
  h[S] = 1;
  update(g, h, distanceM - at(g, S), sdM ** 2);
};

/** Widens the belief about the speed when the runner has plainly changed it (a stop, a station, a sprint). */
export const loosenSpeed = (g: Gaussian, byMps: number): void => {
  g.P[WAVER * N + WAVER] = cov(g, WAVER, WAVER) + byMps ** 2;
};

/** Widens the belief about place and receiver error when readings have long disagreed with it. */
export const loosenPlace = (g: Gaussian, alongM: number, errorM: number): void => {
  g.P[S * N + S] = cov(g, S, S) + alongM ** 2;
  g.P[SLOW_E * N + SLOW_E] = cov(g, SLOW_E, SLOW_E) + errorM ** 2;
  g.P[SLOW_N * N + SLOW_N] = cov(g, SLOW_N, SLOW_N) + errorM ** 2;
};

export const distanceOf = (g: Gaussian): number => at(g, S);
export const distanceVarOf = (g: Gaussian): number => cov(g, S, S);
export const speedOf = (g: Gaussian): number => at(g, BASE) + at(g, WAVER);
export const speedVarOf = (g: Gaussian): number =>
  cov(g, BASE, BASE) + 2 * cov(g, BASE, WAVER) + cov(g, WAVER, WAVER);
export const baseSpeedOf = (g: Gaussian): number => at(g, BASE);

/** Puts the belief at another place along the line, in place: what was known of the old one is given up. */
export const placeAt = (g: Gaussian, distanceM: number, sdM: number): void => {
  for (const i of [S, LINE]) {
    for (let j = 0; j < N; j++) {
      g.P[i * N + j] = 0;
      g.P[j * N + i] = 0;
    }
  }
  g.P[S * N + S] = sdM ** 2;
  g.x[S] = distanceM;
  g.x[LINE] = 0;
};
