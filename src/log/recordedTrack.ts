import type { Gpx, GpxPoint } from '../core/course/gpxTypes.ts';
import type { Input } from '../core/estimate/input.ts';
import { written } from '../core/units/message.ts';
import { type DoorError, err, ok, type Result } from '../core/units/result.ts';

/** A recorded track as the engine eats it. */
export interface Recording {
  readonly inputs: readonly Input[];
  /** Points left out, those that the GPX parser left out included. */
  readonly skipped: number;
  readonly faults: readonly string[];
}

/** One recording is one run: a point days away from the others has a wrong time. */
const SAME_RUN_MS = 2 * 24 * 3600 * 1000;

type Timed = GpxPoint & { readonly timeMs: number };

const inputOf = (p: Timed): Input => ({
  type: 'fix',
  atMs: p.timeMs,
  fix: {
    timestampMs: p.timeMs,
    latitudeDeg: p.latitudeDeg,
    longitudeDeg: p.longitudeDeg,
    accuracyM: null,
    speedMps: null,
    altitudeM: p.elevationM,
  },
});

/**
 * The fixes of a GPX file's tracks (or routes, where they have times). A track is kept in the order in which it was run,
 * so points out of order are put in order of time; the second of two points at one time is left out.
 * @returns an error where no point has a time
 */
export const recordingOf = (gpx: Gpx): Result<Recording, DoorError> => {
  const points = [...gpx.tracks, ...gpx.routes].flatMap((path) => path.segments.flat());
  const timed = points.filter((p): p is Timed => p.timeMs !== null);
  if (timed.length === 0) {
    const found = points.length === 0 ? 'no track' : `${points.length} without one: a course, no recording`;
    return err({ place: 'the file', expected: 'a track whose points have a time', found });
  }
  const sorted = timed.toSorted((a, b) => a.timeMs - b.timeMs);
  const middleMs = sorted[sorted.length >> 1]?.timeMs ?? 0;
  const sameRun = sorted.filter((p) => Math.abs(p.timeMs - middleMs) < SAME_RUN_MS);
  const single = sameRun.filter((p, i) => p.timeMs !== sameRun[i - 1]?.timeMs);
  const faults: readonly (readonly [number, string])[] = [
    [points.length - timed.length, 'without a time'],
    [sorted.length - sameRun.length, 'days away from the rest'],
    [sameRun.length - single.length, 'at the time of another'],
  ];
  return ok({
    inputs: single.map(inputOf),
    skipped: gpx.skipped + points.length - single.length,
    faults: [
      ...gpx.faults.map((fault) => written(fault)),
      ...faults.filter(([n]) => n > 0).map(([n, why]) => `${n} ${n === 1 ? 'point' : 'points'} ${why}`),
    ],
  });
};
