import { wayM } from '../geo/ruler.ts';
import { type DoorError, err, ok, type Result } from '../units/result.ts';
import { inOrder, runPart } from './gpxRun.ts';
import type { Gpx } from './gpxTypes.ts';
import { type CourseLine, type LinePoint, measureLine } from './line.ts';

/** One line that a file could mean. */
interface Candidate {
  readonly name: string | null;
  readonly points: readonly LinePoint[];
}

/** Less than this is no pen that shakes and no way home. */
const LEAST_LEFT_OUT_M = 60;

/**
 * Every line that a file could mean: each track, each route, all tracks in a row (as they stand, and as they meet), and of
 * a recording with times the part that was run; else the waypoints.
 */
const candidates = (gpx: Gpx): readonly Candidate[] => {
  const tracks = gpx.tracks.map((p) => p.segments.flat());
  const routes = gpx.routes.map((p) => ({ name: p.name, points: p.segments.flat() }));
  const paths = [...tracks.map((points, i) => ({ name: gpx.tracks[i]?.name ?? null, points })), ...routes];
  const run = tracks.flatMap((points, i) => {
    const part = runPart(points);
    // A recorder that paused over the first steps leaves a slow leg there: that is no pen.
    const leftOutM = wayM(points) - wayM(part);
    return leftOutM > LEAST_LEFT_OUT_M ? [{ name: gpx.tracks[i]?.name ?? null, points: part }] : [];
  });
  const rows = [tracks, inOrder(tracks)].map((row) => ({ name: gpx.name, points: row.flat() }));
  const lines = [...paths, ...run, ...(tracks.length > 1 ? rows : [])];
  return lines.length > 0 ? lines : [{ name: gpx.name, points: gpx.waypoints }];
};

/** The line of a GPX file that is meant, as it was recorded, and the same measured. */
export interface GpxLine extends Candidate {
  readonly line: CourseLine;
}

/**
 * Where a file holds several lines (a half and a marathon of the same town, a course in pieces) it is the one whose own
 * length comes nearest to the distance.
 */
export const lineOfGpx = (gpx: Gpx, officialM: number): Result<GpxLine, DoorError> => {
  const misfit = ({ line }: GpxLine): number => Math.abs(Math.log(line.recordedM / officialM));
  const best = candidates(gpx)
    .flatMap(({ name, points }): GpxLine[] => {
      const line = measureLine(points, officialM);
      return line === null ? [] : [{ name: name ?? gpx.name, points, line }];
    })
    .sort((a, b) => misfit(a) - misfit(b))[0];
  return best
    ? ok(best)
    : err({ place: 'the file', expected: 'a track or route of at least two points', found: 'no line' });
};

/** The course of a GPX file, measured and scaled to the official distance. */
export const courseOfGpx = (gpx: Gpx, officialM: number): Result<CourseLine, DoorError> => {
  const got = lineOfGpx(gpx, officialM);
  return got.ok ? ok(got.value.line) : got;
};
