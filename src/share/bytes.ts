/** CRC-32 as in ISO 3309 and PNG: polynomial 0xEDB88320, reflected (W3C PNG, Annex D; memory). */
export const crc32 = (bytes: Uint8Array): number => {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let k = 0; k < 8; k++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
};

/** RFC 4648 section 5, without padding: letters that every link keeps. */
export const toBase64Url = (bytes: Uint8Array): string => {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
};

/** Null where a letter does not belong. */
export const fromBase64Url = (text: string): Uint8Array<ArrayBuffer> | null => {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return null;
  try {
    return Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (c) => c.charCodeAt(0));
  } catch {
    return null;
  }
};

const through = async (
  bytes: Uint8Array<ArrayBuffer>,
  stream: GenericTransformStream,
  mostBytes: number,
): Promise<Uint8Array<ArrayBuffer>> => {
  const reader = new Blob([bytes])
    .stream()
    .pipeThrough(stream as ReadableWritablePair)
    .getReader();
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    chunks.push(value);
    length += value.length;
    if (length > mostBytes) throw new RangeError('longer than a plan may be');
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
};

/** DEFLATE without a header (RFC 1951), by the platform. */
export const deflate = (bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> =>
  through(bytes, new CompressionStream('deflate-raw'), Number.POSITIVE_INFINITY);

/** Rejects what is no DEFLATE, and what grows beyond `mostBytes`. */
export const inflate = (
  bytes: Uint8Array<ArrayBuffer>,
  mostBytes: number,
): Promise<Uint8Array<ArrayBuffer>> => through(bytes, new DecompressionStream('deflate-raw'), mostBytes);
