import type { Chance } from '../units/chance.ts';
import { GRID, type KnotEvidence, message } from './knotEvidence.ts';

/**
 * Looks for the knots of a broken line: where its streets turn, in parts of a step. One knot is moved, taken out or put
 * in at a time, given all others (Gibbs sampling of a linear spline with free knots, after Denison, Mallick & Smith,
 * J. R. Statist. Soc. B 60 (1998) 333); each choice is made by its probability, or the best is taken.
 */

/** A street has at least two steps, so that it has a direction of its own. */
const LEAST = 2 * GRID;
/** A street longer than this has a knot that it does not need: bounds the work. */
const MOST = 160 * GRID;
/** Coarse moves go by half a step: corners are at points and between them more often than elsewhere. */
const COARSE = GRID / 2;
const COARSE_REACH = 6 * GRID;
/** How many places a knot is put in at coarsely for each that it may be found at. */
const COARSE_PLACES = 2 * Math.log(COARSE);

/** Two knots this near to each other may be one. */
const MERGED = 5 * GRID;

/** Takes one of several by their costs. */
type Choose = (costs: readonly number[]) => number;

/** The cheapest; of equals the first. */
export const best: Choose = (costs) => {
  let least = 0;
  costs.forEach((c, i) => {
    if (c < (costs[least] as number) - 1e-6) least = i;
  });
  return least;
};

/** By chance, each as its probability has it. */
export const drawn =
  (chance: Chance): Choose =>
  (costs) => {
    const least = Math.min(...costs);
    const shares = costs.map((c) => Math.exp((least - c) / 2));
    let left = chance.uniform() * shares.reduce((a, b) => a + b, 0);
    const i = shares.findIndex((share) => {
      left -= share;
      return left <= 0;
    });
    return i < 0 ? costs.length - 1 : i;
  };

export interface Sweep {
  /** Knots may go away and come new; else they move within a step. */
  readonly coarse: boolean;
  /** Where the places looked at begin, in parts of a step: another one each time. */
  readonly phase: number;
  readonly choose: Choose;
  /** The best line is sought; else lines are drawn, and what is done must be undone as easily: two knots are not made one. */
  readonly seeks: boolean;
}

/** The places between two knots where a knot at y may move: within its own cell of a step, or at its own distance from half steps. */
const placesFor = (x: number, y: number, z: number, { coarse, phase }: Sweep): number[] => {
  const [least, most] = [x + LEAST, z - LEAST];
  const places: number[] = [];
  if (coarse) {
    const from = Math.max(least, y - COARSE_REACH);
    for (
      let q = from + ((((y - from) % COARSE) + COARSE) % COARSE);
      q <= Math.min(most, y + COARSE_REACH);
      q += COARSE
    )
      places.push(q);
  } else {
    const cell = Math.floor((y + phase) / GRID) * GRID - phase;
    for (let q = Math.max(least, cell); q <= Math.min(most, cell + GRID - 1); q++) places.push(q);
  }
  return places;
};

/** One pass over all knots, from the first to the last. */
export const sweep = (evidence: KnotEvidence, old: readonly number[], how: Sweep): number[] => {
  const messages = evidence.behind(old);
  const out = [0];
  const here = message();
  const [one, two] = [message(), message()];
  const onwards = (y: number): void => {
    evidence.pass(here, out.at(-1) as number, y, one);
    here.set(one);
    out.push(y);
  };
  /** Cost of a leg from here over q, or straight, to knot k of the old ones. */
  const through = (q: number | null, k: number): number => {
    const [x, z] = [out.at(-1) as number, old[k] as number];
    evidence.pass(here, x, q ?? z, one);
    if (q === null) return evidence.meet(one, messages, k);
    evidence.pass(one, q, z, two);
    return evidence.meet(two, messages, k);
  };
  /** One of the places, or none; null where the knot is none. */
  const chosen = (places: readonly number[], k: number, none: boolean, extra: number): number | null => {
    const costs = places.map((q) => through(q, k) + extra);
    if (none) costs.push(through(null, k));
    return places[how.choose(costs)] ?? null;
  };
  /** Where one knot explains as much as the one at y and knot k behind it; null where none does. */
  const mergedTo = (y: number, k: number): number | null => {
    const [z, next] = [old[k] as number, old[k + 1] as number];
    evidence.pass(here, out.at(-1) as number, y, one);
    const now = evidence.meet(one, messages, k - 1);
    const places: number[] = [];
    for (let q = Math.max(y, (out.at(-1) as number) + LEAST); q <= Math.min(z, next - LEAST); q += COARSE)
      places.push(q);
    const costs = places.map((q) => through(q, k + 1));
    const i = best([now, ...costs]);
    return i === 0 ? null : (places[i - 1] as number);
  };
  let k = 1;
  while (k < old.length) {
    const x = out.at(-1) as number;
    const y = old[k] as number;
    const z = old[k + 1];
    if (how.coarse) {
      const places: number[] = [];
      for (let q = x + LEAST + (how.phase % COARSE); q <= y - LEAST; q += COARSE) places.push(q);
      const put = places.length === 0 ? null : chosen(places, k, true, how.seeks ? 0 : -COARSE_PLACES);
      if (put !== null) {
        onwards(put);
        continue;
      }
    }
    k++;
    if (z === undefined) {
      onwards(y);
      continue;
    }
    const after = old[k + 1];
    if (how.coarse && how.seeks && after !== undefined && z - y <= MERGED && after - x <= MOST) {
      const merged = mergedTo(y, k);
      if (merged !== null) {
        onwards(merged);
        k++;
        continue;
      }
    }
    const places = placesFor(x, y, z, how);
    // Pressed between its neighbours it stays where it is.
    const to = places.length === 0 ? y : chosen(places, k, how.coarse && z - x <= MOST, 0);
    if (to !== null) onwards(to);
  }
  return out;
};
