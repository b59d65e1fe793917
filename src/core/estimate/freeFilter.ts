import type { Coupling, Gaussian, Row } from './kalman.ts';
import { independent, predict, update, zeros } from './kalman.ts';
import type { ReceiverPrior } from './receiver.ts';
import * as runner from './runner.ts';

/**
 * The filter without a line: displacement along the runner's own heading, never a sum of noisy steps. What it keeps:
 * where the receiver sees the runner (east, north), the heading, the speed kept up and its waver, the distance run so
 * far, the Doppler speed's relative error, and by how much a metre run is less than a metre of the official course.
 * Noise across the heading turns the heading; only what lies along it is distance, so noise does not add up. Where the
 * receiver gives a speed the tracker lets that alone count the way, and uses no places.
 */
const EAST = 0;
const NORTH = 1;
const HEADING = 2;
export const BASE = 3;
const WAVER = 4;
const S = 5;
const SPEED_SCALE = 6;
const COURSE_SCALE = 7;
const N = 8;

/** How fast the slow receiver error walks: 2σ²/τ for σ = 3 m, τ = 80 s. It cannot be told from the runner's own way. */
const PLACE_WALK_M2_PER_S = 0.22;
/** Quick error of a reading, per axis. */
const PLACE_SD_M = 1.5;
/** Streets bend by about this much in a second, where no corner is. */
const TURN_RAD_PER_SQRT_S = 0.06;
const FIRST_HEADING_SD_RAD = 0.6;
/**
 * A metre of the official course is a little more on the road: courses are laid out 0.1 % too long so that none is short
 * (short course prevention factor, USATF), and runners leave the shortest line (receivers in city marathons read long:
 * Lluch et al. 2020, seen in summary), by how much nobody knows beforehand. The first guess, and how far it may be off.
 */
export const COURSE_SCALE_MEAN = 0.001;
const COURSE_SCALE_SD = 0.004;
/** Without Doppler speed the noise across the path still lengthens it a little. */
const PLACE_ONLY_SCALE_SD = 0.012;

const at = (g: Gaussian, i: number): number => g.x[i] as number;

export const firstBelief = (
  eastM: number,
  northM: number,
  headingRad: number,
  distanceM: number,
  distanceSdM: number,
  prior: ReceiverPrior,
  doppler: boolean,
): Gaussian =>
  independent(
    [eastM, northM, headingRad, runner.FIRST_SPEED_MPS, 0, distanceM, 0, COURSE_SCALE_MEAN],
    [
      PLACE_SD_M,
      PLACE_SD_M,
      FIRST_HEADING_SD_RAD,
      runner.FIRST_SPEED_SD_MPS,
      runner.GETAWAY_SD_MPS,
      distanceSdM,
      prior.speedScaleSd,
      doppler ? COURSE_SCALE_SD : PLACE_ONLY_SCALE_SD,
    ],
  );

export const speedOf = (g: Gaussian): number => at(g, BASE) + at(g, WAVER);

