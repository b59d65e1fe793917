import type { Part, Tone, Utterance } from '../../core/cues/voicePort.ts';
import { clipSpan, type Pack } from '../packs/pack.ts';

/** One source node to be: which buffer, which stretch of it, and how long after the begin of the call. */
export interface ScoreNote {
  readonly buffer: AudioBuffer;
  readonly offsetS: number;
  readonly fromS: number;
  readonly lengthS: number;
}

/** The sounds that an utterance is made of. */
export interface SoundStore {
  readonly pack: Pack;
  readonly sprite: AudioBuffer;
  /** How far this browser's decoder moved the sprite's sounds to the back, seconds. */
  readonly shiftS: number;
  readonly tone: (tone: Tone) => AudioBuffer;
}

const noteOf = (store: SoundStore, part: Part): ScoreNote | null => {
  const { offsetS } = part;
  if ('tone' in part.sound) {
    const buffer = store.tone(part.sound.tone);
    return { buffer, offsetS, fromS: 0, lengthS: buffer.duration };
  }
  const span = clipSpan(store.pack, part.sound.clip);
  if (span === null) return null;
  return { buffer: store.sprite, offsetS, fromS: span.startS + store.shiftS, lengthS: span.durationS };
};

/** Everything that must be started for an utterance; what the pack lacks is left out. */
export const scoreOf = (store: SoundStore, utterance: Utterance): ScoreNote[] =>
  utterance.parts.flatMap((part) => noteOf(store, part) ?? []);

/** Clips are cut with this much before their first sound, seconds. */
const HEAD_S = 0.01;
/** A first sound less off than this is a soft beginning, not the decoder: encoders put 1105 samples (46 ms) or more. */
const EXACT_S = 0.025;
/** And at most 2257 samples at 24 kHz. */
const WORST_SHIFT_S = 0.12;
/** Share of full scale that counts as sound: over the residue of MP3 silence. */
const LOUD = 0.004;

/**
 * Some decoders keep the silence that an MP3 encoder puts in front, others cut it. Measured on the first clip: its first
 * sound against where the manifest has it.
 */
export const decoderShiftS = (pack: Pack, samples: Float32Array, sampleRateHz: number): number => {
  const starts = Object.values(pack.clips).map(([start]) => start ?? 0);
  const firstS = Math.min(...starts) / pack.sampleRateHz;
  const expectedS = firstS + HEAD_S;
  const end = Math.min(samples.length, Math.ceil((expectedS + WORST_SHIFT_S) * sampleRateHz));
  for (let i = 0; i < end; i++) {
    if (Math.abs(samples[i] as number) < LOUD) continue;
    const shiftS = i / sampleRateHz - expectedS;
    return shiftS > EXACT_S ? shiftS : 0;
  }
  return 0;
};
