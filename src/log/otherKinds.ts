/** A kind of file that is taken for one of ours by mistake, told by the bytes at its beginning. */
interface OtherKind {
  readonly found: string;
  readonly first: readonly number[];
}

/** A gzip member (RFC 1952, 2.3.1); a local file header of a zip archive (APPNOTE, 4.3.7; memory). */
const OTHER_KINDS: readonly OtherKind[] = [
  { found: 'a packed file (gzip)', first: [0x1f, 0x8b] },
  { found: 'a packed file (zip)', first: [0x50, 0x4b, 0x03, 0x04] },
];

/** So much of a text has no zero byte in it; a log whose end was zeroed by a power cut is a text all the same. */
const HEAD_CHARS = 64;

/** What a file is that is no text, or null. */
export const otherKindOf = (bytes: Uint8Array, text: string): string | null => {
  const kind = OTHER_KINDS.find(({ first }) => first.every((b, i) => bytes[i] === b));
  if (kind) return kind.found;
  return text.slice(0, HEAD_CHARS).includes('\0') ? 'bytes that are no text' : null;
};