/** Moves the belief on, in place. */
export const advance = (g: Gaussian, dtS: number, restlessVar = 0): void => {
  if (!(dtS > 0)) return;
  g.P[WAVER * N + WAVER] = (g.P[WAVER * N + WAVER] as number) + restlessVar / 2;
  const v = speedOf(g);
  const heading = at(g, HEADING);
  const sin = Math.sin(heading);
  const cos = Math.cos(heading);
  const keep = 1 - at(g, COURSE_SCALE);
  const waver = Math.exp(-dtS / runner.WAVER_TAU_S);
  const wavering = runner.WAVER_TAU_S * (1 - waver);
  const [base, wav] = [at(g, BASE), at(g, WAVER)];
  const stepM = base * dtS + wav * wavering;
  const mean = g.x.slice();
  const couplings: Coupling[] = [
    { row: EAST, col: HEADING, value: stepM * cos },
    { row: EAST, col: BASE, value: sin * dtS },
    { row: EAST, col: WAVER, value: sin * wavering },
    { row: NORTH, col: HEADING, value: -stepM * sin },
    { row: NORTH, col: BASE, value: cos * dtS },
    { row: NORTH, col: WAVER, value: cos * wavering },
    { row: S, col: BASE, value: keep * dtS },
    { row: S, col: WAVER, value: keep * wavering },
    { row: S, col: COURSE_SCALE, value: -stepM },
  ];
  const q = zeros(N);
  const qWaver = runner.WAVER_SD_MPS ** 2 * (1 - waver * waver);
  q[EAST] = PLACE_WALK_M2_PER_S * dtS;
  q[NORTH] = PLACE_WALK_M2_PER_S * dtS;
  q[HEADING] = TURN_RAD_PER_SQRT_S ** 2 * dtS * Math.min(1, Math.max(0.1, v / 3));
  const unseen = runner.unseen(v, dtS);
  q[BASE] = runner.BASE_WALK_MPS_PER_SQRT_S ** 2 * dtS + unseen.mps ** 2;
  q[WAVER] = qWaver + restlessVar / 2;
  q[S] = (qWaver * dtS * dtS) / 3 + unseen.m ** 2;
  predict(g, [1, 1, 1, 1, waver, 1, 1, 1], couplings, q);
  // The step itself is not linear in the heading: the mean moves along it.
  for (const [i, x] of mean.entries()) g.x[i] = x;
  g.x[EAST] = (mean[EAST] as number) + stepM * sin;
  g.x[NORTH] = (mean[NORTH] as number) + stepM * cos;
  g.x[S] = (mean[S] as number) + stepM * keep;
  g.x[WAVER] = wav * waver;
};

/** Moves the belief on by a way that was seen, not reckoned, in place. */
export const stepBy = (
  g: Gaussian,
  dtS: number,
  wayM: number,
  wayVarM2: number,
  couplings: readonly Coupling[] = [],
): void => {
  const waver = Math.exp(-dtS / runner.WAVER_TAU_S);
  const distanceM = at(g, S) + wayM * (1 - at(g, COURSE_SCALE));
  const q = zeros(N);
  q[BASE] = runner.BASE_WALK_MPS_PER_SQRT_S ** 2 * dtS;
  q[WAVER] = runner.WAVER_SD_MPS ** 2 * (1 - waver * waver);
  q[S] = wayVarM2;
  const all = [{ row: S, col: COURSE_SCALE, value: -wayM }, ...couplings];
  predict(g, [1, 1, 1, 1, waver, 1, 1, 1], all, q);
  g.x[S] = distanceM;
};

/** Moves on by the mean of two Doppler speeds, in place. */
export const stepBySpeeds = (g: Gaussian, dtS: number, speedMps: number, sdMps: number): void => {
  const wayM = (speedMps * dtS) / (1 + at(g, SPEED_SCALE));
  // Each reading counts for one step in all, half before it and half behind.
  stepBy(g, dtS, wayM, (sdMps * dtS) ** 2, [{ row: S, col: SPEED_SCALE, value: -wayM }]);
};

/** Squared Mahalanobis distance of a position (the two axes taken apart, which is enough for a gate). */
export const fitPosition = (g: Gaussian, eastM: number, northM: number, extraSdM: number): number => {
  const r = PLACE_SD_M ** 2 + extraSdM ** 2;
  const see = (g.P[EAST * N + EAST] as number) + r;
  const snn = (g.P[NORTH * N + NORTH] as number) + r;
  const sen = g.P[EAST * N + NORTH] as number;
  const ie = eastM - at(g, EAST);
  const inn = northM - at(g, NORTH);
  return (ie * ie * snn - 2 * ie * inn * sen + inn * inn * see) / (see * snn - sen * sen);
};

const one = (i: number): Row => ({ at: [i], by: [1] });

