/**
 * How much slower the second half is than the first, hills and legs taken out. Half marathoners' speed changes by about
 * 4 % over the race (Nikolaidis et al. 2019), so their halves by about 2 %; in marathons good men lose 3.4 % and good
 * women 2.8 % (Kais et al. 2019). That it grows with the root of the time agrees with both.
 */
const USUAL_FADE = 0.02;
const TWO_HOURS_S = 7200;

/** How a fade grows with the length of a race: 1 at two hours. */
export const fadeGrowth = (timeS: number): number => Math.sqrt(Math.max(600, timeS) / TWO_HOURS_S);

export const usualFade = (timeS: number): number => USUAL_FADE * fadeGrowth(timeS);
