import type { Tone } from '../../core/cues/voicePort.ts';
import { NOTES, type Note, toneDurationS } from './family.ts';

/** Strength of each harmonic: enough of them that a small speaker, or an ear with a notch, keeps the note. */
const HARMONICS = [1, 0.5, 0.35, 0.15];
/** Raised-cosine edges, long enough not to click. */
const ATTACK_S = 0.006;
const RELEASE_S = 0.03;
/** A note sinks to this share of its beginning, as a struck thing does. */
const DECAY_TO = 0.55;
/**
 * Root mean square of a tone while it sounds, in dB of full scale: with it all tones, laid out like clips, are as loud by
 * EBU R 128 as the voice pack's 'normal' variant, -16 LUFS (measured by `npm run bench:voice`).
 */
const LEVEL_DBFS = -14.8;

/** The envelope at t seconds into a note of the given length: 0 to 1. */
const envelope = (t: number, lengthS: number): number => {
  const attack = t < ATTACK_S ? 0.5 - 0.5 * Math.cos((Math.PI * t) / ATTACK_S) : 1;
  const left = lengthS - t;
  const release = left < RELEASE_S ? 0.5 - 0.5 * Math.cos((Math.PI * left) / RELEASE_S) : 1;
  return attack * release * DECAY_TO ** (t / lengthS);
};

/** Phase in cycles after t seconds, with a linear glide of pitch. */
const cycles = (note: Note, t: number): number =>
  note.hz * t + (((note.toHz ?? note.hz) - note.hz) * t * t) / (2 * note.lengthS);

const sample = (note: Note, t: number): number => {
  const phase = 2 * Math.PI * cycles(note, t);
  return (
    envelope(t, note.lengthS) *
    HARMONICS.reduce((sum, strength, i) => sum + strength * Math.sin((i + 1) * phase), 0)
  );
};

/**
 * A tone as sound: mono samples at the given rate, levelled with the voice. `gainDb` lifts it (the 'loud' setting).
 */
export const renderTone = (tone: Tone, sampleRateHz: number, gainDb = 0): Float32Array => {
  const out = new Float32Array(Math.ceil(toneDurationS(tone) * sampleRateHz));
  let squares = 0;
  let sounding = 0;
  for (const note of NOTES[tone]) {
    const first = Math.round(note.beginS * sampleRateHz);
    const length = Math.round(note.lengthS * sampleRateHz);
    for (let i = 0; i < length && first + i < out.length; i++) {
      const value = sample(note, i / sampleRateHz);
      out[first + i] = value;
      squares += value * value;
    }
    sounding += length;
  }
  const gain = 10 ** ((LEVEL_DBFS + gainDb) / 20) / Math.sqrt(squares / sounding);
  return out.map((value) => value * gain);
};
