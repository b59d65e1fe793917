/**
 * Takes the shake out of a recorded line, so that its length is spread along the course as on the ground.
 *
 * A recorded line is a chain of points that each miss the road by a metre or more, often with every other point left
 * out. Shake makes straight streets too long, a corner that fell between two points makes the course too short there;
 * scaling the whole to the official distance then leaves 5 to 15 m of error in the middle (measured on simulated
 * lines with 1.5 m of shake). Roads are mostly straight runs and corners: so the points are parted into runs that a
 * straight line explains within the shake, and where two runs meet at an angle, the corner is where their lines cross.
 */

import { type Corner, cornerAt } from './corners.ts';
import { errsAlone, hasEvenSteps, passOver } from './evenSteps.ts';
import { cornersOf, lay, type PassesOf, type Vertex } from './lay.ts';
import { roadRunAgain } from './road.ts';
import { layRoad } from './roadLaid.ts';
import { layRow } from './rowLaid.ts';
import { at, medianLegM, type Polyline, runsOf, shakeM } from './runs.ts';

/** Shake below this is rounding; the line is then left nearly as it is. */
const MIN_SHAKE_M = 0.2;
/** A line drawn by hand or by an organiser with few points has corners, not shake. */
const MAX_SHAKE_M = 5;
const MAX_LEG_M = 40;

/** Where nothing is known against a line: surveys of one's own lines are off by about half a metre a kilometre. */
const DOUBT_M2_PER_M = 0.3 / 1000;

export interface Straightened extends Polyline {
  /** Which point of the input each vertex stands for; corners get a value between their neighbours. */
  readonly index: Float64Array;
  /** Variance of length, m², that comes in at each vertex. */
  readonly doubtM2: Float64Array;
  /** Length to be added at each vertex, half of it before and half behind, m. */
  readonly addM: Float64Array;
  readonly corners: readonly Corner[];
  /** Variance of length along the way where no corner is, m² per m. */
  readonly doubtM2PerM: number;
  /** The shake, m. */
  readonly shakeM: number;
  /** Vertices that part the line into pieces of equal length: where a road run more than once begins again. */
  readonly seams: readonly number[];
}

const lineOf = (
  vertices: readonly Vertex[],
): Pick<Straightened, 'index' | 'doubtM2' | 'addM' | keyof Polyline> => ({
  eastM: Float64Array.from(vertices, (v) => v.eastM),
  northM: Float64Array.from(vertices, (v) => v.northM),
  index: Float64Array.from(vertices, (v) => v.index),
  doubtM2: Float64Array.from(vertices, (v) => v.doubtM2),
  addM: Float64Array.from(vertices, (v) => v.addM),
});

/**
 * @param line points in metres, in order of running; left as it is where it does not shake
 * @param steps whether a step between two points was cut in mid-line
 */
export const straighten = (line: Polyline, steps: 'whole' | 'cut' = 'whole'): Straightened => {
  const shake = shakeM(line).map((sigma) => Math.max(MIN_SHAKE_M, sigma));
  const worst = shake.reduce((most, sigma) => Math.max(most, sigma), 0);
  const points = line.eastM.length;
  const legM = medianLegM(line);
  if (worst <= MIN_SHAKE_M || worst > MAX_SHAKE_M || points < 12 || legM > MAX_LEG_M)
    return {
      ...line,
      index: Float64Array.from(line.eastM, (_, i) => i),
      doubtM2: new Float64Array(points),
      addM: new Float64Array(points),
      corners: [],
      doubtM2PerM: DOUBT_M2_PER_M,
      shakeM: worst,
      seams: [],
    };
  const road = roadRunAgain(line, worst);
  const laidRoad = road && layRoad(line, road, worst, legM);
  if (laidRoad)
    return {
      ...lineOf(laidRoad.vertices),
      corners: laidRoad.corners,
      doubtM2PerM: DOUBT_M2_PER_M,
      shakeM: worst,
      seams: laidRoad.seams,
    };
  const runs = runsOf(line, shake, legM);
  const even = hasEvenSteps(line, runs, worst);
  const row = steps === 'whole' && even && errsAlone(line, runs) ? layRow(line, runs, worst, legM) : null;
  if (row)
    return {
      ...lineOf(row.vertices),
      corners: row.corners,
      doubtM2PerM: row.doubtM2PerM,
      shakeM: worst,
      seams: [],
    };
  const passesOf: PassesOf = (a, b) =>
    even ? [[passOver(line, a, a.from, a.to), passOver(line, b, b.from, b.to)]] : [];
  const { vertices, meetings } = lay(line, shake, legM, runs, passesOf);
  const first = runs[0] ? [cornerAt(0, null, runs[0], at(shake, 0), legM)] : [];
  return {
    ...lineOf(vertices),
    corners: [...first, ...cornersOf(meetings, legM)],
    doubtM2PerM: DOUBT_M2_PER_M,
    shakeM: worst,
    seams: [],
  };
};
