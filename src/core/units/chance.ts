/** Chance that comes from a number: the same seed gives the same run, on every machine. */
export interface Chance {
  /** Evenly in [0, 1). */
  readonly uniform: () => number;
  /** Standard normal. */
  readonly normal: () => number;
}

/**
 * Mulberry32 (Tommy Ettinger, public domain): a 32-bit counter with a mixing step; good enough for simulated noise,
 * not for secrets. Normal values by Box and Muller's transform.
 */
export const chanceOf = (seed: number): Chance => {
  // Neighbouring seeds must not give neighbouring sequences: spread by the golden ratio of 2^32 (Knuth).
  let state = Math.imul(Math.trunc(seed) ^ 0x5bf03635, 0x9e3779b1) | 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
};
