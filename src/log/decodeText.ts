import { type DoorError, err, ok, type Result } from '../core/units/result.ts';
import { otherKindOf } from './otherKinds.ts';

/** How much of a file is looked at for an XML declaration. */
const HEAD_BYTES = 200;

const startsWith = (bytes: Uint8Array, ...first: readonly number[]): boolean =>
  first.every((b, i) => bytes[i] === b);

/**
 * The encoding by byte order mark, or by where the zero stands beside the first character: `<` of XML, `{` of JSON; null
 * where neither tells.
 */
const encodingByBytes = (bytes: Uint8Array): string | null => {
  const [first = 0, second = 0] = bytes;
  if (startsWith(bytes, 0xff, 0xfe) || (first !== 0 && second === 0 && bytes.length > 1)) return 'utf-16le';
  if (startsWith(bytes, 0xfe, 0xff) || (first === 0 && second !== 0)) return 'utf-16be';
  if (startsWith(bytes, 0xef, 0xbb, 0xbf)) return 'utf-8';
  return null;
};

/** What `<?xml … encoding="…"?>` says, or null. */
const declaredEncoding = (bytes: Uint8Array): string | null => {
  const head = String.fromCharCode(...bytes.subarray(0, HEAD_BYTES));
  return /^\s*<\?xml[^>]*\bencoding\s*=\s*["']([\w.:-]+)["']/.exec(head)?.[1] ?? null;
};

const decode = (bytes: Uint8Array, label: string): string | null => {
  try {
    return new TextDecoder(label, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
};

/**
 * Bytes of a file to text: by its byte order mark, else by its XML declaration, else UTF-8. Bytes that are not what
 * they claim to be are read as Windows-1252, in which every byte is something: a wrong letter in a name must not cost
 * a runner the track. The mark itself is taken off. What is no text at all is refused by its kind.
 */
export const decodeText = (bytes: Uint8Array): Result<string, DoorError> => {
  const label = encodingByBytes(bytes) ?? declaredEncoding(bytes) ?? 'utf-8';
  const text = decode(bytes, label) ?? decode(bytes, 'windows-1252');
  if (text === null) return err({ place: 'the file', expected: 'text', found: `bytes in ${label}` });
  const found = otherKindOf(bytes, text);
  return found === null ? ok(text) : err({ place: 'the file', expected: 'text', found });
};
