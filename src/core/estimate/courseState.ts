import { easeAt, type Hills } from './hills.ts';
import type { Gaussian } from './kalman.ts';
import { independent } from './kalman.ts';
import type { Air, ReceiverPrior } from './receiver.ts';
import * as runner from './runner.ts';

/**
 * The filter on a known line. What it keeps, as one Gaussian:
 * the way: distance along the course, speed kept up, waver, how much of even effort the speed shows on slopes, the
 * line's own error; then the receiver's error east and north in its slow, quick and staying parts; how late positions
 * come; how far aside of the line the runner is; the Doppler speed's relative error; the line's error aside. Speed and
 * waver are kept as they would be on the level.
 * The error is kept in east and north, not along and across: as the course turns, what was seen across the line on one
 * street tells what must be taken off along the line on the next.
 */
export const S = 0;
export const BASE = 1;
export const WAVER = 2;
export const HILL = 3;
export const LINE = 4;
/** So many of the states are the runner's way; the others say how the receiver sees it. */
export const WAY = 5;
export const SLOW_E = 5;
export const SLOW_N = 6;
export const QUICK_E = 7;
export const QUICK_N = 8;
export const STAY_E = 9;
export const STAY_N = 10;
export const LAG = 11;
export const ASIDE = 12;
export const SPEED_SCALE = 13;
export const OFFSET = 14;
export const TILT = 15;
/** Where a stretch began that is to be measured by itself (stretch.ts); nothing else looks at it. */
export const BEGAN = 16;
/** Dimensions of the state. */
export const N = 17;

export const firstBelief = (
  air: Air,
  prior: ReceiverPrior,
  distanceM: number,
  distanceSdM: number,
  lineSdM: number,
): Gaussian =>
  independent(
    [distanceM, runner.FIRST_SPEED_MPS, 0, runner.HILL_SHARE, 0, 0, 0, 0, 0, 0, 0, prior.lagS, 0, 0, 0, 0, 0],
    [
      distanceSdM,
      runner.FIRST_SPEED_SD_MPS,
      runner.GETAWAY_SD_MPS,
      runner.HILL_SHARE_SD,
      lineSdM,
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
      0,
      0,
    ],
  );

export const at = (g: Gaussian, i: number): number => g.x[i] as number;
export const cov = (g: Gaussian, i: number, j: number): number => g.P[i * g.x.length + j] as number;

/** What was known of a part of the state is given up, in place. */
export const forget = (g: Gaussian, i: number): void => {
  for (let j = 0; j < N; j++) {
    g.P[i * N + j] = 0;
    g.P[j * N + i] = 0;
  }
  g.x[i] = 0;
};

/**
 * Widens the belief about the speed when the runner has plainly changed it (a stop, a station, a sprint), in place. Most
 * of a change may last: a waver would be taken back within a minute.
 */
export const loosenSpeed = (g: Gaussian, byMps: number): void => {
  g.P[BASE * N + BASE] = cov(g, BASE, BASE) + byMps ** 2;
  g.P[WAVER * N + WAVER] = cov(g, WAVER, WAVER) + (byMps / 2) ** 2;
};

/** Widens the belief about place and receiver error when readings have long disagreed with it. */
export const loosenPlace = (g: Gaussian, alongM: number, errorM: number): void => {
  g.P[S * N + S] = cov(g, S, S) + alongM ** 2;
  g.P[SLOW_E * N + SLOW_E] = cov(g, SLOW_E, SLOW_E) + errorM ** 2;
  g.P[SLOW_N * N + SLOW_N] = cov(g, SLOW_N, SLOW_N) + errorM ** 2;
};

export const distanceOf = (g: Gaussian): number => at(g, S);
/** Where on the line that is: its own error counted in. */
export const placeOf = (g: Gaussian): number => at(g, S) + at(g, LINE);
export const distanceVarOf = (g: Gaussian): number => cov(g, S, S);
/** Variance of the line's own error at the runner's place, m². */
export const lineVarOf = (g: Gaussian): number => cov(g, LINE, LINE);
export const levelSpeedOf = (g: Gaussian): number => at(g, BASE) + at(g, WAVER);

/** The belief about the way alone: all that is told of it, and all that it takes to foretell it, is in there. */
export const wayOf = ({ x, P }: Gaussian): Gaussian => {
  const way = P.slice(0, WAY * WAY);
  for (let i = 1; i < WAY; i++) for (let j = 0; j < WAY; j++) way[i * WAY + j] = P[i * N + j] as number;
  return { x: x.slice(0, WAY), P: way };
};

/** However steep it is, and whatever is believed of the runner. */
const LEAST_SLOPE_FACTOR = 0.2;

/**
 * What a slope makes of the speed on the level.
 * @param hillShare how much of even effort the runner shows
 * @param ease of the slope for even effort (hills.ts)
 */
export const slopeFactor = (hillShare: number, ease: number): number =>
  Math.max(LEAST_SLOPE_FACTOR, 1 + hillShare * ease);

/** Speed along the road at the believed place. */
export const speedOf = (g: Gaussian, hills: Hills | null): number =>
  levelSpeedOf(g) * slopeFactor(at(g, HILL), easeAt(hills, at(g, S)));

export const speedVarOf = (g: Gaussian, hills: Hills | null): number => {
  const ease = easeAt(hills, at(g, S));
  const onLevel = cov(g, BASE, BASE) + 2 * cov(g, BASE, WAVER) + cov(g, WAVER, WAVER);
  const factor = slopeFactor(at(g, HILL), ease);
  const byHill = ease * levelSpeedOf(g);
  const both = cov(g, BASE, HILL) + cov(g, WAVER, HILL);
  return factor ** 2 * onLevel + 2 * factor * byHill * both + byHill ** 2 * cov(g, HILL, HILL);
};
export const baseSpeedOf = (g: Gaussian): number => at(g, BASE);

/** Widens where on the line that is without widening how far the runner has come, in place. */
export const loosenLine = (g: Gaussian, lineM: number, errorM: number): void => {
  loosenPlace(g, 0, errorM);
  g.P[LINE * N + LINE] = cov(g, LINE, LINE) + lineM ** 2;
};

/** Puts the line under the runner elsewhere, in place: how far they have come is kept. */
export const lineAt = (g: Gaussian, placeM: number, sdM: number): void => {
  for (const i of [LINE, OFFSET, TILT]) forget(g, i);
  g.x[LINE] = placeM - at(g, S);
  g.P[LINE * N + LINE] = sdM ** 2 + distanceVarOf(g);
};

/** Puts the belief at another place along the line, in place: what was known of the old one is given up. */
export const placeAt = (g: Gaussian, distanceM: number, sdM: number): void => {
  for (const i of [S, LINE, OFFSET, TILT]) forget(g, i);
  g.P[S * N + S] = sdM ** 2;
  g.x[S] = distanceM;
};
