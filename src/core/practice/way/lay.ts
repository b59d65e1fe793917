import { type CourseLine, type LinePoint, measureLine } from '../../course/line.ts';
import { legM, type Plane } from '../../geo/ruler.ts';
import { type PracticeCourse, recordedLengthM } from '../../plan/practiceCourse.ts';

/** One way of running a course, long enough to look ahead and back from wherever the runner is kept on it. */
export interface LaidLine {
  readonly line: CourseLine;
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
  const lengthM = recordedLengthM(points);
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

/** What a line measures once its shake is taken out. */
const laidM = ({ eastM, northM }: CourseLine): number =>
  eastM.reduce(
    (sum, e, i) =>
      i === 0
        ? 0
        : sum + Math.hypot(e - (eastM[i - 1] as number), (northM[i] as number) - (northM[i - 1] as number)),
    0,
  );

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
    knownM: each((lap) => line.knownM.map((m) => m + lap * lapM)),
    elevationM: line.elevationM && row(line.elevationM, 0),
  };
};

const laidLine = (line: CourseLine, closed: boolean): LaidLine => {
  if (!closed) return { line, lapM: null, homeM: 0, cornersALap: 0 };
  const lapM = line.officialM;
  const homeLaps = Math.ceil(BEHIND_M / lapM);
  return {
    line: again(line, homeLaps + 1 + Math.ceil(AHEAD_M / lapM)),
    lapM,
    homeM: homeLaps * lapM,
    cornersALap: line.corners.length,
  };
};

/** Lays a course on the ground, both ways; null where its points are no line. */
export const layCourse = ({ points, lengthM: knownM }: PracticeCourse): LaidCourse | null => {
  const lap = closedLap(points);
  const way = lap ?? points;
  const rough = measureLine(way, knownM ?? recordedLengthM(way));
  if (rough === null) return null;
  const lengthM = knownM ?? laidM(rough);
  const laid = (of: readonly LinePoint[], on: Plane): LaidLine[] => {
    const line = measureLine(of, lengthM, on);
    return line === null ? [] : [laidLine(line, lap !== null)];
  };
  const lines = [...laid(way, rough.plane), ...laid(way.toReversed(), rough.plane)];
  return lines.length === 2 ? { lengthM, lapM: lap === null ? null : lengthM, lines } : null;
};
