import type { PlaneFix } from './planeFix.ts';
import { USUAL_RECEIVER } from './receiver.ts';

/** Where the runner was as they started, by the receiver, and how fast they went. */
export interface StartPlace {
  readonly eastM: number;
  readonly northM: number;
  /** Null where too few readings tell. */
  readonly mps: number | null;
  /** Where they were in the minute and a half before those readings; null where too few tell. */
  readonly before: { readonly eastM: number; readonly northM: number } | null;
}

/** So many of the last readings; none of them from long before. */
const READINGS = 5;
const LEAST_READINGS = 3;
const WITHIN_MS = 30_000;
const BEFORE_MS = 120_000;
/** Faster than anybody: one of the readings is from elsewhere, and tells of no speed. */
const MOST_MPS = 8;
/** Slower than this is standing: what the readings moved is their noise. */
const WALKING_MPS = 1;

const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

const placeOf = (fixes: readonly PlaneFix[]) => ({
  eastM: middle(fixes.map((f) => f.eastM)),
  northM: middle(fixes.map((f) => f.northM)),
});

/**
 * The middle of the last readings, each axis apart, and what a runner who walks or runs to the line has gone since; null
 * where there are none.
 */
export const startPlace = (pen: readonly PlaneFix[], startMs: number): StartPlace | null => {
  const fixes = pen.filter((f) => f.timeMs <= startMs && f.timeMs > startMs - WITHIN_MS).slice(-READINGS);
  const [first, last] = [fixes[0], fixes.at(-1)];
  if (!first || !last) return null;
  const seconds = (last.timeMs - first.timeMs) / 1000;
  const east = seconds > 0 ? (last.eastM - first.eastM) / seconds : 0;
  const north = seconds > 0 ? (last.northM - first.northM) / seconds : 0;
  const moved = Math.hypot(east, north);
  const mps = fixes.length < LEAST_READINGS || moved > MOST_MPS ? null : moved;
  const sinceS =
    mps === null || mps < WALKING_MPS
      ? 0
      : (startMs - middle(fixes.map((f) => f.timeMs))) / 1000 + USUAL_RECEIVER.lagS;
  const earlier = pen.filter((f) => f.timeMs <= startMs - WITHIN_MS && f.timeMs > startMs - BEFORE_MS);
  return {
    eastM: middle(fixes.map((f) => f.eastM)) + east * sinceS,
    northM: middle(fixes.map((f) => f.northM)) + north * sinceS,
    mps,
    before: earlier.length < LEAST_READINGS ? null : placeOf(earlier),
  };
};
