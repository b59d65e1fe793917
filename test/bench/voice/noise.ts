import { trim } from '../../../src/voicepack/clip.ts';
import { type FliteVoice, openFlite } from '../../../src/voicepack/flite.ts';
import type { Sound } from '../../../src/voicepack/wav.ts';
import { normal, pick, randomFrom } from './random.ts';

const TALKERS = 24;
const TALK_S = 40;
/** Talkers differ by voice and by how fast their sound is played: higher and lower, hastier and slower. */
const LOWEST_RATE = 0.8;
const HIGHEST_RATE = 1.3;
/** Spread of how loud a talker is: some stand nearer. */
const LOUDNESS_SD_DB = 4;
/** Corner of the wind's low-pass, passed twice. */
const WIND_HZ = 250;
/** Gusts: the wind's strength wanders over some seconds by this factor either way. */
const GUST_HZ = 0.4;
const GUST_DEPTH = 1.2;
/** Wind against the babble, in dB. */
const WIND_DB = 0;

const SENTENCES = [
  'Did you sleep at all last night?',
  'I left my gloves in the car and now my hands are frozen.',
  'They say the second half is flatter, but I remember a long hill near the harbour.',
  'Where is the queue for the bags?',
  'My brother is somewhere behind us with the big yellow flag.',
  'It rained for three days and the road by the river is still wet.',
  'Come on everybody, not far now, you look great!',
  'We came by train this morning and it was full of people in running shoes.',
  'Somebody dropped a bottle back there, mind your feet.',
  'I said to her, never again, and here I am.',
  'Keep to the left please, there is a car coming through.',
  'How long have you been doing this?',
  'The band plays under the bridge every year.',
  'She wants to stay with me until the park and then see how she feels.',
  'Is that the church or the town hall?',
  'He bought new shoes yesterday, can you believe it?',
];

const rms = (samples: Float32Array): number =>
  Math.sqrt(samples.reduce((sum, value) => sum + value * value, 0) / samples.length);

const scaledTo = (samples: Float32Array, level: number): Float32Array => {
  const gain = level / rms(samples);
  return samples.map((value) => value * gain);
};

/** One talker: sentences one after the other, played at a rate of their own. */
const talker = (sentences: readonly Sound[], rateHz: number, random: () => number): Float32Array => {
  const out = new Float32Array(TALK_S * rateHz);
  const speed = LOWEST_RATE + (HIGHEST_RATE - LOWEST_RATE) * random();
  for (let at = 0; at < out.length; ) {
    const { samples, rateHz: from } = pick(random, sentences);
    const step = (speed * from) / rateHz;
    const length = Math.min(out.length - at, Math.floor(samples.length / step));
    for (let i = 0; i < length; i++) out[at + i] = samples[Math.floor(i * step)] ?? 0;
    at += length + Math.round(0.2 * rateHz * random());
  }
  return out;
};

/** What each voice says. One engine at a time: several at once bring node:wasi down (seen with Node 20.20). */
const saidByAll = async (voices: readonly FliteVoice[]): Promise<readonly (readonly Sound[])[]> => {
  const all: (readonly Sound[])[] = [];
  for (const voice of voices) {
    const { speak, close } = await openFlite(voice);
    const said: Sound[] = [];
    for (const sentence of SENTENCES) said.push(trim((await speak(sentence, 1)).sound));
    close();
    all.push(said);
  }
  return all;
};

const babble = (said: readonly (readonly Sound[])[], rateHz: number, random: () => number): Float32Array => {
  const sum = new Float32Array(TALK_S * rateHz);
  for (let i = 0; i < TALKERS; i++) {
    const one = scaledTo(
      talker(said[i % said.length] ?? [], rateHz, random),
      10 ** ((normal(random) * LOUDNESS_SD_DB) / 20),
    );
    const shift = Math.floor(random() * one.length);
    one.forEach((value, at) => {
      const to = (at + shift) % sum.length;
      sum[to] = (sum[to] ?? 0) + value;
    });
  }
  return sum;
};

/** White noise through two poles, its strength wandering like gusts. */
const wind = (length: number, rateHz: number, random: () => number): Float32Array => {
  const keep = Math.exp((-2 * Math.PI * WIND_HZ) / rateHz);
  const slow = Math.exp((-2 * Math.PI * GUST_HZ) / rateHz);
  const out = new Float32Array(length);
  let first = 0;
  let second = 0;
  let gust = 0;
  for (let i = 0; i < length; i++) {
    gust = slow * gust + Math.sqrt(1 - slow * slow) * normal(random);
    first = keep * first + (1 - keep) * normal(random);
    second = keep * second + (1 - keep) * first;
    out[i] = second * Math.exp(GUST_DEPTH * 0.5 * gust);
  }
  return out;
};

/** A crowd in the wind: 40 s at an RMS of 1, that can be looped. The same seed gives the same noise. */
export const crowd = async (
  voices: readonly FliteVoice[],
  rateHz: number,
  seed: number,
): Promise<Float32Array> => {
  const random = randomFrom(seed);
  const talk = scaledTo(babble(await saidByAll(voices), rateHz, random), 1);
  const air = scaledTo(wind(talk.length, rateHz, random), 10 ** (WIND_DB / 20));
  return scaledTo(
    talk.map((value, i) => value + (air[i] ?? 0)),
    1,
  );
};
