/** One reading of the accelerometer: its time and the size of what it felt, whichever way the phone lies. */
export interface Shake {
  readonly atMs: number;
  readonly mps2: number;
}

/** Long enough for a dozen steps, short enough to follow a change. */
export const WINDOW_MS = 6000;
/** Browsers give 60 a second, some coarser: 50 keeps a step apart from its neighbours. */
const RATE_HZ = 50;
/** Below it is a walk, above it no human step rate; half of it is the stride, which must not be taken for the step. */
const SLOWEST_HZ = 2.2;
const QUICKEST_HZ = 3.6;
/** Runners shake a phone by several m/s²; less is a phone on a table or a walk (our reading, no source). */
const LEAST_SD_MPS2 = 1.2;
/** How alike the shaking must be to itself one step later, and against two steps later (left is not quite right). */
const LEAST_LIKENESS = 0.35;
const LEAST_SHARE_OF_STRIDE = 0.5;

/** The same at even spacing, linear between readings, without its mean; null where the readings do not fill the window. */
const evenly = (shakes: readonly Shake[]): Float64Array | null => {
  const first = shakes[0];
  const last = shakes.at(-1);
  if (!first || !last || last.atMs - first.atMs < 0.8 * WINDOW_MS) return null;
  const n = Math.floor(((last.atMs - first.atMs) / 1000) * RATE_HZ);
  if (shakes.length < n / 4) return null;
  const out = new Float64Array(n);
  let j = 0;
  for (let i = 0; i < n; i++) {
    const atMs = first.atMs + (1000 * i) / RATE_HZ;
    while ((shakes[j + 1]?.atMs ?? Number.POSITIVE_INFINITY) <= atMs) j++;
    const a = shakes[j] as Shake;
    const b = shakes[j + 1] ?? a;
    const k = b.atMs > a.atMs ? (atMs - a.atMs) / (b.atMs - a.atMs) : 0;
    out[i] = a.mps2 + k * (b.mps2 - a.mps2);
  }
  const mean = out.reduce((sum, v) => sum + v, 0) / n;
  return out.map((v) => v - mean);
};

/** Likeness to itself after a lag: 1 the same, 0 nothing alike. */
const likeness = (x: Float64Array, lag: number): number => {
  let both = 0;
  let early = 0;
  let late = 0;
  for (let i = 0; i + lag < x.length; i++) {
    const a = x[i] as number;
    const b = x[i + lag] as number;
    both += a * b;
    early += a * a;
    late += b * b;
  }
  return early > 0 && late > 0 ? both / Math.sqrt(early * late) : 0;
};

/**
 * Steps a second from the last seconds of shaking, by autocorrelation; null where nobody runs. Readings ascend in time;
 * those before the window are to be left out by the caller.
 */
export const stepRateHz = (shakes: readonly Shake[]): number | null => {
  const x = evenly(shakes);
  if (x === null) return null;
  const sd = Math.sqrt(x.reduce((sum, v) => sum + v * v, 0) / x.length);
  if (sd < LEAST_SD_MPS2) return null;
  const shortest = Math.floor(RATE_HZ / QUICKEST_HZ);
  const longest = Math.ceil(RATE_HZ / SLOWEST_HZ);
  let best = 0;
  let bestLag = 0;
  for (let lag = shortest; lag <= longest; lag++) {
    const here = likeness(x, lag);
    // A peak, not the flank of one outside the range.
    if (here > best && here >= likeness(x, lag - 1) && here >= likeness(x, lag + 1)) {
      best = here;
      bestLag = lag;
    }
  }
  if (best < LEAST_LIKENESS || best < LEAST_SHARE_OF_STRIDE * likeness(x, 2 * bestLag)) return null;
  // The top of the parabola through the peak and its neighbours: finer than one sample.
  const [before, after] = [likeness(x, bestLag - 1), likeness(x, bestLag + 1)];
  const curve = before - 2 * best + after;
  const offset = curve < 0 ? (0.5 * (before - after)) / curve : 0;
  return RATE_HZ / (bestLag + offset);
};
