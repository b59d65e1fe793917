/**
 * Takes the shake out of a recorded line, so that its length is spread along the course as on the ground.
 *
 * A recorded line is a chain of points that each miss the road by a metre or more, often with every other point left
 * out. Shake makes straight streets too long, a corner that fell between two points makes the course too short there;
 * scaling the whole to the official distance then leaves 5 to 15 m of error in the middle (measured on simulated
 * lines with 1.5 m of shake). Roads are mostly straight runs and corners: so the points are parted into runs that a
 * straight line explains within the shake, and where two runs meet at an angle, the corner is where their lines cross.
 */

import { type Corner, cornerAt, cornerDoubtM2, foot, joint } from './corners.ts';
import { at, medianLegM, type Polyline, runsOf, shakeM } from './runs.ts';

/** Shake below this is rounding; the line is then left nearly as it is. */
const MIN_SHAKE_M = 0.2;
/** A line drawn by hand or by an organiser with few points has corners, not shake. */
const MAX_SHAKE_M = 5;
const MAX_LEG_M = 40;

export interface Straightened extends Polyline {
  /** Which point of the input each vertex stands for; corners get a value between their neighbours. */
  readonly index: Float64Array;
  /** Variance of length, m², that comes in at each vertex. */
  readonly doubtM2: Float64Array;
  readonly corners: readonly Corner[];
  /** The shake, m. */
  readonly shakeM: number;
}
/** @param line points in metres, in order of running; left as it is where it does not shake */
export const straighten = (line: Polyline): Straightened => {
  const shake = shakeM(line).map((sigma) => Math.max(MIN_SHAKE_M, sigma));
  const worst = shake.reduce((most, sigma) => Math.max(most, sigma), 0);
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
  if (worst <= MIN_SHAKE_M || worst > MAX_SHAKE_M || line.eastM.length < 12 || medianLegM(line) > MAX_LEG_M) {
    return {
      ...line,
      index: Float64Array.from(line.eastM, (_, i) => i),
      doubtM2: new Float64Array(line.eastM.length),
      corners: [],
      shakeM: worst,
    };
  }
  const runs = runsOf(line, shake);
  const usualLegM = medianLegM(line);
  const corners: Corner[] = runs[0] ? [cornerAt(0, null, runs[0], at(shake, 0), usualLegM)] : [];
  let startT = Number.NEGATIVE_INFINITY;
  runs.forEach((run, k) => {
    const next = runs[k + 1];
    const sigma = at(shake, run.to);
    const ends = next ? joint(line, run, next, sigma, usualLegM) : [];
    const stop = ends[0] ? foot(run, ends[0][0], ends[0][1]).t : Number.POSITIVE_INFINITY;
    for (let i = run.from; i <= run.to; i++) {
      const f = foot(run, at(line.eastM, i), at(line.northM, i));
      if (f.t > startT && f.t < stop) {
        push(f.e, f.n, i);
        startT = f.t;
      }
    }
    if (next) corners.push(cornerAt(east.length, run, next, sigma, usualLegM));
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
    corners,
    shakeM: worst,
  };
};
