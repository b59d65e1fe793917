import { FRAME_S } from './frames.ts';
import { bytesAt, headerOf } from './header.ts';
import { seekTableFrame, TABLE_FRAME_BYTES } from './seekTable.ts';
import type { Strip } from './strip.ts';
import { tagOf } from './tag.ts';

/** The lowest bit rate there is, kbit/s: 24 bytes a frame. */
const QUIET_KBITS = 8;
const QUIET_BYTES = bytesAt(QUIET_KBITS);
/** Silence is handed over in blocks of so many frames: one second short of a minute and a half, 86 kB. */
const BLOCK_FRAMES = 3600;

/** Frames in which nothing sounds: a header, and zeros for how many bits each band has. */
const quietBlock = (frames: number): Uint8Array => {
  const block = new Uint8Array(frames * QUIET_BYTES);
  for (let i = 0; i < frames; i++) block.set(headerOf(QUIET_KBITS), i * QUIET_BYTES);
  return block;
};

const lengthOf = (parts: readonly Uint8Array[]): number => parts.reduce((sum, part) => sum + part.length, 0);

/** What a strip of sound and the silence around it take. */
const soundBytes = ({ stretches, frames }: Strip): number => {
  const sounding = stretches.reduce((sum, stretch) => sum + stretch.frames.length, 0);
  return (
    stretches.reduce((sum, stretch) => sum + lengthOf(stretch.frames), 0) + (frames - sounding) * QUIET_BYTES
  );
};

/** Bytes of the sound before a frame, for frames in ascending order. */
const walkBytes = (strip: Strip): ((frame: number) => number) => {
  let at = 0;
  let frame = 0;
  let next = 0;
  return (upTo) => {
    while (frame < upTo) {
      const stretch = strip.stretches[next];
      const quietTo = Math.min(upTo, stretch?.first ?? upTo);
      at += (quietTo - frame) * QUIET_BYTES;
      frame = quietTo;
      if (stretch === undefined || frame >= upTo || frame < stretch.first) continue;
      at += lengthOf(stretch.frames);
      frame += stretch.frames.length;
      next++;
    }
    return at;
  };
};

/** What the file will be, before it is made. */
export interface FileFacts {
  readonly bytes: number;
  readonly lengthS: number;
}

const headOf = (strip: Strip, title: string): { readonly tag: Uint8Array; readonly bytes: number } => {
  const tag = tagOf(title, Math.round(strip.frames * FRAME_S * 1000));
  return { tag, bytes: TABLE_FRAME_BYTES + soundBytes(strip) };
};

export const factsOf = (strip: Strip, title: string): FileFacts => {
  const { tag, bytes } = headOf(strip, title);
  return { bytes: tag.length + bytes, lengthS: strip.frames * FRAME_S };
};

/** The MP3 in pieces that follow each other: a tag, the table to seek by, and the sound. Nothing is encoded. */
export const mp3Of = (strip: Strip, title: string): Uint8Array<ArrayBuffer>[] => {
  const { tag, bytes } = headOf(strip, title);
  const bytesBefore = walkBytes(strip);
  const table = seekTableFrame(
    strip.frames,
    bytes,
    (share) => TABLE_FRAME_BYTES + bytesBefore(Math.floor(share * strip.frames)),
  );
  const block = quietBlock(BLOCK_FRAMES);
  const parts: Uint8Array[] = [tag, table];
  let frame = 0;
  const quietUpTo = (upTo: number): void => {
    while (frame < upTo) {
      const count = Math.min(BLOCK_FRAMES, upTo - frame);
      parts.push(block.subarray(0, count * QUIET_BYTES));
      frame += count;
    }
  };
  for (const stretch of strip.stretches) {
    quietUpTo(stretch.first);
    parts.push(...stretch.frames);
    frame += stretch.frames.length;
  }
  quietUpTo(strip.frames);
  return parts as Uint8Array<ArrayBuffer>[];
};
