/**
 * The Kalman filter's two steps for a Gaussian of n dimensions, in the textbook's words: predict (prior), innovate, gate,
 * update (posterior). Measurements are scalars, taken one after the other (exact when their errors are independent).
 * Covariances are full, row by row, and kept symmetric.
 *
 * Kalman, R. E.: A New Approach to Linear Filtering and Prediction Problems. J. Basic Engineering 82 (1960), 35-45.
 */

export interface Gaussian {
  /** Mean, length n. */
  readonly x: number[];
  /**
   * Covariance, n × n, row-major. Plain arrays: a typed one of this length lives outside the heap, and to make it costs
   * more than a whole step of the filter.
   */
  readonly P: number[];
}

/** An entry of the transition matrix off its diagonal: x[row] += value * x[col]. */
export interface Coupling {
  readonly row: number;
  readonly col: number;
  readonly value: number;
}

/** What a measurement sees of the state: the entries of h that are not zero, each with its place. */
export interface Row {
  readonly at: readonly number[];
  readonly by: readonly number[];
}

export const zeros = (n: number): number[] => new Array<number>(n).fill(0);

export const copyOf = (g: Gaussian): Gaussian => ({ x: g.x.slice(), P: g.P.slice() });

/** A Gaussian with independent parts. */
export const independent = (mean: readonly number[], sd: readonly number[]): Gaussian => {
  const n = mean.length;
  const P = zeros(n * n);
  for (let i = 0; i < n; i++) P[i * n + i] = (sd[i] as number) ** 2;
  return { x: [...mean], P };
};

/**
 * Prior: x ← F x, P ← F P Fᵀ + diag(q), in place.
 * @param decay diagonal of F; 1 in each coupled row
 * @param couplings F off the diagonal, taken one after the other: no column may be a row of one before it
 * @param q variances that this step adds
 */
export const predict = (
  g: Gaussian,
  decay: ArrayLike<number>,
  couplings: readonly Coupling[],
  q: ArrayLike<number>,
): void => {
  const { x, P } = g;
  const n = x.length;
  // F = D (I + C), since D leaves coupled rows as they are: rows first, M = (I + C) P, then columns, M (I + C)ᵀ.
  for (const { row, col, value } of couplings) {
    if (value === 0) continue;
    x[row] = (x[row] as number) + value * (x[col] as number);
    for (let j = 0; j < n; j++)
      P[row * n + j] = (P[row * n + j] as number) + value * (P[col * n + j] as number);
  }
  for (const { row, col, value } of couplings) {
    if (value === 0) continue;
    for (let i = 0; i < n; i++)
      P[i * n + row] = (P[i * n + row] as number) + value * (P[i * n + col] as number);
  }
  for (let i = 0; i < n; i++) {
    const d = decay[i] as number;
    if (d !== 1) {
      x[i] = (x[i] as number) * d;
      for (let j = 0; j < n; j++) {
        P[i * n + j] = (P[i * n + j] as number) * d;
        P[j * n + i] = (P[j * n + i] as number) * d;
      }
    }
    P[i * n + i] = (P[i * n + i] as number) + (q[i] as number);
  }
};

/** h x */
export const dot = ({ at, by }: Row, x: readonly number[]): number => {
  let sum = 0;
  for (let k = 0; k < at.length; k++) sum += (by[k] as number) * (x[at[k] as number] as number);
  return sum;
};

/** a P bᵀ */
export const quadratic = ({ x, P }: Gaussian, a: Row, b: Row): number => {
  const n = x.length;
  let sum = 0;
  for (let k = 0; k < a.at.length; k++) {
    const from = (a.at[k] as number) * n;
    let part = 0;
    for (let l = 0; l < b.at.length; l++)
      part += (P[from + (b.at[l] as number)] as number) * (b.by[l] as number);
    sum += (a.by[k] as number) * part;
  }
  return sum;
};

/**
 * Posterior, in place: takes in one scalar measurement z = h x + noise of variance r.
 * @param innovation z minus what the prior expects
 * @returns the innovation's variance
 */
export const update = (g: Gaussian, h: Row, innovation: number, r: number): number => {
  const { x, P } = g;
  const n = x.length;
  const ph = x.slice();
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let k = 0; k < h.at.length; k++)
      sum += (P[i * n + (h.at[k] as number)] as number) * (h.by[k] as number);
    ph[i] = sum;
  }
  const s = r + dot(h, ph);
  const gain = innovation / s;
  for (let i = 0; i < n; i++) {
    const pi = ph[i] as number;
    if (pi === 0) continue;
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
