import { ffmpeg } from './ffmpeg.ts';
import type { Sound } from './wav.ts';

/** A sound at another rate, of just the length that it had, rounded to a whole sample. */
export const resample = ({ samples, rateHz }: Sound, toHz: number): Sound => {
  const bytes = new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength);
  const raw = (hz: number): readonly string[] => ['-f', 'f32le', '-ar', String(hz), '-ac', '1'];
  const out = ffmpeg([...raw(rateHz), '-i', 'pipe:0', ...raw(toHz), 'pipe:1'], bytes);
  const resampled = new Float32Array(new Uint8Array(out).buffer);
  const exact = new Float32Array(Math.round((samples.length * toHz) / rateHz));
  exact.set(resampled.subarray(0, exact.length));
  return { samples: exact, rateHz: toHz };
};
