/**
 * The Kalman filter's two steps for a Gaussian of n dimensions, in the textbook's words: predict (prior), innovate, gate,
 * update (posterior). Measurements are scalars, taken one after the other (exact when their errors are independent).
 * Covariances are full, row by row, and kept symmetric.
 *
 * Kalman, R. E.: A New Approach to Linear Filtering and Prediction Problems. J. Basic Engineering 82 (1960), 35-45.
 */

export interface Gaussian {
  /** Mean, length n. */
  readonly x: Float64Array;
  /** Covariance, n × n, row-major. */
  readonly P: Float64Array;
}

/** An entry of the transition matrix off its diagonal: x[row] += value * x[col]. */
export interface Coupling {
  readonly row: number;
  readonly col: number;
  readonly value: number;
}

export const copyOf = (g: Gaussian): Gaussian => ({ x: g.x.slice(), P: g.P.slice() });

/** A Gaussian with independent parts. */
export const independent = (mean: readonly number[], sd: readonly number[]): Gaussian => {
  const n = mean.length;
  const P = new Float64Array(n * n);
  for (let i = 0; i < n; i++) P[i * n + i] = (sd[i] as number) ** 2;
  return { x: Float64Array.from(mean), P };
};

/**
 * Prior: x ← F x, P ← F P Fᵀ + diag(q), in place.
 * @param decay diagonal of F
 * @param couplings F off the diagonal; their columns are read before this step changes them
 * @param q variances that this step adds
 */
export const predict = (
  g: Gaussian,
  decay: Float64Array,
  couplings: readonly Coupling[],
  q: Float64Array,
): void => {
  const { x, P } = g;
  const n = x.length;
  // F = D + C. First the rows, M = F P, then the columns, P = M Fᵀ; coupled rows and columns as they stood before.
  const m = couplings.length;
  const kept = new Float64Array(m * n);
  for (let k = 0; k < m; k++) {
    const { col } = couplings[k] as Coupling;
    for (let j = 0; j < n; j++) kept[k * n + j] = P[col * n + j] as number;
  }
  const heads = Float64Array.from(couplings, (c) => x[c.col] as number);
  for (let i = 0; i < n; i++) {
    const d = decay[i] as number;
    if (d === 1) continue;
    x[i] = (x[i] as number) * d;
    for (let j = 0; j < n; j++) P[i * n + j] = (P[i * n + j] as number) * d;
  }
  for (let k = 0; k < m; k++) {
    const { row, value } = couplings[k] as Coupling;
    x[row] = (x[row] as number) + value * (heads[k] as number);
    for (let j = 0; j < n; j++)
      P[row * n + j] = (P[row * n + j] as number) + value * (kept[k * n + j] as number);
  }
  for (let k = 0; k < m; k++) {
    const { col } = couplings[k] as Coupling;
    for (let i = 0; i < n; i++) kept[k * n + i] = P[i * n + col] as number;
  }
  for (let j = 0; j < n; j++) {
    const d = decay[j] as number;
    if (d !== 1) for (let i = 0; i < n; i++) P[i * n + j] = (P[i * n + j] as number) * d;
  }
  for (let k = 0; k < m; k++) {
    const { row, value } = couplings[k] as Coupling;
    for (let i = 0; i < n; i++)
      P[i * n + row] = (P[i * n + row] as number) + value * (kept[k * n + i] as number);
  }
  for (let i = 0; i < n; i++) P[i * n + i] = (P[i * n + i] as number) + (q[i] as number);
};

/**
 * Posterior, in place: takes in one scalar measurement z = h x + noise of variance r.
 * @param innovation z minus what the prior expects
 * @returns the innovation's variance
 */
export const update = (g: Gaussian, h: Float64Array, innovation: number, r: number): number => {
  const { x, P } = g;
  const n = x.length;
  const ph = new Float64Array(n);
  let s = r;
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += (P[i * n + j] as number) * (h[j] as number);
    ph[i] = sum;
  }
  for (let i = 0; i < n; i++) s += (h[i] as number) * (ph[i] as number);
  const gain = innovation / s;
  for (let i = 0; i < n; i++) {
    const pi = ph[i] as number;
    x[i] = (x[i] as number) + pi * gain;
    const k = pi / s;
    for (let j = i; j < n; j++) {
      const v = (P[i * n + j] as number) - k * (ph[j] as number);
      P[i * n + j] = v;
      P[j * n + i] = v;
    }
  }
  return s;
};
