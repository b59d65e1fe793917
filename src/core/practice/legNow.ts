import type { Leg } from '../plan/practicePlan.ts';
import { aheadFrom, type Going, type Mark, wayFrom } from './going.ts';

/** The leg under way. */
export interface LegNow {
  readonly index: number;
  readonly leg: Leg;
  readonly start: Mark;
  /** When the whole session must be over, whatever is left of it; null where nothing presses. */
  readonly mustEndMs: number | null;
  /** Where its pace counts from: behind the ramp. Null while in the ramp. */
  readonly paced: Mark | null;
  /** When it ends, once that is decided and called; null before. */
  readonly changeMs: number | null;
  readonly halfSaid: boolean;
  readonly lastSaid: boolean;
  /** How many of its takings have been called. */
  readonly taken: number;
}

/** The leg of this place; null behind the last, and where the session must be over. */
export const beginLeg = (
  legs: readonly Leg[],
  index: number,
  start: Mark,
  mustEndMs: number | null,
): LegNow | null => {
  const leg = legs[index];
  return leg === undefined || (mustEndMs !== null && start.atMs >= mustEndMs)
    ? null
    : {
        index,
        leg,
        start,
        mustEndMs,
        paced: leg.rampS > 0 ? null : start,
        changeMs: null,
        halfSaid: false,
        lastSaid: false,
        taken: 0,
      };
};

/** What a leg came to. */
export interface LegResult {
  readonly index: number;
  readonly leg: Leg;
  readonly startMs: number;
  readonly endMs: number;
  /** Null where nothing measured the way. */
  readonly distanceM: number | null;
  readonly distanceSdM: number;
  /** Against its own target, the ramp left out; null for a leg without a pace. */
  readonly aheadS: number | null;
  readonly aheadSdS: number;
}

export const resultOf = (now: LegNow, going: Going | null, endMs: number): LegResult => {
  const way = wayFrom(now.start, going);
  const ahead = aheadFrom(now.leg, now.paced, going, endMs);
  return {
    index: now.index,
    leg: now.leg,
    startMs: now.start.atMs,
    endMs,
    distanceM: way?.distanceM ?? null,
    distanceSdM: way?.sdM ?? 0,
    aheadS: ahead?.aheadS ?? null,
    aheadSdS: ahead?.sdS ?? 0,
  };
};

/** Slower than this nobody gets to the end of anything. */
const STANDING_MPS = 0.3;

/** Whether only a press can end the leg: it says so, or nothing measures its way. */
export const endsByPress = (now: LegNow, going: Going | null): boolean =>
  now.leg.extent.by === 'press' || (now.leg.extent.by === 'distance' && wayFrom(now.start, going) === null);

/** When the leg ends: exactly by time, foreseen by distance; Infinity where that is not to be foreseen. */
export const legEndMs = (now: LegNow, going: Going | null, nowMs: number): number =>
  Math.min(ownEndMs(now, going, nowMs), now.mustEndMs ?? Number.POSITIVE_INFINITY);

const ownEndMs = (now: LegNow, going: Going | null, nowMs: number): number => {
  const { extent } = now.leg;
  if (extent.by === 'time') return now.start.atMs + 1000 * extent.timeS;
  const way = wayFrom(now.start, going);
  if (extent.by === 'press' || way === null || going === null) return Number.POSITIVE_INFINITY;
  const leftM = extent.distanceM - way.distanceM;
  if (leftM <= 0) return nowMs;
  return going.speedMps < STANDING_MPS ? Number.POSITIVE_INFINITY : nowMs + (1000 * leftM) / going.speedMps;
};

/** How much is left of the leg; null where only a press ends it. */
export const leftOf = (
  now: LegNow,
  going: Going | null,
  nowMs: number,
): { readonly timeS: number } | { readonly distanceM: number } | null => {
  const { extent } = now.leg;
  if (extent.by === 'time' || now.mustEndMs !== null) {
    const endMs = legEndMs(now, going, nowMs);
    if (extent.by === 'time' || endMs === now.mustEndMs)
      return { timeS: Math.max(0, (endMs - nowMs) / 1000) };
  }
  const way = wayFrom(now.start, going);
  return extent.by === 'press' || way === null
    ? null
    : { distanceM: Math.max(0, extent.distanceM - way.distanceM) };
};

/** When half of the leg is done; Infinity where that cannot be foreseen. */
export const halfMs = (now: LegNow, going: Going | null, nowMs: number): number => {
  const { extent } = now.leg;
  if (extent.by === 'time') return now.start.atMs + 500 * extent.timeS;
  const way = wayFrom(now.start, going);
  if (extent.by === 'press' || way === null || going === null || going.speedMps < STANDING_MPS)
    return Number.POSITIVE_INFINITY;
  return nowMs + (1000 * (extent.distanceM / 2 - way.distanceM)) / going.speedMps;
};
