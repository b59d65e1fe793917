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
}

/** What 'about' means: slower changes are the runner's pace, not its waver. */
const MIDDLE_S = 60;
/** A runner's manner does not change within a race, but the evidence must be allowed to. */
const MEMORY_S = 1500;
/** Belief before anything is seen, and its weight: a steady runner (0.6 %) over two minutes. */
const FIRST = 0.006 ** 2;
const FIRST_S = 120;
/** One stumble is no waver: what is seen counts at most this many times the mean. */
const CLIP = 6;
/** Share of the receiver's noise and of a waver (50 s) that remain when the last minute's middle is taken off. */
const NOISE_LEFT = 0.85;
const WAVER_LEFT = 0.55;
/** The receiver's noise is known roughly; what may be noise is not called waver. */
const NOISE_DOUBT = 1.35;

export const beginWaver: Waver = { middle: 1, seen: FIRST, weightS: FIRST_S };

/** Takes in a rate held for `dtS`. */
export const seeRate = (waver: Waver, rate: number, dtS: number): Waver => {
  const middle = waver.middle + ((rate - waver.middle) * dtS) / MIDDLE_S;
  const weightS = Math.min(MEMORY_S, waver.weightS + dtS);
  const square = Math.min((rate - middle) ** 2, CLIP * waver.seen);
  return { middle, seen: waver.seen + ((square - waver.seen) * dtS) / weightS, weightS };
};

/** Variance of the runner's own waver, where the receiver's noise leaves a variance of `noise` in the rate. */
export const waverVariance = (waver: Waver, noise: number): number =>
  Math.max(0, waver.seen - NOISE_LEFT * NOISE_DOUBT * noise) / WAVER_LEFT;
