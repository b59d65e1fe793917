import type { Sound } from './wav.ts';

/** What is this far below the loudest sample is silence. */
const SILENCE_DB = -42;
const KEEP_BEFORE_S = 0.01;
const KEEP_AFTER_S = 0.02;
const FADE_S = 0.008;
/** Frames for the level of the speaking part. */
const FRAME_S = 0.02;
/** Frames this far below the loudest frame do not count as speaking. */
const ACTIVE_DB = -25;
/** Level of the speaking part of each clip before the whole sprite is mastered, dB of full scale. */
const LEVEL_DBFS = -22;

const ratio = (db: number): number => 10 ** (db / 20);
const peakOf = (samples: Float32Array): number =>
  samples.reduce((peak, value) => Math.max(peak, Math.abs(value)), 0);

/** Root mean square of the frames in which something is said. */
export const activeRms = ({ samples, rateHz }: Sound): number => {
  const length = Math.round(FRAME_S * rateHz);
  const powers: number[] = [];
  for (let at = 0; at + length <= samples.length; at += length) {
    const frame = samples.subarray(at, at + length);
    powers.push(frame.reduce((sum, value) => sum + value * value, 0) / length);
  }
  const floor = Math.max(...powers) * ratio(ACTIVE_DB) ** 2;
  const active = powers.filter((power) => power >= floor);
  return Math.sqrt(active.reduce((sum, power) => sum + power, 0) / active.length);
};

/** Cuts the silence at both ends and fades the edges. */
export const trim = ({ samples, rateHz }: Sound): Sound => {
  const floor = peakOf(samples) * ratio(SILENCE_DB);
  const heard = (value: number): boolean => Math.abs(value) > floor;
  const first = Math.max(0, samples.findIndex(heard) - Math.round(KEEP_BEFORE_S * rateHz));
  const last = Math.min(samples.length, samples.findLastIndex(heard) + Math.round(KEEP_AFTER_S * rateHz));
  const out = samples.slice(first, last);
  const fade = Math.min(Math.round(FADE_S * rateHz), out.length >> 1);
  for (let i = 0; i < fade; i++) {
    const gain = i / fade;
    out[i] = (out[i] ?? 0) * gain;
    out[out.length - 1 - i] = (out[out.length - 1 - i] ?? 0) * gain;
  }
  return { samples: out, rateHz };
};

/** Brings the speaking part to the common level: loudness meters cannot gauge what is shorter than a second. */
export const level = (sound: Sound): Sound => {
  const gain = ratio(LEVEL_DBFS) / activeRms(sound);
  return { ...sound, samples: sound.samples.map((value) => value * gain) };
};