export const takePosition = (g: Gaussian, eastM: number, northM: number, extraSdM: number): void => {
  const r = PLACE_SD_M ** 2 + extraSdM ** 2;
  update(g, one(EAST), eastM - at(g, EAST), r);
  update(g, one(NORTH), northM - at(g, NORTH), r);
};

/** Innovation of a Doppler speed and its variance without the reading's own noise. */
export const fitSpeed = (
  g: Gaussian,
  speedMps: number,
): { readonly innovation: number; readonly variance: number } => {
  const k = 1 + at(g, SPEED_SCALE);
  const c = (i: number, j: number): number => g.P[i * N + j] as number;
  return {
    innovation: speedMps - speedOf(g) * k,
    variance: k * k * (c(BASE, BASE) + 2 * c(BASE, WAVER) + c(WAVER, WAVER)),
  };
};

/**
 * A speed teaches nothing about its own scale: only boards do. Taken for news of it, a change of pace would shorten or
 * lengthen all the way behind.
 */
export const takeSpeed = (g: Gaussian, speedMps: number, sdMps: number): void => {
  const scale = 1 + at(g, SPEED_SCALE);
  const h = { at: [BASE, WAVER], by: [scale, scale] };
  update(g, h, speedMps - speedOf(g) * scale, sdMps ** 2);
};

/** Takes in that the runner is at a known distance now (a board), in place: this is what teaches the scale. */
export const takeDistance = (g: Gaussian, distanceM: number, sdM: number): void => {
  update(g, one(S), distanceM - at(g, S), sdM ** 2);
};

export const loosenSpeed = (g: Gaussian, byMps: number): void => {
  g.P[BASE * N + BASE] = (g.P[BASE * N + BASE] as number) + byMps ** 2;
  g.P[WAVER * N + WAVER] = (g.P[WAVER * N + WAVER] as number) + (byMps / 2) ** 2;
};

/** A corner: the heading may be anything near what the readings say. */
export const loosenHeading = (g: Gaussian, byRad: number): void => {
  g.P[HEADING * N + HEADING] = (g.P[HEADING * N + HEADING] as number) + byRad ** 2;
};

/** The receiver has jumped: its place is known afresh, the distance run is not touched. */
export const moveTo = (g: Gaussian, eastM: number, northM: number): void => {
  for (const i of [EAST, NORTH]) {
    for (let j = 0; j < N; j++) {
      g.P[i * N + j] = 0;
      g.P[j * N + i] = 0;
    }
    g.P[i * N + i] = PLACE_SD_M ** 2;
  }
  g.x[EAST] = eastM;
  g.x[NORTH] = northM;
};

/** The heading is known afresh, in place. */
export const headTo = (g: Gaussian, rad: number, sdRad: number): void => {
  for (let j = 0; j < N; j++) {
    g.P[HEADING * N + j] = 0;
    g.P[j * N + HEADING] = 0;
  }
  g.P[HEADING * N + HEADING] = sdRad ** 2;
  g.x[HEADING] = rad;
};

/** How far a place is from where the receiver was last believed to see the runner. */
export const awayM = (g: Gaussian, eastM: number, northM: number): number =>
  Math.hypot(eastM - at(g, EAST), northM - at(g, NORTH));

export const distanceOf = (g: Gaussian): number => at(g, S);
export const distanceVarOf = (g: Gaussian): number => g.P[S * N + S] as number;
/** Official metres a second: what the board counts. */
export const officialSpeedOf = (g: Gaussian): number => speedOf(g) * (1 - at(g, COURSE_SCALE));
export const baseSpeedOf = (g: Gaussian): number => at(g, BASE) * (1 - at(g, COURSE_SCALE));
export const speedVarOf = (g: Gaussian): number =>
  (g.P[BASE * N + BASE] as number) +
  2 * (g.P[BASE * N + WAVER] as number) +
  (g.P[WAVER * N + WAVER] as number);
