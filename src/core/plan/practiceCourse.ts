import type { LinePoint } from '../course/line.ts';
import { wayM } from '../geo/ruler.ts';
import { type Message, message } from '../units/message.ts';
import { type DoorError, doorError, err, ok, type Result } from '../units/result.ts';
import { planCourse } from './planCourse.ts';
import { fields, numberThat, orElse, type Read, textUpTo } from './shape.ts';

/** A way that the runner knows: a loop, a road there and back, a road one way. */
export interface PracticeCourse {
  /** Empty where the file names it not. */
  readonly name: string;
  /** In order of running, as recorded; at least two. */
  readonly points: readonly LinePoint[];
  /** What the whole line is known to measure; null: what the recording gives, its shake taken out. */
  readonly lengthM: number | null;
}

const MAX_NAME_CHARS = 200;
/** Shorter than this a receiver cannot tell where on it one is. */
const LEAST_COURSE_M = 100;
/** A line of several days is no course. */
const MOST_COURSE_M = 100_000;
/** A known length further than this from what the points measure belongs to another line. */
const MISFIT_SHARE = 0.08;
/** Centimetres: what is written into a file is then what was run. */
const DEGREES = 7;
const HEIGHT_DECIMALS = 2;

const rounded = (n: number, decimals: number): number => Number(n.toFixed(decimals));

/** Points as a file keeps them. */
const keptPoints = (points: readonly LinePoint[]): readonly LinePoint[] =>
  points.map(({ latitudeDeg, longitudeDeg, elevationM }) => ({
    latitudeDeg: rounded(latitudeDeg, DEGREES),
    longitudeDeg: rounded(longitudeDeg, DEGREES),
    elevationM: elevationM === null ? null : rounded(elevationM, HEIGHT_DECIMALS),
  }));

/** The course of these points, or why they are none. `place` is where the points stand, for the error. */
export const practiceCourseOf = (
  { name, points, lengthM }: PracticeCourse,
  place: string,
): Result<PracticeCourse, DoorError> => {
  const kept = keptPoints(points);
  const longM = wayM(kept);
  const refuse = (expected: Message): Result<never, DoorError> =>
    err(doorError(place, expected, `${Math.round(longM)} m`));
  if (longM < LEAST_COURSE_M || longM > MOST_COURSE_M)
    return refuse(
      message('a line of {least} m to {most} km', {
        least: LEAST_COURSE_M,
        most: MOST_COURSE_M / 1000,
      }),
    );
  return lengthM !== null && Math.abs(lengthM / longM - 1) > MISFIT_SHARE
    ? refuse(message('a line of about {n} m, as lengthM says', { n: Math.round(lengthM) }))
    : ok({ name, points: kept, lengthM });
};

const beside = fields({
  name: orElse(textUpTo(MAX_NAME_CHARS), ''),
  lengthM: orElse(
    numberThat(
      message('{what}, {least} to {most}', {
        what: message('a number of metres'),
        least: LEAST_COURSE_M,
        most: MOST_COURSE_M,
      }),
      (n) => n >= LEAST_COURSE_M && n <= MOST_COURSE_M,
    ),
    null,
  ),
});

/** `"course": { "points": [[54.1, 7.3], …], "name": "Round the lake", "lengthM": 3040 }`; the last two may be left out. */
export const practiceCourse: Read<PracticeCourse | null> = (found, place) => {
  const points = planCourse(found, place);
  if (!points.ok) return points;
  if (points.value === null) return ok(null);
  const rest = beside(found, place);
  return rest.ok ? practiceCourseOf({ ...rest.value, points: points.value }, `${place}.points`) : rest;
};

/** The course as JSON, a point a line: thousands of lines of one number are no file for people. */
export const practiceCourseText = ({ name, points, lengthM }: PracticeCourse): string => {
  const beside = [
    ...(name === '' ? [] : [`"name": ${JSON.stringify(name)}, `]),
    ...(lengthM === null ? [] : [`"lengthM": ${lengthM}, `]),
  ];
  const rows = points.map(({ latitudeDeg, longitudeDeg, elevationM }) => {
    const place = [latitudeDeg, longitudeDeg];
    return JSON.stringify(elevationM === null ? place : [...place, elevationM]);
  });
  return `{${beside.join('')}"points": [\n    ${rows.join(',\n    ')}\n  ]}`;
};
