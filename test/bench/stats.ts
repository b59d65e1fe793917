/** Small statistics over lists; NaN for an empty list, so that a table shows the hole. */

export const mean = (xs: readonly number[]): number =>
  xs.length === 0 ? Number.NaN : xs.reduce((sum, x) => sum + x, 0) / xs.length;

export const rms = (xs: readonly number[]): number => Math.sqrt(mean(xs.map((x) => x * x)));

/** The value below which the share k of the list lies (nearest rank). */
export const quantile = (xs: readonly number[], k: number): number => {
  const sorted = [...xs].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(k * sorted.length))] ?? Number.NaN;
};

export const median = (xs: readonly number[]): number => quantile(xs, 0.5);

/** An error with the standard deviation that was stated for it. */
export interface Claim {
  readonly error: number;
  readonly sd: number;
}

/** Half width of the normal distribution's 95 % interval, in standard deviations. */
const TWO_SIDED_95 = 1.959964;

/** Share of claims whose 95 % interval held the truth. */
export const coverage = (claims: readonly Claim[]): number =>
  mean(claims.map(({ error, sd }) => (Math.abs(error) <= TWO_SIDED_95 * sd ? 1 : 0)));
