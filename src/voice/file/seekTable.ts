import { bytesAt, HEADER_BYTES, headerOf, SIDE_BYTES } from './header.ts';

/** Large enough for all of it: 192 bytes. */
const KBITS = 64;
/** Frames, bytes, table and quality all stand in it. */
const ALL_FIELDS = 0b1111;
/** Hundredths of the playing time. */
const TABLE_STEPS = 100;

/** Length of the frame that tells about the file. */
export const TABLE_FRAME_BYTES = bytesAt(KBITS);

/**
 * The silent first frame of a file with a changing bit rate, from which players take its length and where to jump:
 * 'Xing', flags, frames after this one, bytes with this one, a table of 100 bytes, quality (Xing's VBR header, as LAME
 * and ffmpeg write and read it; from memory, checked with ffmpeg). LAME's own part is left out on purpose: with it some
 * players cut the encoder's delay off and some do not, without it none does, and all agree about the times.
 * @param byteAt where in the file, from the begin of this frame, the part begins that is that share of the playing time
 */
export const seekTableFrame = (
  frames: number,
  bytes: number,
  byteAt: (share: number) => number,
): Uint8Array => {
  const out = new Uint8Array(TABLE_FRAME_BYTES);
  const view = new DataView(out.buffer);
  out.set(headerOf(KBITS));
  let at = HEADER_BYTES + SIDE_BYTES;
  out.set(
    [...'Xing'].map((c) => c.charCodeAt(0)),
    at,
  );
  view.setUint32(at + 4, ALL_FIELDS);
  view.setUint32(at + 8, frames);
  view.setUint32(at + 12, bytes);
  at += 16;
  for (let i = 0; i < TABLE_STEPS; i++)
    out[at + i] = Math.min(255, Math.floor((256 * byteAt(i / TABLE_STEPS)) / bytes));
  return out;
};
