import { type CourseLine, type LinePoint, measureLine } from '../../course/line.ts';
import { lengthM as lineM } from '../../course/runs.ts';
import { legM, type Plane, wayM } from '../../geo/ruler.ts';
import type { PracticeCourse } from '../../plan/practiceCourse.ts';

/** One way of running a course, long enough to look ahead and back from wherever the runner is kept on it. */
export interface LaidLine {
  readonly line: CourseLine;
  /** The same once. */
  readonly lap: CourseLine;
  /** After so many metres it comes again; null on a road that ends. */
  readonly lapM: number | null;
  /** The runner is kept between here and a lap further on; 0 on a road that ends. */
  readonly homeM: number;
  readonly cornersALap: number;
}

/** A known way on the ground: as it was recorded, and the other way round. */
export interface LaidCourse {
  readonly lengthM: number;
  readonly lapM: number | null;
  readonly lines: readonly LaidLine[];
}

/** A lap's ends lie this close together, or within this share of its length: then it is run again and again. */
const CLOSED_M = 40;
const CLOSED_SHARE = 0.02;
/** ... but no more than this share, else it is a bend and not a loop. */
const CLOSED_MOST_SHARE = 0.2;
/** Who records a loop often stops a little behind where they began: over so much of the end it is looked for. */
const OVERRUN_SHARE = 0.1;
/** The line must be there this far behind the runner, to compare the fixes of late with it, and this far ahead. */
const BEHIND_M = 200;
const AHEAD_M = 600;

/** The points of one lap, its end at its begin; null where the line does not come back. */
const closedLap = (points: readonly LinePoint[]): readonly LinePoint[] | null => {
  const first = points[0];
  if (!first) return null;
  const lengthM = wayM(points);
  let [best, bestM, backM] = [points.length - 1, Number.POSITIVE_INFINITY, 0];
  for (let i = points.length - 1; i > 0 && backM <= OVERRUN_SHARE * lengthM; i--) {
    const here = points[i] as LinePoint;
    const apartM = legM(first, here);
    if (apartM < bestM) [best, bestM] = [i, apartM];
    backM += legM(points[i - 1] as LinePoint, here);
  }
  const mostM = Math.min(Math.max(CLOSED_M, CLOSED_SHARE * lengthM), CLOSED_MOST_SHARE * lengthM);
  return bestM > mostM ? null : [...points.slice(0, best + 1), first];
};

/** A seam between laps lies in the middle of the straightest stretch of this length: a corner there would not be found. */
const SEAM_M = 120;

/** The same lap, begun where it is straightest. */
const begunOnAStraight = (lap: readonly LinePoint[]): readonly LinePoint[] => {
  const ring = lap.slice(0, -1);
  const legs = ring.map((p, i) => legM(p, ring[(i + 1) % ring.length] as LinePoint));
  const n = ring.length;
  let best = { from: 0, straight: 0 };
  let [to, alongM] = [0, 0];
  for (let from = 0; from < n; from++) {
    while (alongM < SEAM_M && to < from + n) alongM += legs[to++ % n] as number;
    const straight = legM(ring[from] as LinePoint, ring[to % n] as LinePoint) / alongM;
    if (straight > best.straight) best = { from: (from + to) >> 1, straight };
    alongM -= legs[from] as number;
  }
  const seam = best.from % n;
  return [...ring.slice(seam), ...ring.slice(0, seam), ring[seam] as LinePoint];
};

/** The same lap so many times in a row: every place comes again, to the millimetre, a lap further on. */
const again = (line: CourseLine, laps: number): CourseLine => {
  const lapM = line.officialM;
  const n = line.alongM.length;
  const row = (values: Float64Array, aLap: number): Float64Array =>
    Float64Array.from({ length: laps * (n - 1) + 1 }, (_, i) => {
      const lap = i === 0 ? 0 : Math.floor((i - 1) / (n - 1));
      return (values[i - lap * (n - 1)] as number) + lap * aLap;
    });
  const each = <T>(of: (lap: number) => readonly T[]): T[] =>
    Array.from({ length: laps }, (_, lap) => of(lap)).flat();
  return {
    ...line,
    officialM: laps * lapM,
    recordedM: laps * line.recordedM,
    eastM: row(line.eastM, 0),
    northM: row(line.northM, 0),
    alongM: row(line.alongM, lapM),
    doubtM2: row(line.doubtM2, line.doubtM2[n - 1] as number),
    corners: each((lap) => line.corners.map((c) => ({ ...c, alongM: c.alongM + lap * lapM }))),
    gaps: each((lap) =>
      line.gaps.map(({ fromM, toM }) => ({ fromM: fromM + lap * lapM, toM: toM + lap * lapM })),
    ),
    knownM: each((lap) => line.knownM.map((m) => m + lap * lapM)),
    elevationM: line.elevationM && row(line.elevationM, 0),
  };
};

const laidLine = (line: CourseLine, closed: boolean): LaidLine => {
  if (!closed) return { line, lap: line, lapM: null, homeM: 0, cornersALap: 0 };
  const lapM = line.officialM;
  const homeLaps = Math.ceil(BEHIND_M / lapM);
  return {
    line: again(line, homeLaps + 1 + Math.ceil(AHEAD_M / lapM)),
    lap: line,
    lapM,
    homeM: homeLaps * lapM,
    cornersALap: line.corners.length,
  };
};

/** The road of a course for a run of so many metres from its begin; one that ends goes on straight. */
export const roadOn = (course: PracticeCourse): ((leastM: number) => CourseLine) | null => {
  const laid = layCourse(course);
  const first = laid?.lines[0];
  if (laid === null || first === undefined) return null;
  const { lapM } = laid;
  return (leastM) => (lapM === null ? first.line : again(first.lap, Math.ceil(leastM / lapM)));
};

/** What a line measures by itself, its shake taken out: the mean of what it may be, not what one way of laying it has. */
const measuredM = (line: CourseLine): number =>
  line.gaps.length > 0 ? lineM(line) : line.officialM * (1 + line.mismatch);

/** Lays a course on the ground, both ways; null where its points are no line. */
export const layCourse = ({ points, lengthM: knownM }: PracticeCourse): LaidCourse | null => {
  const lap = closedLap(points);
  const asGiven = measureLine(lap ?? points, knownM ?? wayM(lap ?? points));
  if (asGiven === null) return null;
  // A road run there and back is known to turn where it does: it stays as it is.
  const isRound = lap !== null && asGiven.knownM.length === 1;
  const way = isRound ? begunOnAStraight(lap) : (lap ?? points);
  // Closed and begun elsewhere, the steps that were cut where the file begins and ends lie in mid-line.
  const steps = lap === null ? 'whole' : 'cut';
  const rough = isRound ? (measureLine(way, asGiven.officialM, undefined, steps) ?? asGiven) : asGiven;
  const lengthM = knownM ?? measuredM(rough);
  const laid = (of: readonly LinePoint[], on: Plane): LaidLine[] => {
    const line = measureLine(of, lengthM, on, steps);
    return line === null ? [] : [laidLine(line, lap !== null)];
  };
  const lines = [...laid(way, rough.plane), ...laid(way.toReversed(), rough.plane)];
  return lines.length === 2 ? { lengthM, lapM: lap === null ? null : lengthM, lines } : null;
};
