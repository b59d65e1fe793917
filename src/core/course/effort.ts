/**
 * What a slope costs a runner.
 * Minetti et al., "Energy cost of walking and running at extreme uphill and downhill slopes", J Appl Physiol 93 (2002)
 * 1039-1046: cost of running in J per kg and metre as a polynomial of the slope (rise over run), within ±0.45.
 */
export const costOfRunning = (slope: number): number =>
  ((((155.4 * slope - 30.4) * slope - 43.3) * slope + 46.3) * slope + 19.5) * slope + 3.6;

/**
 * The least that a descent is taken to cost, against level running. The polynomial would have a runner go 40 % quicker
 * down 10 %, which nobody does in a race: legs brake, and what the lungs are spared the thighs pay later. The
 * measurements themselves disagree on how much a descent gives (least cost at -10.6 % in Minetti 1994, at -20 % in 2002).
 * So descents get the polynomial's credit to about 3 % down and no more beyond it.
 */
const LEAST_DESCENT_RATIO = 0.85;

/**
 * Time on a slope against time on the level at the same effort: at equal power, time per metre grows as cost per metre.
 * Ratio to the polynomial's own level value (3.6), not to the mean of 3.40 that was measured there.
 */
export const effortRatio = (slope: number): number =>
  Math.max(LEAST_DESCENT_RATIO, costOfRunning(slope) / costOfRunning(0));
