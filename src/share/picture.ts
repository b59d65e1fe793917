import encodeQR from 'qr';
import decodeQR from 'qr/decode.js';

/** Pixels as a canvas gives them, four bytes each. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/** The most that one picture code holds, characters: version 40 with the least redundancy (ISO/IEC 18004, table 7; memory). */
export const MOST_CODE_CHARS = 2953;
/** Beyond this a phone's camera has a hard time with a screen. */
export const EASY_CODE_CHARS = 1400;

/** A text as a picture code: true is a dark square. With a margin of four squares, as readers want it. */
export const drawCode = (text: string): readonly (readonly boolean[])[] =>
  encodeQR(text, 'raw', { ecc: 'low', border: 4 });

/** The text of the picture code in a picture; null where none is found. */
export const readCode = ({ width, height, data }: Pixels): string | null => {
  try {
    return decodeQR({ width, height, data });
  } catch {
    return null;
  }
};
