/** Bytes of the tag's own header and of each frame's. */
const TAG_HEAD_BYTES = 10;
/** Text in UTF-16 with a byte order mark: what version 2.3 has for all languages. */
const UTF_16 = 1;

const bigEndian = (n: number): readonly number[] => [n >>> 24, (n >>> 16) & 255, (n >>> 8) & 255, n & 255];
/** Four times seven bits: no byte of a size looks like the begin of a sound frame. */
const syncSafe = (n: number): readonly number[] => [
  (n >>> 21) & 127,
  (n >>> 14) & 127,
  (n >>> 7) & 127,
  n & 127,
];
const ascii = (text: string): readonly number[] => [...text].map((c) => c.charCodeAt(0));

const utf16 = (text: string): readonly number[] => [
  0xff,
  0xfe,
  ...Array.from({ length: text.length }, (_, i) => text.charCodeAt(i)).flatMap((code) => [
    code & 255,
    code >> 8,
  ]),
];

const textFrame = (id: string, text: string): readonly number[] => {
  const body = [UTF_16, ...utf16(text)];
  return [...ascii(id), ...bigEndian(body.length), 0, 0, ...body];
};

/**
 * An ID3v2.3 tag with the file's title and its length: https://id3.org/id3v2.3.0 (from memory; ffmpeg reads it).
 * @param lengthMs whole milliseconds
 */
export const tagOf = (title: string, lengthMs: number): Uint8Array => {
  const frames = [...textFrame('TIT2', title), ...textFrame('TLEN', String(lengthMs))];
  const head = [...ascii('ID3'), 3, 0, 0, ...syncSafe(frames.length)];
  const tag = new Uint8Array(TAG_HEAD_BYTES + frames.length);
  tag.set(head);
  tag.set(frames, TAG_HEAD_BYTES);
  return tag;
};
