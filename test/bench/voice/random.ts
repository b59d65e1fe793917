/** Even random numbers in 0 … 1 from a seed: mulberry32, Tommy Ettinger 2017, public domain. */
export const randomFrom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** A normal deviate of mean 0 and standard deviation 1 (Box and Muller 1958). */
export const normal = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

export const pick = <T>(random: () => number, from: readonly T[]): T => {
  const chosen = from[Math.floor(random() * from.length)];
  if (chosen === undefined) throw new Error('nothing to pick from');
  return chosen;
};

/** A whole number, both ends included. */
export const whole = (random: () => number, least: number, most: number): number =>
  least + Math.floor(random() * (most - least + 1));
