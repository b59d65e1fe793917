/** Half width of the normal distribution's 95 % interval, in standard deviations. */
const Z = 1.959964;

/**
 * Where a share lies, 95 times in 100, when it was counted as `hits` of `of`: Wilson's interval for a binomial share
 * (Wilson 1927, from memory), which stays honest where few or none were counted.
 */
export const wilson = (hits: number, of: number): readonly [least: number, most: number] => {
  const share = hits / of;
  const middle = share + (Z * Z) / (2 * of);
  const half = Z * Math.sqrt((share * (1 - share)) / of + (Z * Z) / (4 * of * of));
  const scale = 1 + (Z * Z) / of;
  return [Math.max(0, (middle - half) / scale), Math.min(1, (middle + half) / scale)];
};

const inHundred = (share: number): string => (100 * share).toFixed(1);

/** '3.0 % (1.4 to 6.4)'; a dash where nothing was counted. */
export const counted = (hits: number, of: number): string => {
  if (of === 0) return '–';
  const [least, most] = wilson(hits, of);
  return `${inHundred(hits / of)} % (${inHundred(least)} to ${inHundred(most)})`;
};
