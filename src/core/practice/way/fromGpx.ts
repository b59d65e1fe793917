import { thinned } from '../../course/gpxThin.ts';
import type { Gpx } from '../../course/gpxTypes.ts';
import { wayM } from '../../geo/ruler.ts';
import { type PracticeCourse, practiceCourseOf } from '../../plan/practiceCourse.ts';
import { type DoorError, doorError, err, type Result } from '../../units/result.ts';

/**
 * The course of a GPX file: its longest track or route, for a session has no distance to choose by.
 * @param fallbackName  where the file names none
 */
export const practiceCourseOfGpx = (gpx: Gpx, fallbackName: string): Result<PracticeCourse, DoorError> => {
  const [longest] = [...gpx.tracks, ...gpx.routes]
    .map((path) => ({ name: path.name, points: path.segments.flat() }))
    .sort((a, b) => wayM(b.points) - wayM(a.points));
  if (longest === undefined || longest.points.length < 2)
    return err(doorError('the file', 'a track or route of at least two points', 'no line'));
  const name = longest.name ?? gpx.name ?? fallbackName;
  return practiceCourseOf({ name, points: thinned(longest.points), lengthM: null }, 'the file');
};
