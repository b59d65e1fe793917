import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Voice } from '../../core/cues/voicePort.ts';
import { languageOf } from '../../core/plan/planLanguage.ts';
import type { Spoken } from '../../languages/spoken.ts';
import type { LogStore } from '../../log/store.ts';
import type { Speaker } from '../../voice/device/speaker.ts';
import { voiceOf } from '../../voice/utter.ts';

/**
 * `here`: the voice speaks the chosen language. `none`: that has no voice yet. `failed`: it could not be loaded. In both the
 * voice speaks English. The device's own speech is never used: nobody can know how long it will take or when it begins,
 * some of it needs a network, and some of it stops by itself.
 */
export type VoiceState = 'here' | 'loading' | 'none' | 'failed';

export interface Voices {
  /** Speaks the language that is in use; the same one as long as a run is on. */
  readonly voice: Voice;
  readonly spoken: ReadonlySignal<Spoken>;
  readonly state: ReadonlySignal<VoiceState>;
  /** Whether the sound in use is the loud variant. */
  readonly isLoud: ReadonlySignal<boolean>;
  /** Resolves when it is settled in which language the page begins. */
  readonly first: Promise<void>;
  /** The voice in which a kept run was spoken; English where that one cannot be had any more. */
  readonly ofRun: (planFile: string) => Promise<Voice>;
  /** From now on the choice is followed, but not while `busy`. */
  readonly follow: (busy: ReadonlySignal<boolean>) => void;
}

export interface VoicesParts {
  readonly english: Spoken;
  /** Null where a language has no voice of its own. */
  readonly fetch: (tag: string) => Promise<Spoken> | null;
  readonly speaker: () => Pick<Speaker, 'use'>;
  readonly urlOf: (spoken: Spoken, isLoud: boolean) => string;
  /** BCP 47 tag. */
  readonly chosen: ReadonlySignal<string>;
  /** Whether the runner wants the loud variant. */
  readonly loud: ReadonlySignal<boolean>;
  /** The language of a run that may have to be taken up; null where there is none. */
  readonly underWay: Promise<string | null>;
}

/** A store that does not answer must not hold up the voice. */
const LOOK_WITHIN_MS = 1000;

/** The language of the latest run, unless that is over: a page that opens in mid-run goes on in it. */
export const languageUnderWay = async (
  store: Pick<LogStore, 'heads' | 'lastBatch'>,
): Promise<string | null> => {
  const tooLate = new Promise<null>((done) => setTimeout(() => done(null), LOOK_WITHIN_MS));
  return Promise.race([languageOfLatest(store), tooLate]);
};

const languageOfLatest = async (store: Pick<LogStore, 'heads' | 'lastBatch'>): Promise<string | null> => {
  try {
    const head = (await store.heads())[0];
    if (head === undefined || head.simulated === true) return null;
    const last = await store.lastBatch(head.id);
    return last === null || last.over ? null : languageOf(head.planFile);
  } catch {
    return null;
  }
};

export const createVoices = ({
  english,
  fetch,
  speaker,
  urlOf,
  chosen,
  loud,
  underWay,
}: VoicesParts): Voices => {
  const spoken = signal(english);
  const state = signal<VoiceState>('loading');
  const isLoud = signal(false);
  const voices = new Map<Spoken, Voice>();
  let wanted = '';
  let wantedLoud = false;

  const fetched = async (tag: string): Promise<Spoken | 'none' | 'failed'> => {
    if (tag === english.words.language) return english;
    try {
      return (await fetch(tag)) ?? 'none';
    } catch {
      return 'failed';
    }
  };

  const voiceFor = (language: Spoken): Voice => {
    const made = voices.get(language) ?? voiceOf(language.pack, language.words);
    voices.set(language, made);
    return made;
  };

  /** Words and sound change together. @param isFirst  nothing can be said yet, so the words need not wait for the sound */
  const speak = async (tag: string, isFirst: boolean): Promise<void> => {
    const louder = loud.peek();
    const isWanted = (): boolean => wanted === tag && wantedLoud === louder;
    wanted = tag;
    wantedLoud = louder;
    state.value = 'loading';
    const got = await fetched(tag);
    if (!isWanted()) return;
    const next = got === 'none' || got === 'failed' ? english : got;
    if (isFirst) spoken.value = next;
    const loading = speaker().use(next.pack, urlOf(next, louder));
    const settle = async (): Promise<void> => {
      const isThere = await loading;
      if (!isWanted()) return;
      if (isThere) {
        spoken.value = next;
        isLoud.value = louder;
      } else if (next !== english || louder) {
        // English at its usual loudness lies on every visitor's device.
        await speaker().use(english.pack, urlOf(english, false));
        if (isWanted()) {
          spoken.value = english;
          isLoud.value = false;
        }
      }
      if (isWanted())
        state.value = typeof got === 'string' ? got : isThere || next === english ? 'here' : 'failed';
    };
    if (isFirst) void settle();
    else await settle();
  };

  const first = underWay.then((tag) => speak(tag ?? chosen.peek(), true));

  return {
    voice: {
      utter: (saying, form) => voiceFor(spoken.peek()).utter(saying, form),
      alone: (saying) => voiceFor(spoken.peek()).alone?.(saying) ?? null,
    },
    spoken,
    state,
    isLoud,
    first,
    ofRun: async (planFile) => {
      const got = await fetched(languageOf(planFile));
      return voiceFor(typeof got === 'string' ? english : got);
    },
    follow: (busy) => {
      void first.then(() =>
        effect(() => {
          const [tag, louder] = [chosen.value, loud.value];
          if (!busy.value && (tag !== wanted || louder !== wantedLoud)) void speak(tag, false);
        }),
      );
    },
  };
};
