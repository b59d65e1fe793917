import { HEADER_BYTES } from './header.ts';

/**
 * Where a mono frame has its gain, in bits after the header: behind the 8 bits of the reservoir, one private bit, 12 of
 * the length and 9 of the big values (ISO/IEC 13818-3, from memory; test/voice/file measures what it does).
 */
const GAIN_AT_BIT = 30;
const GAIN_BITS = 8;
const MOST_GAIN = 2 ** GAIN_BITS - 1;
/** A step of the gain is the fourth root of two. */
export const DB_PER_STEP = 20 * Math.log10(2 ** 0.25);

/** The frame with all that is in it louder by whole steps of 1.5 dB: nothing is decoded, only its gain is written anew. */
export const louder = (frame: Uint8Array, steps: number): Uint8Array => {
  const out = Uint8Array.from(frame);
  const at = HEADER_BYTES + (GAIN_AT_BIT >> 3);
  const shift = 16 - GAIN_BITS - (GAIN_AT_BIT & 7);
  const pair = ((out[at] ?? 0) << 8) | (out[at + 1] ?? 0);
  const gain = (pair >> shift) & MOST_GAIN;
  // Silence has no gain to raise.
  if (gain === 0) return out;
  const next = Math.max(1, Math.min(MOST_GAIN, gain + steps));
  const written = (pair & ~(MOST_GAIN << shift)) | (next << shift);
  out[at] = written >> 8;
  out[at + 1] = written & 255;
  return out;
};
