import { WAVER_TAU_S } from './manner.ts';

/**
 * How much this runner's pace waves about of itself, learned as they run. One who waves by 1.5 % would be called every
 * other minute by a test made for a metronome.
 */
export interface Waver {
  /** Rate of the last minute, to wave about. */
  readonly middle: number;
  /** Mean square of what was seen about it, receiver's noise included. */
  readonly seen: number;
  readonly weightS: number;
  /** Seconds of running looked at. */
  readonly forS: number;
}

/** What 'about' means: slower changes are the runner's pace, not its waver. */
const MIDDLE_S = 60;
/** A runner's manner does not change within a race, but the evidence must be allowed to. */
const MEMORY_S = 1500;
/** Belief before anything is seen, and its weight in seconds: the first minutes of a race are its unruliest. */
const FIRST = 0.01 ** 2;
const FIRST_S = 120;
/** One stumble is no waver: what is seen counts at most this many times the mean. */
const CLIP = 5;
/** The first minutes are unruly, and the estimate is finding its feet: nothing is learned from them. */
const UNRULY_S = 120;
/** Of what is remembered for `tauS` seconds this share of the variance remains when the last minute's middle is taken off. */
const leftOf = (tauS: number): number => MIDDLE_S / (MIDDLE_S + tauS);
/** Share of the noise taken off: at 0.9 a metronome is now and then thought to wave a little, and false alarms are rarest. */
const NOISE_TAKEN = 0.9;

export const beginWaver: Waver = { middle: 1, seen: FIRST, weightS: FIRST_S, forS: 0 };

/** Takes in a rate held for `dtS`. */
export const seeRate = (waver: Waver, rate: number, dtS: number): Waver => {
  const middle = waver.middle + ((rate - waver.middle) * dtS) / MIDDLE_S;
  const forS = waver.forS + dtS;
  if (forS < UNRULY_S) return { ...waver, middle, forS };
  const weightS = Math.min(MEMORY_S, waver.weightS + dtS);
  const square = Math.min((rate - middle) ** 2, CLIP * waver.seen);
  return { middle, seen: waver.seen + ((square - waver.seen) * dtS) / weightS, weightS, forS };
};

/** Variance of the runner's own waver, where the receiver leaves noise of a variance and a memory in the rate. */
export const waverVariance = (waver: Waver, noise: number, noiseTauS: number): number =>
  Math.max(0, waver.seen - leftOf(noiseTauS) * NOISE_TAKEN * noise) / leftOf(WAVER_TAU_S);

/** Quieter than this share of what it says of itself the estimate is not taken to be; and only by this margin. */
const LEAST_SHARE = 0.6;
const SHARE_MARGIN = 1.4;

/**
 * The share of the stated noise that is really there: receivers differ, and without a Doppler speed the estimate is
 * steadier than it says. What is seen is noise and waver together, so it bounds the noise from above.
 */
export const noiseShare = (waver: Waver, noise: number, noiseTauS: number): number =>
  Math.min(1, Math.max(LEAST_SHARE, (SHARE_MARGIN * waver.seen) / (leftOf(noiseTauS) * noise)));
