import type { CourseLine, LinePoint } from '../course/line.ts';
import { eastAtM, linePoints, measureLine, northAtM } from '../course/line.ts';
import { pointOn } from '../geo/ruler.ts';

/** The same line, run the other way. */
export const reversedLine = (line: CourseLine): CourseLine | null =>
  measureLine(linePoints(line).reverse(), line.officialM);

/** A start this near to the line's first point is at it: pens are wide and receivers err. */
const AT_START_M = 60;
/** Nearer to the line than this the runner stands on it. */
const ON_LINE_M = 40;
/** A line begins at most this share of its length before the start. */
const BEFORE_SHARE = 0.1;
const STEP_M = 5;

/**
 * The line as it must be when the runner starts elsewhere than at its first point: cut where the recording began before
 * the start, led on from where they stand where it began after. Measured and scaled anew.
 */
export const lineFromStart = (line: CourseLine, eastM: number, northM: number): CourseLine => {
  const away = (s: number): number => Math.hypot(eastM - eastAtM(line, s), northM - northAtM(line, s));
  if (away(0) < AT_START_M) return line;
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
  return measureLine([start, ...rest], line.officialM) ?? line;
};
