import type { Fix } from '../core/estimate/input.ts';
import { eastM, northM, planeAt } from '../core/geo/ruler.ts';
import type { LogEntry } from './logLine.ts';

/**
 * A clock that was set while the runner ran. A log without arrival times shows it only as a gap: minutes or hours lie
 * between two fixes that are one step of the road apart, in mid-run and in the same direction. A true gap moves the
 * runner, or finds them standing; nobody comes back after it to the very place where the next second would have been.
 */

/** Less than this is an outage, and what it would be wrong by is told by places too. */
const LEAST_MS = 60_000;
/** Fixes on either side that show how the runner moves, none of them further off than that. */
const WITNESSES = 5;
const LEAST_WITNESSES = 3;
const WITHIN_MS = 20_000;
/** Slower than this is standing, by a receiver that creeps. */
const MOVING_MPS = 1.2;
/** So far may the next place lie off where the run led: noise of two places, and a corner. */
const OFF_M = 12;
/** A street corner may lie between; who comes back from a turning point runs the other way. */
const ONWARD_COS = -0.5;

interface Taken {
  readonly index: number;
  readonly timeMs: number;
  readonly fix: Fix;
}

interface Motion {
  readonly east: number;
  readonly north: number;
  readonly mps: number;
  readonly stepMs: number;
}

/** How the runner moves over fixes in order of time; null where too few tell. */
const motionOver = (fixes: readonly Taken[]): Motion | null => {
  const [first, last] = [fixes[0], fixes.at(-1)];
  if (!first || !last || fixes.length < LEAST_WITNESSES) return null;
  const ms = last.timeMs - first.timeMs;
  if (ms <= 0 || ms > WITHIN_MS) return null;
  const plane = planeAt(first.fix);
  const east = (1000 * (eastM(plane, last.fix) - eastM(plane, first.fix))) / ms;
  const north = (1000 * (northM(plane, last.fix) - northM(plane, first.fix))) / ms;
  return { east, north, mps: Math.hypot(east, north), stepMs: ms / (fixes.length - 1) };
};

/** By how much the clock was set between two fixes, ms; 0 where it was not, or where nothing shows it. */
const setBetween = (before: readonly Taken[], after: readonly Taken[]): number => {
  const [a, b] = [before.at(-1), after[0]];
  if (!a || !b || Math.abs(b.timeMs - a.timeMs) < LEAST_MS) return 0;
  const [came, went] = [motionOver(before), motionOver(after)];
  if (!came || !went || came.mps < MOVING_MPS || went.mps < MOVING_MPS) return 0;
  if (came.east * went.east + came.north * went.north < ONWARD_COS * came.mps * went.mps) return 0;
  const plane = planeAt(a.fix);
  const stepS = came.stepMs / 1000;
  const offM = Math.hypot(
    eastM(plane, b.fix) - eastM(plane, a.fix) - came.east * stepS,
    northM(plane, b.fix) - northM(plane, a.fix) - came.north * stepS,
  );
  return offM > OFF_M ? 0 : b.timeMs - a.timeMs - came.stepMs;
};

/**
 * Stamps on the clock that the log began with. Lines that never were on the other one stay: each is taken where it lies
 * nearest to those before it.
 */
export const onFirstClock = (entries: readonly LogEntry[], stampsMs: readonly number[]): number[] => {
  const taken = entries.flatMap((e, index): Taken[] =>
    e.type === 'fix' ? [{ index, timeMs: stampsMs[index] ?? e.timestampMs, fix: e.fix }] : [],
  );
  const sets = taken.flatMap(({ index, timeMs }, k) => {
    const isGap = Math.abs(timeMs - (taken[k - 1]?.timeMs ?? timeMs)) >= LEAST_MS;
    const byMs = isGap
      ? setBetween(taken.slice(Math.max(0, k - WITNESSES), k), taken.slice(k, k + WITNESSES))
      : 0;
    return byMs === 0 ? [] : [{ index, byMs }];
  });
  if (sets.length === 0) return [...stampsMs];
  let shiftMs = 0;
  let nowMs = stampsMs[0] ?? 0;
  return stampsMs.map((t, i) => {
    shiftMs += sets.find((s) => s.index === i)?.byMs ?? 0;
    const moved = t - shiftMs;
    nowMs = Math.abs(moved - nowMs) <= Math.abs(t - nowMs) ? moved : t;
    return nowMs;
  });
};
