import type { Fix } from './input.ts';

/**
 * When a fix was taken, on the engine's clock. A receiver's timestamp may be rounded, come from another clock, or be
 * old; the arrival is ours but late by an unknown delay. The smallest delay seen lately is taken as the difference of
 * the two clocks; what a fix is later than that, it spent on the way.
 */
export interface Arrivals {
  /** Arrival minus timestamp of the promptest fix lately, ms; null before the first fix. */
  readonly offsetMs: number | null;
  readonly last: Fix | null;
  /** When the last fix was taken, engine clock. */
  readonly lastTakenMs: number;
  /** Fixes one after the other whose times did not fit, and when the last of them arrived. */
  readonly untimely: number;
  readonly untimelyMs: number;
  /** The latest fix repeats the place of a runner who moves, by the speeds: the receiver is stuck. */
  readonly stuck: boolean;
}

export const noArrivals: Arrivals = {
  offsetMs: null,
  last: null,
  lastTakenMs: Number.NEGATIVE_INFINITY,
  untimely: 0,
  untimelyMs: Number.NEGATIVE_INFINITY,
  stuck: false,
};

/** A first fix older than this when it arrives tells of another place; a later one may come in a bundle. */
const STALE_MS = 10_000;
/** So many in a row whose times do not fit, each arriving by itself: the receiver's clock was set, or stands. */
const CLOCK_SET = 5;
const BY_ITSELF_MS = 500;
/** The smallest delay is forgotten at this rate, so that two clocks that drift apart do not age every fix. */
const OFFSET_CREEP_MS = 1;

export type Arrival =
  | { readonly kind: 'fix'; readonly takenMs: number; readonly arrivals: Arrivals }
  /** stale: too old on arrival; late: older than one already used; double: the same again; frozen: does not move while time does. */
  | { readonly kind: 'stale' | 'late' | 'double' | 'frozen'; readonly arrivals: Arrivals };

const samePlace = (a: Fix, b: Fix): boolean =>
  a.latitudeDeg === b.latitudeDeg && a.longitudeDeg === b.longitudeDeg;

/** Slower than this by Doppler is standing; a receiver that repeats its place is then telling the truth. */
const STANDING_MPS = 0.5;
/** From this to standing within one fix, and on the very spot: the receiver stands, not the runner. */
const RUNNING_MPS = 2;

const isStuck = (last: Fix, fix: Fix): boolean =>
  (fix.speedMps ?? 0) > STANDING_MPS || (last.speedMps ?? 0) > RUNNING_MPS;

/** Without a speed nothing tells a receiver that stands from a runner who does. */
const isFrozen = (last: Fix, fix: Fix): boolean => fix.speedMps === null || isStuck(last, fix);

/** @param atMs arrival on the engine's clock */
export const arrive = (state: Arrivals, fix: Fix, atMs: number): Arrival => {
  const delayMs = atMs - fix.timestampMs;
  const offsetMs = state.offsetMs === null ? delayMs : Math.min(state.offsetMs + OFFSET_CREEP_MS, delayMs);
  const takenMs = Math.min(atMs, fix.timestampMs + offsetMs);
  const seen = { ...state, offsetMs, stuck: false };
  if (state.last && samePlace(state.last, fix)) {
    if (fix.timestampMs === state.last.timestampMs) return { kind: 'double', arrivals: seen };
    if (isFrozen(state.last, fix))
      return { kind: 'frozen', arrivals: { ...seen, stuck: isStuck(state.last, fix) } };
  }
  // A clock that stands: all that is known of the time is when the fix came.
  const stands = fix.timestampMs === state.last?.timestampMs && atMs >= state.lastTakenMs + BY_ITSELF_MS;
  if (stands) return taken(delayMs, fix, atMs);
  const isLate = takenMs <= state.lastTakenMs;
  if (isLate || (state.last === null && atMs - takenMs > STALE_MS)) {
    const byItself = atMs >= state.untimelyMs + BY_ITSELF_MS;
    const untimely = state.untimely + (byItself ? 1 : 0);
    if (untimely < CLOCK_SET || atMs <= state.lastTakenMs) {
      const untimelyMs = byItself ? atMs : state.untimelyMs;
      return { kind: isLate ? 'late' : 'stale', arrivals: { ...seen, untimely, untimelyMs } };
    }
    return taken(delayMs, fix, atMs);
  }
  return taken(offsetMs, fix, takenMs);
};

const taken = (offsetMs: number, fix: Fix, takenMs: number): Arrival => ({
  kind: 'fix',
  takenMs,
  arrivals: { ...noArrivals, offsetMs, last: fix, lastTakenMs: takenMs },
});
