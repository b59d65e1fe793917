import type { CourseLine } from '../course/line.ts';
import { eastAtM, linePoints, measureLine, northAtM } from '../course/line.ts';
import { type Contender, cornersBefore } from './contenders.ts';
import * as course from './courseState.ts';
import { hillsAlong } from './hills.ts';
import { copyOf } from './kalman.ts';
import { mayPartM, type Odometer } from './odometer.ts';
import type { PlaneFix } from './planeFix.ts';

/**
 * A line is scaled to the official distance: its recorder's noise made it too long all along. But a line may also be
 * right as it is, and end before the finish or run on behind it, or the official number may be wrong. The odometer
 * tells: its metres are those of the scaled line, or those of the line itself.
 */

/** Less than this of a mismatch no odometer can tell. */
const LEAST_MISMATCH = 0.012;
/** A line of points further apart than this is too short by what its chords cut, all along. */
const COARSE_M = 100;
/** By so much (log of chances) the line's own metres must be more likely; the scaled ones are beforehand. */
const PLAIN = 4;

/** How much likelier the line's own metres are than the scaled ones, as a logarithm. */
const oddsOfOwn = (mismatch: number, odometer: Odometer): number => {
  const { apartM, seenM } = odometer;
  return (apartM ** 2 - (apartM + mismatch * seenM) ** 2) / (2 * mayPartM(odometer) ** 2);
};

/** A line that has lost its scale says where the runner is; for how far they are the receiver counts for as much. */
const DOUBT_M2_PER_M = 0.4;
/** Nothing ties such a line to the official distance, not even its end. */
const UNTIED = [Number.POSITIVE_INFINITY];

const inOwnMetres = (line: CourseLine): CourseLine | null => {
  const own = measureLine(linePoints(line), line.officialM * (1 + line.mismatch), line.plane);
  return own && { ...own, knownM: UNTIED, doubtM2: own.alongM.map((d) => d * DOUBT_M2_PER_M) };
};

/**
 * The share of the mismatch that may still be the official number's fault, as a standard deviation. A line that is too
 * long for the plan runs on behind the finish; one that is too short may well end at it.
 */
const DOUBT_IF_SHORT = 0.6;
const DOUBT_IF_LONG = 0.3;
const NEAR_M = 60;
const START_SD_M = 10;
const SCALE_SD = 0.003;

/** Until it is decided whose metres count, half of what is more than either may err is doubt. */
const UNDECIDED_SHARE = 0.5;

/** Variance that comes to the distance while line and odometer part and nothing is decided, m². */
export const undecidedVar = ({ line, ownMetres }: Contender, odometer: Odometer | null): number =>
  odometer === null || ownMetres || Math.abs(line.mismatch) < LEAST_MISMATCH
    ? 0
    : (UNDECIDED_SHARE * Math.max(0, Math.abs(odometer.apartM) - 2 * mayPartM(odometer))) ** 2;

/** Where on a line a point of another one lies, near a distance. */
const sameplaceM = (to: CourseLine, from: CourseLine, fromM: number, nearM: number): number => {
  const [e, n] = [eastAtM(from, fromM), northAtM(from, fromM)];
  let best = nearM;
  let bestM = Number.POSITIVE_INFINITY;
  for (let s = Math.max(0, nearM - NEAR_M); s <= nearM + NEAR_M; s++) {
    const m = Math.hypot(eastAtM(to, s) - e, northAtM(to, s) - n);
    if (m < bestM) [best, bestM] = [s, m];
  }
  return best;
};

/** The contender on the line as it is, where the odometer says so; null where it does not, or has been heard. */
export const inItsOwnMetres = (c: Contender, odometer: Odometer): Contender | null => {
  const { mismatch } = c.line;
  if (c.ownMetres || Math.abs(mismatch) < LEAST_MISMATCH || oddsOfOwn(mismatch, odometer) < PLAIN)
    return null;
  if (c.line.officialM > COARSE_M * (c.line.alongM.length - 1)) return null;
  const line = inOwnMetres(c.line);
  if (!line) return null;
  const scaledM = course.placeOf(c.track.g);
  const alongM = sameplaceM(line, c.line, scaledM, scaledM * (1 + mismatch));
  const g = copyOf(c.track.g);
  course.placeAt(g, alongM, Math.hypot(START_SD_M, SCALE_SD * alongM));
  const track = { ...c.track, g, untied: true, hills: hillsAlong(line), passed: cornersBefore(line, alongM) };
  const doubtShare = Math.abs(1 / (1 + mismatch) - 1) * (mismatch < 0 ? DOUBT_IF_SHORT : DOUBT_IF_LONG);
  return { ...c, line, track, ownMetres: { doubtShare, finishM: c.line.officialM } };
};

/** So soon behind the end of a line that is too short who stands there has finished. */
const AT_END_M = 80;

/** Who stands for so long, or is so much slower than over all the way, does not run on. */
const STOPPED_MS = 8_000;
const SLOWED_SHARE = 0.5;

/**
 * A line that is too short for the official distance ends at the finish after all where the runner stops at its end. Null
 * where that is not so.
 */
export const finishedAtEnd = (c: Contender, fix: PlaneFix, stoodMs: number): Contender | null => {
  const beyondM = course.placeOf(c.track.g) - c.line.officialM;
  if (!c.ownMetres || c.ownMetres.doubtShare === 0 || c.line.officialM >= c.ownMetres.finishM) return null;
  if (beyondM < 0 || beyondM > AT_END_M) return null;
  const meanMps = (1000 * c.line.officialM) / (fix.timeMs - c.track.startMs);
  if (stoodMs < STOPPED_MS && (fix.speedMps ?? meanMps) > SLOWED_SHARE * meanMps) return null;
  const g = copyOf(c.track.g);
  course.placeAt(g, c.ownMetres.finishM + beyondM, START_SD_M);
  return { ...c, track: { ...c.track, g }, ownMetres: { ...c.ownMetres, doubtShare: 0 } };
};
