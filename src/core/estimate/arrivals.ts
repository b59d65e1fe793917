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
}

export const noArrivals: Arrivals = { offsetMs: null, last: null, lastTakenMs: Number.NEGATIVE_INFINITY };

/** A fix older than this when it arrives tells of another place. */
const STALE_MS = 10_000;
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

/** @param atMs arrival on the engine's clock */
export const arrive = (state: Arrivals, fix: Fix, atMs: number): Arrival => {
  const delayMs = atMs - fix.timestampMs;
  const offsetMs = state.offsetMs === null ? delayMs : Math.min(state.offsetMs + OFFSET_CREEP_MS, delayMs);
  const takenMs = Math.min(atMs, fix.timestampMs + offsetMs);
  const seen = { ...state, offsetMs };
  if (atMs - takenMs > STALE_MS) return { kind: 'stale', arrivals: seen };
  if (state.last && samePlace(state.last, fix)) {
    if (fix.timestampMs === state.last.timestampMs) return { kind: 'double', arrivals: seen };
    if (fix.speedMps === null || fix.speedMps > STANDING_MPS) return { kind: 'frozen', arrivals: seen };
  }
  if (takenMs <= state.lastTakenMs) return { kind: 'late', arrivals: seen };
  return { kind: 'fix', takenMs, arrivals: { offsetMs, last: fix, lastTakenMs: takenMs } };
};
