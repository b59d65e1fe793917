/** A stream of chance that a seed decides: the same seed, the same stream. Each call advances it. */
export interface Chance {
  /** Even in [0, 1). */
  readonly uniform: () => number;
  /** Standard normal. */
  readonly normal: () => number;
}

/** Mixes a whole number into 32 well-spread bits (the finaliser of MurmurHash3, Appleby, public domain). */
const mix = (n: number): number => {
  let h = n | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
};

const UINT32 = 2 ** 32;
/** Rounds after which a near-zero seed has spread through the state, as the generator's author advises. */
const WARM_UP_ROUNDS = 12;

/**
 * Small fast counting generator, 32 bit (Doty-Humphrey, PractRand, public domain), seeded by two numbers: the seed of
 * the whole and the number of the stream, so that one run can be drawn again alone.
 */
export const chanceOf = (seed: number, stream: number): Chance => {
  let [a, b, c, counter] = [mix(seed), mix(stream + 0x9e3779b9), mix(seed ^ mix(stream)), 1];
  const next = (): number => {
    const sum = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return sum >>> 0;
  };
  for (let n = 0; n < WARM_UP_ROUNDS; n++) next();
  const uniform = (): number => next() / UINT32;
  return {
    uniform,
    // Box and Muller 1958; one of the pair is thrown away to keep the stream simple. 1 - u is never 0.
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
};
