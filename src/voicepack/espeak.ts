import { createRequire } from 'node:module';
import type { Speaking } from '../languages/speaking.ts';
import type { Sound } from './wav.ts';

/** Where a word begins: its place in the text, in letters, and in the sound. */
export interface SpokenWord {
  readonly at: number;
  readonly startS: number;
}

export interface SpokenText {
  readonly sound: Sound;
  readonly words: readonly SpokenWord[];
}

/** The engine of @echogarden/espeak-ng-emscripten, as far as it is used here. */
interface Engine {
  readonly samplerate: number;
  rate: number;
  pitch: number;
  readonly list_voices: () => readonly {
    readonly identifier: string;
    readonly languages: readonly { readonly name: string }[];
  }[];
  readonly set_voice: (name: string) => void;
  readonly synthesize: (
    text: string,
    take: (sound: ArrayBufferLike | null, events: readonly EngineEvent[] | null) => void,
  ) => void;
}

interface EngineEvent {
  readonly type: string;
  /** From 1. */
  readonly text_position: number;
  /** Milliseconds. */
  readonly audio_position: number;
}

interface Module {
  readonly default: () => Promise<{ readonly eSpeakNGWorker: new () => Engine | Promise<Engine> }>;
}

const PACKAGE = '@echogarden/espeak-ng-emscripten';
const FULL_SCALE = 32768;

/** Makes speech of text with the voice of a language. */
export type SpeakText = (text: string) => SpokenText;

/** The engine for one voice. Throws where it has no such voice, for it would go on in another one. */
export const openEspeak = async ({ voice, rate, pitch }: Speaking): Promise<SpeakText> => {
  const path = createRequire(import.meta.url).resolve(PACKAGE);
  const engine = await new (await ((await import(path)) as Module).default()).eSpeakNGWorker();
  const known = engine.list_voices().some(({ languages }) => languages.some(({ name }) => name === voice));
  if (!known) throw new Error(`eSpeak NG has no voice ${voice}`);
  engine.set_voice(voice);
  engine.rate = rate;
  engine.pitch = pitch;
  return (text) => {
    const chunks: Int16Array[] = [];
    const words: SpokenWord[] = [];
    engine.synthesize(text, (sound, events) => {
      if (sound !== null && sound.byteLength > 0) chunks.push(new Int16Array(sound.slice(0)));
      for (const { type, text_position, audio_position } of events ?? [])
        if (type === 'word') words.push({ at: text_position - 1, startS: audio_position / 1000 });
    });
    const samples = Float32Array.from(
      chunks.flatMap((chunk) => [...chunk]),
      (value) => value / FULL_SCALE,
    );
    return { sound: { samples, rateHz: engine.samplerate }, words };
  };
};
