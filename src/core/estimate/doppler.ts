import * as receiver from './receiver.ts';

/** What has been learned about the receiver's Doppler speed. */
export interface Doppler {
  readonly variance: number;
  /** Readings refused one after the other. */
  readonly refused: number;
}

export const firstDoppler: Doppler = { variance: receiver.DOPPLER_SD_MPS ** 2, refused: 0 };

/** A speed this far out is not taken at its word. */
const GATE2 = 16;
/** Readings that agree with each other against the belief: the runner has stopped or started. */
const TO_BELIEVE = 2;
const LEARN = 0.02;

/** What to do with a reading whose innovation has this variance without the reading's own noise. */
export const judgeSpeed = (
  doppler: Doppler,
  innovation: number,
  variance: number,
): { readonly doppler: Doppler; readonly verdict: 'take' | 'refuse' | 'changed' } => {
  if (innovation ** 2 > GATE2 * (variance + doppler.variance)) {
    const refused = doppler.refused + 1;
    if (refused < TO_BELIEVE) return { doppler: { ...doppler, refused }, verdict: 'refuse' };
    return { doppler: { ...doppler, refused: 0 }, verdict: 'changed' };
  }
  const seen = Math.min(
    receiver.DOPPLER_SD_MAX_MPS ** 2,
    Math.max(receiver.DOPPLER_SD_MIN_MPS ** 2, innovation ** 2 - variance),
  );
  return {
    doppler: { variance: doppler.variance + LEARN * (seen - doppler.variance), refused: 0 },
    verdict: 'take',
  };
};
