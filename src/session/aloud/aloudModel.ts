import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { type Aloud, raceAloud } from '../../core/aloud/aloud.ts';
import type { Places } from '../../core/aloud/raceWishes.ts';
import { sessionAloud } from '../../core/aloud/session.ts';
import type { PracticePlan } from '../../core/plan/practicePlan.ts';
import { scheduleOf } from '../../core/plan/schedule.ts';
import { type Message, message } from '../../core/units/message.ts';
import { err, ok, type Result } from '../../core/units/result.ts';
import { refusal } from '../../languages/refusal.ts';
import type { Spoken } from '../../languages/spoken.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { Speaker } from '../../voice/device/speaker.ts';
import { voiceFile } from '../../voice/file/fetched.ts';
import { sourcesOf } from '../../voice/file/fromPack.ts';
import { mp3Of } from '../../voice/file/mp3.ts';
import { toneFrames } from '../../voice/file/toneFrames.ts';
import { vttOf } from '../../voice/file/webVtt.ts';
import type { Loudness } from '../../voice/packs/pack.ts';
import { voiceOf } from '../../voice/utter.ts';
import type { PlanModel } from '../plan/planModel.ts';
import { type AloudLine, cuesOf, linesOf, stripOf } from './aloudFile.ts';

/** What is said: the race plan, or the practice session that is chosen. */
export type AloudSource = 'race' | 'session';

export interface AloudSheet {
  readonly lines: readonly AloudLine[];
  /** What found no room. */
  readonly dropped: number;
  readonly lengthS: number;
  /** To some per cent: the file is not made yet. */
  readonly aboutBytes: number;
}

/** The plan as a sound file: what it will say, and the files. */
export interface AloudModel {
  readonly source: Signal<AloudSource>;
  readonly leadS: Signal<number>;
  readonly places: Signal<Places>;
  readonly loudness: Signal<Loudness>;
  readonly title: ReadonlySignal<string>;
  /** BCP 47 tag of the voice. */
  readonly language: ReadonlySignal<string>;
  /** What will be said; or why it cannot be said by the clock. */
  readonly sheet: ReadonlySignal<Result<AloudSheet, Message>>;
  readonly state: ReadonlySignal<'idle' | 'making' | 'made'>;
  readonly trouble: ReadonlySignal<Message | null>;
  readonly mp3: () => Promise<Blob | null>;
  readonly vtt: () => Promise<string | null>;
  /** Sounds one line at once. To be called in a touch. */
  readonly listen: (line: AloudLine) => Promise<void>;
}

export interface AloudParts {
  readonly plan: Pick<PlanModel, 'plan' | 'course'>;
  readonly session: ReadonlySignal<PracticePlan>;
  readonly spoken: ReadonlySignal<Spoken>;
  readonly speaker: Pick<Speaker, 'wake' | 'say' | 'hush'>;
  readonly time: PageTime;
}

/** Silence at the lowest bit rate, and what speech takes more than that, bytes a second. */
const QUIET_BYTES_PER_S = 1000;
const SPEECH_BYTES_PER_S = 5000;
/** The last second, in which nothing sounds. */
const TAIL_S = 1;
const LISTEN_WITHIN_MS = 2000;

const sheetOf = (aloud: Aloud, leadS: number): AloudSheet => {
  const lines = linesOf(aloud);
  const last = lines.at(-1);
  const lengthS =
    leadS + Math.max(aloud.totalS, (last?.atS ?? 0) + (last?.utterance.durationS ?? 0) + TAIL_S);
  const speechS = lines.reduce((sum, { utterance }) => sum + utterance.durationS, 0);
  return {
    lines,
    dropped: aloud.dropped.length,
    lengthS,
    aboutBytes: QUIET_BYTES_PER_S * lengthS + SPEECH_BYTES_PER_S * speechS,
  };
};

export const createAloudModel = (parts: AloudParts): AloudModel => {
  const source = signal<AloudSource>('race');
  const leadS = signal(10);
  const places = signal<Places>('boards');
  const loudness = signal<Loudness>('normal');
  const state = signal<'idle' | 'making' | 'made'>('idle');
  const trouble = signal<Message | null>(null);
  const { plan, course } = parts.plan;
  const title = computed(() => (source.value === 'race' ? plan.value.name : parts.session.value.name));

  const aloud = computed((): Result<Aloud, Message> => {
    const { pack, words } = parts.spoken.value;
    const voice = voiceOf(pack, words);
    if (source.value === 'session') {
      const got = sessionAloud(parts.session.value, voice, leadS.value);
      return got.ok
        ? got
        : err(
            message(
              'This session has a part that ends by a press, or by distance without a pace: no clock can tell when.',
            ),
          );
    }
    const schedule = scheduleOf(plan.value, course.value);
    return ok(raceAloud(plan.value, schedule, voice, { leadS: leadS.value, places: places.value }));
  });
  const sheet = computed(() => {
    const got = aloud.value;
    return got.ok ? ok(sheetOf(got.value, leadS.value)) : got;
  });

  const made = async () => {
    const got = aloud.peek();
    if (!got.ok) return null;
    const { pack } = parts.spoken.peek();
    trouble.value = null;
    state.value = 'making';
    try {
      const [voice, tones] = await Promise.all(
        [pack.variants[loudness.peek()].file, toneFrames.file].map(voiceFile),
      );
      const sources = sourcesOf(
        { table: pack, mp3: voice ?? new Uint8Array() },
        { table: toneFrames, mp3: tones ?? new Uint8Array() },
        loudness.peek(),
      );
      if (!sources.ok) {
        trouble.value = refusal(sources.error);
        return null;
      }
      const lines = linesOf(got.value);
      return { lines, strip: stripOf(lines, got.value.totalS, leadS.peek(), sources.value) };
    } catch {
      trouble.value = message('The voice could not be loaded. Try again with a network.');
      return null;
    } finally {
      state.value = trouble.peek() === null ? 'made' : 'idle';
    }
  };

  return {
    source,
    leadS,
    places,
    loudness,
    title,
    language: computed(() => parts.spoken.value.words.language),
    sheet,
    state,
    trouble,
    mp3: async () => {
      const file = await made();
      return file && new Blob(mp3Of(file.strip, title.peek()), { type: 'audio/mpeg' });
    },
    vtt: async () => {
      const file = await made();
      return file && vttOf(title.peek(), cuesOf(file.lines, file.strip));
    },
    listen: async ({ utterance }) => {
      if (!(await parts.speaker.wake())) return;
      parts.speaker.hush();
      const nowMs = parts.time.nowMs();
      parts.speaker.say(utterance, nowMs, nowMs + LISTEN_WITHIN_MS);
    },
  };
};
