import { type DoorError, err, ok, type Result } from '../units/result.ts';
import type { Gpx } from './gpxTypes.ts';
import { type CourseLine, type LinePoint, measureLine } from './line.ts';

/** Every line that a file could mean: each track, each route, all tracks in a row, else the waypoints. */
const candidates = (gpx: Gpx): (readonly LinePoint[])[] => {
  const paths = [...gpx.tracks, ...gpx.routes].map((p) => p.segments.flat());
  const whole = gpx.tracks.length > 1 ? [gpx.tracks.flatMap((p) => p.segments.flat())] : [];
  const lines = [...paths, ...whole];
  return lines.length > 0 ? lines : [gpx.waypoints];
};

/**
 * The course of a GPX file, measured and scaled to the official distance. Where a file holds several lines (a half and
 * a marathon of the same town, a course in pieces) it is the one whose own length comes nearest to the distance.
 */
export const courseOfGpx = (gpx: Gpx, officialM: number): Result<CourseLine, DoorError> => {
  const misfit = (line: CourseLine): number => Math.abs(Math.log(line.recordedM / officialM));
  const best = candidates(gpx)
    .flatMap((points) => measureLine(points, officialM) ?? [])
    .sort((a, b) => misfit(a) - misfit(b))[0];
  return best
    ? ok(best)
    : err({ place: 'the file', expected: 'a track or route of at least two points', found: 'no line' });
};
