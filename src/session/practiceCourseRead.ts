import { parseGpx } from '../core/course/gpx.ts';
import { type PracticeCourse, practiceCourseOf, recordedLengthM } from '../core/plan/practiceCourse.ts';
import { practiceCourseOfGpx } from '../core/practice/way/fromGpx.ts';
import { type DoorError, doorError, err, type Result } from '../core/units/result.ts';
import { refusal } from '../languages/refusal.ts';
import { t } from '../languages/text.ts';
import { decodeText } from '../log/decodeText.ts';
import { type GivenFile, readCourse } from './courseRead.ts';
import type { CourseFile } from './planModel.ts';

/** The limit of the readers behind it: see courseRead.ts. */
const MOST_BYTES = 64_000_000;
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
  const laps = distanceM / recordedLengthM(points);
  const whole = Math.min(MOST_LAPS, Math.max(1, Math.round(laps)));
  const known = Math.abs(laps / whole - 1) < WHOLE_SHARE ? distanceM / whole : null;
  return practiceCourseOf({ name, points, lengthM: known }, 'course.points');
};

/** A course, or a sentence on why there is none. */
export type Taken =
  | { readonly ok: true; readonly course: PracticeCourse }
  | { readonly ok: false; readonly why: string };

export const takenOf = (got: Result<PracticeCourse, DoorError>): Taken =>
  got.ok ? { ok: true, course: got.value } : { ok: false, why: t(refusal(got.error)) };

/** A file of the runner's; one too large is refused before it is read. */
export const takePracticeCourseFile = async (file: GivenFile): Promise<Taken> => {
  if (file.size > MOST_BYTES)
    return takenOf(err(doorError('the file', 'at most 64 MB', `${Math.round(file.size / 1e6)} MB`)));
  try {
    return takenOf(readPracticeCourse(new Uint8Array(await file.arrayBuffer()), file.name));
  } catch {
    return { ok: false, why: t('the file: it could not be read from the disk') };
  }
};
