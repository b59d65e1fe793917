import { ffmpeg, loudness } from './ffmpeg.ts';
import type { Sound } from './wav.ts';

/** The rate and format of the shipped file. */
export const PACK_RATE_HZ = 24000;
const BITRATE = '48k';
/** The limiter works at this rate, so that peaks between the samples are seen. */
const LIMITER_RATE_HZ = 48000;
/** The limiter looks this far ahead, and delays by as much; the delay is cut off again. */
const LOOKAHEAD_MS = 5;
/** Nearer than this to the wished loudness is near enough. */
const CLOSE_LU = 0.05;
const TRIES = 8;

export interface Mastering {
  /** Integrated loudness of the whole sprite by EBU R 128. */
  readonly lufs: number;
  /** Filters before the gain: equaliser and compressor. */
  readonly shape: string;
  /** Ceiling of the limiter, as a share of full scale. */
  readonly ceiling: number;
}

/** Takes the boom away and lifts the band that tells consonants apart. */
const EQUALISER = 'highpass=f=150,equalizer=f=300:t=q:w=1:g=-3,equalizer=f=3000:t=q:w=0.7:g=6';

export const NORMAL: Mastering = {
  lufs: -16,
  shape: `${EQUALISER},acompressor=threshold=0.06:ratio=3:attack=3:release=60`,
  ceiling: 0.85,
};

/** For a crowd: denser and 3 LU louder. */
export const LOUD: Mastering = {
  lufs: -13,
  shape: `${EQUALISER},acompressor=threshold=0.03:ratio=5:attack=2:release=50`,
  ceiling: 0.85,
};

const raw = (rateHz: number): readonly string[] => ['-f', 'f32le', '-ar', String(rateHz), '-ac', '1'];
const bytesOf = (samples: Float32Array): Uint8Array =>
  new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength);

/** Equalises, compresses, brings to loudness and limits; the result is at the limiter's rate and not delayed. */
const process = (sound: Sound, { shape, ceiling }: Mastering, gainDb: number): Buffer =>
  ffmpeg(
    [
      ...raw(sound.rateHz),
      '-i',
      'pipe:0',
      '-filter:a',
      `aresample=${LIMITER_RATE_HZ},${shape},volume=${gainDb.toFixed(3)}dB,` +
        `alimiter=limit=${ceiling}:attack=${LOOKAHEAD_MS}:release=50:level=disabled,atrim=start=${LOOKAHEAD_MS / 1000}`,
      '-f',
      'f32le',
      'pipe:1',
    ],
    bytesOf(sound.samples),
  );

/** Masters a sprite and encodes it: mono MP3, without anything in it that changes from build to build. */
export const master = (sound: Sound, mastering: Mastering): Buffer => {
  let gainDb = 0;
  let mastered = process(sound, mastering, gainDb);
  for (let i = 0; i < TRIES; i++) {
    const missing = mastering.lufs - loudness(raw(LIMITER_RATE_HZ), mastered).lufs;
    if (Math.abs(missing) <= CLOSE_LU) break;
    gainDb += missing;
    mastered = process(sound, mastering, gainDb);
  }
  const encode = ['-ar', String(PACK_RATE_HZ), '-ac', '1', '-c:a', 'libmp3lame', '-b:a', BITRATE];
  const plain = [
    '-map_metadata',
    '-1',
    '-id3v2_version',
    '0',
    '-fflags',
    '+bitexact',
    '-flags:a',
    '+bitexact',
  ];
  return ffmpeg(
    [...raw(LIMITER_RATE_HZ), '-i', 'pipe:0', ...encode, ...plain, '-f', 'mp3', 'pipe:1'],
    mastered,
  );
};

/** Decodes an MP3 to mono samples at its own rate. */
export const decode = (mp3: Uint8Array): Sound => {
  const bytes = ffmpeg(
    ['-i', 'pipe:0', '-f', 'f32le', '-ac', '1', '-ar', String(PACK_RATE_HZ), 'pipe:1'],
    mp3,
  );
  return { samples: new Float32Array(new Uint8Array(bytes).buffer), rateHz: PACK_RATE_HZ };
};
