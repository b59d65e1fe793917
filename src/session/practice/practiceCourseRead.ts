import { parseGpx } from '../../core/course/gpx.ts';
import { wayM } from '../../core/geo/ruler.ts';
import { type PracticeCourse, practiceCourseOf } from '../../core/plan/practiceCourse.ts';
import { practiceCourseOfGpx } from '../../core/practice/way/fromGpx.ts';
import { type DoorError, doorError, err, type Result } from '../../core/units/result.ts';
import { decodeText } from '../../log/decodeText.ts';
import { readCourse } from '../course/courseRead.ts';
import { type GivenFile, type Taken, takeFile } from '../course/givenFile.ts';
import type { CourseFile } from '../plan/planModel.ts';

/** A log is read as a course of some distance; any will do. */
const ANY_DISTANCE_M = 10_000;
/** The race goes round this often at most, and this near to a whole number of times. */
const MOST_LAPS = 60;
const WHOLE_SHARE = 0.04;

/** Bytes of a GPX file or of a run's log to the course of a session. Never throws. */
export const readPracticeCourse = (
  bytes: Uint8Array,
  fileName: string,
): Result<PracticeCourse, DoorError> => {
  const text = decodeText(bytes);
  if (!text.ok) return text;
  if (!/^\s*\{/.test(text.value.slice(0, 200))) {
    const gpx = parseGpx(text.value);
    return gpx.ok ? practiceCourseOfGpx(gpx.value, fileName) : gpx;
  }
  const log = readCourse(bytes, fileName, ANY_DISTANCE_M);
  if (!log.ok) return log;
  return log.value.course === null
    ? err(doorError('the log', 'a run with fixes along its way', 'nothing'))
    : practiceCourseOf({ ...log.value.course, lengthM: null }, 'the log');
};

/** The course of the race as that of a session; its length is known as far as the race's distance is. */
export const practiceCourseOfRace = (
  { name, points }: CourseFile,
  distanceM: number,
): Result<PracticeCourse, DoorError> => {
  const laps = distanceM / wayM(points);
  const whole = Math.min(MOST_LAPS, Math.max(1, Math.round(laps)));
  const known = Math.abs(laps / whole - 1) < WHOLE_SHARE ? distanceM / whole : null;
  return practiceCourseOf({ name, points, lengthM: known }, 'course.points');
};

/** A file of the runner's to the course of a session. */
export const takePracticeCourseFile = (file: GivenFile): Promise<Taken<PracticeCourse>> =>
  takeFile(file, readPracticeCourse);
