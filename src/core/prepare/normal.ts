/** Probability that a standard normal value lies below z. Abramowitz & Stegun 1964, 7.1.26: absolute error under 1.5e-7. */
export const normalBelow = (z: number): number => {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const tail =
    ((((1.061405429 * t - 1.453152027) * t + 1.421413741) * t - 0.284496736) * t + 0.254829592) *
    t *
    Math.exp(-x * x);
  return z < 0 ? tail / 2 : 1 - tail / 2;
};

/** The middle half of a normal distribution lies within this many standard deviations (quartiles). */
export const Z_HALF = 0.674489750196082;
/** The middle four fifths (10th to 90th percentile). */
export const Z_FOUR_FIFTHS = 1.2815515655446;

/** A chance in words that claim no more than the number knows. */
export const chanceText = (chance: number): string => {
  if (chance < 0.05) return 'less than 1 in 20';
  if (chance > 0.95) return 'more than 19 in 20';
  const tenths = Math.min(9, Math.max(1, Math.round(chance * 10)));
  return tenths === 5 ? 'about even' : `about ${tenths} in 10`;
};
