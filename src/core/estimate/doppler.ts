import * as receiver from './receiver.ts';

/** What has been learned about the receiver's Doppler speed. */
export interface Doppler {
  readonly variance: number;
  /** Readings refused one after the other. */
  readonly refused: number;
  /** Sign of the last innovation where it was a large one, else 0. */
  readonly leaning: -1 | 0 | 1;
}

export const firstDoppler: Doppler = { variance: receiver.DOPPLER_SD_MPS ** 2, refused: 0, leaning: 0 };

/** A speed this far out is not taken at its word. */
const GATE2 = 16;
/** Readings that agree with each other against the belief: the runner has stopped or started. */
const TO_BELIEVE = 2;
/** Two in a row as far out as this, the same way, are no noise: the runner is changing speed. */
const LEAN2 = 6;
const LEARN = 0.02;

/** What to do with a reading whose innovation has this variance without the reading's own noise. */
export const judgeSpeed = (
  doppler: Doppler,
  innovation: number,
  variance: number,
): { readonly doppler: Doppler; readonly verdict: 'take' | 'refuse' | 'changed' } => {
  const far2 = innovation ** 2 / (variance + doppler.variance);
  const leaning = far2 > LEAN2 ? (innovation > 0 ? 1 : -1) : 0;
  if (leaning !== 0 && leaning === doppler.leaning)
    return { doppler: { ...doppler, refused: 0, leaning }, verdict: 'changed' };
  if (far2 > GATE2) {
    const refused = doppler.refused + 1;
    if (refused < TO_BELIEVE) return { doppler: { ...doppler, refused, leaning }, verdict: 'refuse' };
    return { doppler: { ...doppler, refused: 0, leaning }, verdict: 'changed' };
  }
  const seen = Math.min(
    receiver.DOPPLER_SD_MAX_MPS ** 2,
    Math.max(receiver.DOPPLER_SD_MIN_MPS ** 2, innovation ** 2 - variance),
  );
  const learned = doppler.variance + LEARN * (seen - doppler.variance);
  return { doppler: { variance: learned, refused: 0, leaning }, verdict: 'take' };
};
