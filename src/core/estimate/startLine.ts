import type { CourseLine, LinePoint } from '../course/line.ts';
import { eastAtM, elevationAtM, linePoints, measureLine, northAtM, pointAtM } from '../course/line.ts';
import { pointOn } from '../geo/ruler.ts';
import { pastStartM } from './startFinder.ts';
import type { StartPlace } from './startPlace.ts';

/** The same line, run the other way; a lap that is run over again, from the same place. */
const reversedLine = (line: CourseLine): CourseLine | null => {
  const points = line.lapM === null ? linePoints(line) : lapOf(line, line.lapM);
  return measureLine(points.reverse(), line.officialM, line.plane);
};

/** The first of the laps, with its end. */
const lapOf = (line: CourseLine, lapM: number): LinePoint[] => [
  ...linePoints(line).filter((_, i) => (line.alongM[i] as number) < lapM),
  { ...pointAtM(line, lapM), elevationM: elevationAtM(line, lapM) },
];

/** A start this near to the line's first point is at it: pens are wide and receivers err. */
const AT_START_M = 60;
/** Of that so much along the line is more than the receiver's error. */
const ALONG_START_M = 18;
/** Who presses while running like this pressed late; who presses while standing before the line pressed early. */
const RUNNING_MPS = 2.8;
const WALKING_MPS = 1;

/** Whether the line's first point is the start, as far as the receiver and the runner's press can tell. */
const isAtStart = (line: CourseLine, { eastM, northM, mps, before }: StartPlace): boolean => {
  if (mps === null) return true;
  const pastM = pastStartM(line, { eastM, northM });
  if (pastM > ALONG_START_M) {
    // Who stands does not move by that much: what was seen at the line and is not now was thrown aside by the receiver.
    const stood = mps < WALKING_MPS && before !== null && pastStartM(line, before) < ALONG_START_M;
    return stood || mps > RUNNING_MPS;
  }
  return pastM > -ALONG_START_M || mps < WALKING_MPS;
};

/** Nearer to the line than this the runner stands on it. */
const ON_LINE_M = 40;
/** A line begins at most this share of its length before the start. */
const BEFORE_SHARE = 0.1;
const STEP_M = 5;

/**
 * The line as it must be when the runner starts elsewhere than at its first point: cut where the recording began before
 * the start, led on from where they stand where it began after. Measured and scaled anew.
 */
const lineFromStart = (line: CourseLine, place: StartPlace): CourseLine => {
  const { eastM, northM } = place;
  const away = (s: number): number => awayM(line, s, eastM, northM);
  if (away(0) < AT_START_M && isAtStart(line, place)) return line;
  let nearest = 0;
  for (let s = 0; s <= line.officialM * BEFORE_SHARE; s += STEP_M) if (away(s) < away(nearest)) nearest = s;
  const points = linePoints(line);
  const here: LinePoint = {
    ...pointOn(line.plane, eastM, northM),
    elevationM: points[0]?.elevationM ?? null,
  };
  if (away(nearest) > 10 * AT_START_M) return line;
  const rest = points.filter((_, i) => (line.alongM[i] as number) > nearest);
  const start: LinePoint =
    away(nearest) < ON_LINE_M
      ? {
          ...pointOn(line.plane, eastAtM(line, nearest), northAtM(line, nearest)),
          elevationM: here.elevationM,
        }
      : here;
  return measureLine([start, ...rest], line.officialM, line.plane) ?? line;
};

/**
 * One lap run over again, begun elsewhere: 5 km on a track start where 200 m do. Null where they stand at its first
 * point or off the lap.
 */
const lapFromStart = (line: CourseLine, lapM: number, eastM: number, northM: number): CourseLine | null => {
  const away = (s: number): number => awayM(line, s, eastM, northM);
  if (away(0) < AT_START_M) return null;
  let nearest = 0;
  for (let s = 0; s < lapM; s += STEP_M) if (away(s) < away(nearest)) nearest = s;
  if (away(nearest) > ON_LINE_M) return null;
  const ring = lapOf(line, lapM);
  const [before, after] = [0, 1].map((side) =>
    ring.filter((_, i) => (line.alongM[i] as number) > nearest === (side === 1)),
  );
  const start: LinePoint = { ...pointAtM(line, nearest), elevationM: elevationAtM(line, nearest) };
  const turned = [start, ...(after ?? []), ...(before ?? []), start];
  return measureLine(turned, line.officialM, line.plane);
};

const awayM = (line: CourseLine, s: number, eastM: number, northM: number): number =>
  Math.hypot(eastM - eastAtM(line, s), northM - northAtM(line, s));

/**
 * The lines that the runner may be about to run: the one given and, where it could be, the same turned round.
 * @param from where they start, by the receiver; null where it has said nothing yet
 */
export const linesFromStart = (
  line: CourseLine,
  from: StartPlace | null,
): readonly { readonly line: CourseLine; readonly reversed: boolean }[] => {
  const lap = from && line.lapM !== null ? lapFromStart(line, line.lapM, from.eastM, from.northM) : null;
  const given = lap ?? line;
  const back = reversedLine(given);
  if (!back) return [{ line: given, reversed: false }];
  if (from) {
    const ahead = awayM(given, 0, from.eastM, from.northM);
    const behind = awayM(back, 0, from.eastM, from.northM);
    if (behind < AT_START_M && ahead > 4 * AT_START_M) return [{ line: back, reversed: true }];
    if (ahead < AT_START_M && behind > 4 * AT_START_M)
      return [{ line: lineFromStart(given, from), reversed: false }];
    return [
      { line: lineFromStart(given, from), reversed: false },
      { line: back, reversed: true },
    ];
  }
  return [
    { line: given, reversed: false },
    { line: back, reversed: true },
  ];
};
