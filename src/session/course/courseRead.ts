import { parseGpx } from '../../core/course/gpx.ts';
import { lineOfGpx } from '../../core/course/gpxCourse.ts';
import { thinned } from '../../core/course/gpxThin.ts';
import type { GpxPoint } from '../../core/course/gpxTypes.ts';
import { type LinePoint, measureLine } from '../../core/course/line.ts';
import { legM } from '../../core/geo/ruler.ts';
import { type DoorError, err, ok, type Result } from '../../core/units/result.ts';
import { t } from '../../languages/text.ts';
import { decodeText } from '../../log/decodeText.ts';
import { parseFixLog } from '../../log/fixLog.ts';
import type { CourseFile } from '../plan/planModel.ts';
import { type GivenFile, type Taken, takeFile } from './givenFile.ts';

/** What a file says about a course. */
export interface CourseRead {
  /** Null where the file holds only places, for a course that is there already. */
  readonly course: CourseFile | null;
  readonly waypoints: readonly GpxPoint[];
  /** Whole sentences on what had to be left out or guessed. */
  readonly notes: readonly string[];
}

/** A fix that its own receiver calls worse than this draws no street. */
const WORST_ACCURACY_M = 30;
/** Standing still in a pen scatters fixes; nearer than this to the one before says nothing. */
const LEAST_LEG_M = 6;

const ofGpx = (text: string, fileName: string, officialM: number): Result<CourseRead, DoorError> => {
  const got = parseGpx(text);
  if (!got.ok) return got;
  const gpx = got.value;
  const notes = gpx.faults.map((fault) => t('Left out: {what}.', { what: fault }));
  const hasLine = gpx.tracks.length + gpx.routes.length > 0;
  if (!hasLine) return ok({ course: null, waypoints: gpx.waypoints, notes });
  const line = lineOfGpx(gpx, officialM);
  if (!line.ok) return line;
  const many = gpx.tracks.length + gpx.routes.length;
  const { name, points } = line.value;
  return ok({
    course: { name: name ?? fileName, points: thinned(points) },
    waypoints: gpx.waypoints,
    notes: [
      ...(many > 1
        ? [t("The file holds {n} lines; taken is the one nearest to the race's distance.", { n: many })]
        : []),
      ...notes,
    ],
  });
};

/** The line of a past run: its good fixes from the start to the end, without heights, which a phone does not know. */
const ofLog = (text: string, fileName: string, officialM: number): Result<CourseRead, DoorError> => {
  const got = parseFixLog(text);
  if (!got.ok) return got;
  const { inputs } = got.value;
  const eventMs = (name: string): number | undefined =>
    inputs.find((i) => i.type === 'event' && i.event === name)?.atMs;
  const [fromMs, toMs] = [eventMs('start') ?? Number.NEGATIVE_INFINITY, eventMs('stop') ?? Infinity];
  const points: LinePoint[] = [];
  for (const input of inputs) {
    if (input.type !== 'fix' || input.atMs < fromMs || input.atMs > toMs) continue;
    const { latitudeDeg, longitudeDeg, accuracyM } = input.fix;
    const point = { latitudeDeg, longitudeDeg, elevationM: null };
    const before = points.at(-1);
    if ((accuracyM ?? 0) > WORST_ACCURACY_M || (before && legM(before, point) < LEAST_LEG_M)) continue;
    points.push(point);
  }
  if (measureLine(points, officialM) === null)
    return err({
      place: 'the log',
      expected: 'a run with fixes along its way',
      found: t('{n} good fixes', { n: points.length }),
    });
  return ok({
    course: { name: t('From the run {file}', { file: fileName }), points: thinned(points) },
    waypoints: [],
    notes: [t('Drawn from a run of yours: as good as its signal was, and without heights.')],
  });
};

/** Bytes of a GPX file or a run's log to a course. Never throws. */
export const readCourse = (
  bytes: Uint8Array,
  fileName: string,
  officialM: number,
): Result<CourseRead, DoorError> => {
  const text = decodeText(bytes);
  if (!text.ok) return text;
  return /^\s*\{/.test(text.value.slice(0, 200))
    ? ofLog(text.value, fileName, officialM)
    : ofGpx(text.value, fileName, officialM);
};

/** A file of the runner's to a course. */
export const takeCourseFile = (file: GivenFile, officialM: number): Promise<Taken<CourseRead>> =>
  takeFile(file, (bytes, name) => readCourse(bytes, name, officialM));
