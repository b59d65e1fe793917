import type { Keeping } from './keeping.ts';

/**
 * How far a projected finish can be off, as a standard deviation made of four independent parts.
 *
 * People do not run the rest as they ran the last minutes. Over a half marathon speed changed by 4.1 % between segments
 * on average, and more in the marathon (Nikolaidis et al. 2019, Medicina 55(1):14); the second half of major marathons
 * was slower by 3.4 ± 2.7 % among good men and 2.8 ± 2.1 % among good women (Kais et al. 2019). Runners with a voice in
 * the ear that tells them of each departure are steadier than a field without: the lower end is taken.
 */

/** The pace kept up wanders: standard deviation of its relative change grows with the root of the time, per √s. */
const FADE_PER_SQRT_S = 0.0004;
/** Waver about the pace kept up: 1.5 % over 50 s, as recordings of runners on their own show. */
const WAVER = 0.015;
const WAVER_TAU_S = 50;
/** What is not known of the rest by any of these: a corner, a crowd, a station. */
const LEAST_SD_S = 0.5;

/** Standard deviation of a projected finish, `remainingS` seconds before it. */
export const projectionSdS = (aheadSdS: number, keeping: Keeping, remainingS: number): number => {
  // The mean of a waver over a memory of weight w has variance waver² · 2τ / w.
  const rateSd = WAVER * Math.sqrt(Math.min(1, (2 * WAVER_TAU_S) / keeping.weightS));
  const byRateS = rateSd * remainingS;
  // The integral of the same waver over the rest.
  const byWaverS = WAVER * Math.sqrt(2 * WAVER_TAU_S * remainingS);
  // The integral of a random walk of the pace: q √(L³/3).
  const byFadeS = FADE_PER_SQRT_S * Math.sqrt(remainingS ** 3 / 3);
  return Math.hypot(aheadSdS, byRateS, byWaverS, byFadeS, LEAST_SD_S);
};
