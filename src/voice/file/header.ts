import { FRAME_SAMPLES, RATE_HZ } from './frames.ts';

/** Bytes of a frame's header. */
export const HEADER_BYTES = 4;
/** Bytes that tell how the bits of a mono frame are to be read; no checksum stands before them. */
export const SIDE_BYTES = 9;

/** kbit/s by the header's number, MPEG-2 Layer III; 0 and 15 are not used here. */
const KBITS = [0, 8, 16, 24, 32, 40, 48, 56, 64, 80, 96, 112, 128, 144, 160] as const;

/** Sync, MPEG-2, Layer III, no checksum. */
const FIRST = [0xff, 0xf3] as const;
/** 24 kHz stands as 1 in bits 3 and 2; the lowest two are padding and a private bit. */
const RATE_BITS = 1 << 2;
/** One channel, and 'original', as LAME writes it. */
const MONO = 0xc4;
/** The mode's two bits, without what does not change the reading (copyright, original, emphasis). */
const MODE_MASK = 0xc0;

export const bytesAt = (kbits: number): number => (kbits * 1000 * FRAME_SAMPLES) / 8 / RATE_HZ;

/** The header of a frame at a bit rate, kbit/s. */
export const headerOf = (kbits: (typeof KBITS)[number]): readonly number[] => [
  ...FIRST,
  (KBITS.indexOf(kbits) << 4) | RATE_BITS,
  MONO,
];

/** Length in bytes of the frame that begins there; null where none begins that is of the pack's kind. */
export const frameBytes = (bytes: Uint8Array, at: number): number | null => {
  const third = bytes[at + 2] ?? 0;
  const kbits = KBITS[third >> 4] ?? 0;
  const isOurs =
    bytes[at] === FIRST[0] &&
    bytes[at + 1] === FIRST[1] &&
    (third & 0x0e) === RATE_BITS &&
    ((bytes[at + 3] ?? 0) & MODE_MASK) === (MONO & MODE_MASK);
  return isOurs && kbits > 0 ? bytesAt(kbits) : null;
};

/** Does the frame need bits of the frames before it? Its first eight bits after the header say how many bytes. */
export const leansBack = (bytes: Uint8Array, at: number): boolean => (bytes[at + HEADER_BYTES] ?? 0) !== 0;
