/** Mono sound: samples in -1 … 1. */
export interface Sound {
  readonly samples: Float32Array;
  readonly rateHz: number;
}

const RIFF_HEADER_BYTES = 12;
const CHUNK_HEADER_BYTES = 8;
const FULL_SCALE = 32768;

/** Reads a mono 16-bit PCM WAV file. */
export const readWav = (bytes: Buffer): Sound => {
  let rateHz = 0;
  for (let at = RIFF_HEADER_BYTES; at + CHUNK_HEADER_BYTES <= bytes.length; ) {
    const name = bytes.toString('latin1', at, at + 4);
    const body = at + CHUNK_HEADER_BYTES;
    const length = Math.min(bytes.readUInt32LE(at + 4), bytes.length - body);
    if (name === 'fmt ') rateHz = bytes.readUInt32LE(body + 4);
    if (name === 'data') {
      const samples = Float32Array.from(
        { length: length >> 1 },
        (_, i) => bytes.readInt16LE(body + 2 * i) / FULL_SCALE,
      );
      return { samples, rateHz };
    }
    at = body + length + (length & 1);
  }
  throw new Error('not a WAV file: no data in it');
};

/** Writes mono 16-bit PCM; what is beyond full scale is clipped. */
export const writeWav = ({ samples, rateHz }: Sound): Buffer => {
  const bytes = Buffer.alloc(44 + 2 * samples.length);
  bytes.write('RIFF', 0, 'latin1');
  bytes.writeUInt32LE(36 + 2 * samples.length, 4);
  bytes.write('WAVEfmt ', 8, 'latin1');
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(rateHz, 24);
  bytes.writeUInt32LE(2 * rateHz, 28);
  bytes.writeUInt16LE(2, 32);
  bytes.writeUInt16LE(16, 34);
  bytes.write('data', 36, 'latin1');
  bytes.writeUInt32LE(2 * samples.length, 40);
  samples.forEach((value, i) => {
    bytes.writeInt16LE(
      Math.max(-FULL_SCALE, Math.min(FULL_SCALE - 1, Math.round(value * FULL_SCALE))),
      44 + 2 * i,
    );
  });
  return bytes;
};
