import type { Saying } from '../../../src/core/cues/saying.ts';
import type { Form, Utterance, Voice } from '../../../src/core/cues/voicePort.ts';
import { clipSpan, type Pack } from '../../../src/voice/packs/pack.ts';
import type { Words } from '../../../src/voice/words/words.ts';
import { activeRms } from '../../../src/voicepack/clip.ts';
import type { Sound } from '../../../src/voicepack/wav.ts';
import { criticalWords } from './critical.ts';
import { plainWords } from './grammar.ts';
import { randomFrom } from './random.ts';
import { RECOGNISER_RATE_HZ, recognise } from './recogniser.ts';
import { align, mistakes } from './score.ts';

/** Noise stands alone so long before and after a call. */
const LEAD_S = 0.5;
/** Level of the speaking parts, as a share of full scale: room for noise and peaks. */
const SPEECH_RMS = 0.08;

/** A call's words as sound, from the sprite at the recogniser's rate: what the page plays, without the tone. */
export const soundOf = (utterance: Utterance, pack: Pack, sprite: Float32Array): Float32Array => {
  const out = new Float32Array(Math.ceil(utterance.durationS * RECOGNISER_RATE_HZ));
  const words = utterance.parts.flatMap(({ sound, offsetS }) => {
    const span = 'clip' in sound ? clipSpan(pack, sound.clip) : null;
    return span === null ? [] : [{ span, offsetS }];
  });
  const firstS = words[0]?.offsetS ?? 0;
  for (const { span, offsetS } of words) {
    const from = Math.round(span.startS * RECOGNISER_RATE_HZ);
    const length = Math.round(span.durationS * RECOGNISER_RATE_HZ);
    out.set(sprite.subarray(from, from + length), Math.round((offsetS - firstS) * RECOGNISER_RATE_HZ));
  }
  return out;
};

/** Even a silent room hisses; a recogniser that gets digital zeros goes astray. */
const CLEAN_SNR_DB = 60;

/** Speech in noise: `snrDb` is the RMS of its speaking parts against that of the noise; null is clean. */
export const inNoise = (
  speech: Float32Array,
  noise: Float32Array,
  at: number,
  snrDb: number | null,
): Sound => {
  const lead = Math.round(LEAD_S * RECOGNISER_RATE_HZ);
  const samples = new Float32Array(speech.length + 2 * lead);
  samples.set(speech, lead);
  const gain = SPEECH_RMS / activeRms({ samples: speech, rateHz: RECOGNISER_RATE_HZ });
  const level = SPEECH_RMS * 10 ** (-(snrDb ?? CLEAN_SNR_DB) / 20);
  const mixed = samples.map((value, i) => value * gain + level * (noise[(at + i) % noise.length] ?? 0));
  return { samples: mixed, rateHz: RECOGNISER_RATE_HZ };
};

export interface Cue {
  readonly saying: Saying;
  readonly form: Form;
}

export interface Heard {
  readonly cue: Cue;
  readonly said: readonly string[];
  readonly heard: readonly string[];
  /** Words lost, mistaken or added. */
  readonly mistakes: number;
  /** Null where nothing in it turns the meaning. */
  readonly criticalWrong: boolean | null;
}

const judge = (cue: Cue, words: Words, said: readonly string[], heard: readonly string[]): Heard => {
  const aligned = align(said, heard);
  const critical = criticalWords(words, cue.saying, cue.form);
  // A word added beside one that matters may change it: 'twenty' to 'twenty-eight', 'two' to 'two minutes'.
  const addedNear = (i: number): number => aligned.words[i]?.addedBefore ?? aligned.addedAtEnd;
  const wrong = aligned.words.some(
    (word, i) => critical[i] && (word.heard !== word.said || addedNear(i) > 0 || addedNear(i + 1) > 0),
  );
  return {
    cue,
    said,
    heard,
    mistakes: mistakes(aligned),
    criticalWrong: critical.includes(true) ? wrong : null,
  };
};

export interface Room {
  readonly voice: Voice;
  readonly words: Words;
  readonly pack: Pack;
  /** The decoded sprite at the recogniser's rate. */
  readonly sprite: Float32Array;
  readonly noise: Float32Array;
  readonly grammar: string;
}

/** What the recogniser makes of calls in noise. Each call meets the noise at a place of its own, the same in each run. */
export const hear = (
  cues: readonly Cue[],
  room: Room,
  snrDb: number | null,
  seed: number,
): readonly Heard[] => {
  const random = randomFrom(seed);
  const utterances = cues.map(({ saying, form }) => room.voice.utter(saying, form));
  const sounds = utterances.map((utterance) => {
    const at = Math.floor(random() * room.noise.length);
    return inNoise(soundOf(utterance, room.pack, room.sprite), room.noise, at, snrDb);
  });
  const heard = recognise(sounds, room.grammar);
  return cues.map((cue, i) => judge(cue, room.words, plainWords(utterances[i]?.text ?? ''), heard[i] ?? []));
};
