/**
 * Shares a total out by weights in whole steps, so that the shares add up to the total rounded to a step (largest
 * remainders first, ties to the earlier). Weights of 0 get nothing; with no weight at all, everything stays 0.
 */
export const shareOut = (total: number, weights: readonly number[], step: number): readonly number[] => {
  const weight = weights.reduce((sum, w) => sum + w, 0);
  if (weight <= 0) return weights.map(() => 0);
  const steps = Math.round(total / step);
  const exact = weights.map((w) => (steps * w) / weight);
  const whole = exact.map(Math.floor);
  const left = steps - whole.reduce((sum, n) => sum + n, 0);
  const byRemainder = exact
    .map((x, i) => ({ i, rest: x - Math.floor(x) }))
    .sort((a, b) => b.rest - a.rest || a.i - b.i)
    .slice(0, left);
  const lifted = new Set(byRemainder.map(({ i }) => i));
  return whole.map((n, i) => (n + (lifted.has(i) ? 1 : 0)) * step);
};
