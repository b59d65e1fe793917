/**
 * Probability that a standard normal value is below z. Abramowitz & Stegun (1964), Handbook of Mathematical Functions,
 * 7.1.26 for the error function: absolute error below 1.5e-7.
 */
export const normalBelow = (z: number): number => {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + 0.3275911 * x);
  const polynomial =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const erf = 1 - polynomial * Math.exp(-x * x);
  return z < 0 ? (1 - erf) / 2 : (1 + erf) / 2;
};
