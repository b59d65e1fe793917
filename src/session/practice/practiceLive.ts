import { type ReadonlySignal, signal } from '@preact/signals';
import type { Call } from '../../core/cues/call.ts';
import type { Talk } from '../../core/cues/talk.ts';
import type { Utterance, Voice } from '../../core/cues/voicePort.ts';
import type { EventName } from '../../core/estimate/input.ts';
import type { PodScale } from '../../core/estimate/podScale.ts';
import { podSeen } from '../../core/estimate/podSpeed.ts';
import { penWaits } from '../../core/practice/notices.ts';
import {
  beginPractice,
  type PracticeConfig,
  type PracticeView,
  practiceView,
} from '../../core/practice/practice.ts';
import { practiceStep } from '../../core/practice/step.ts';
import { type RunInput, USUAL_SETTINGS } from '../../core/run/settings.ts';
import type { FixWatch, FixWatchPorts, Reception } from '../../sensors/geolocation.ts';
import type { Ear } from '../../voice/device/ear.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import { createSayAfter } from '../ear/sayAfter.ts';
import type { RunClock } from '../run/runClock.ts';

/** A session on the road or indoors: inputs folded as they come, its calls sounded as they are decided. */
export interface LivePractice {
  readonly config: PracticeConfig;
  readonly view: ReadonlySignal<PracticeView>;
  /** What was called last, for the screen; the whole book of calls is the review's, from the log. */
  readonly lastCall: ReadonlySignal<Call | null>;
  readonly reception: ReadonlySignal<Reception>;
  readonly press: (event: EventName) => void;
  /** From a belt or a foot pod. */
  readonly sense: (input: RunInput) => void;
  readonly seenAgain: () => void;
  /** The sound was taken away; it is there again, and what is still true is said. */
  readonly soundLost: () => void;
  readonly soundBack: () => void;
  /** What the session has shown of the foot pod; null where none was heard on the road. */
  readonly podSeen: () => PodScale | null;
  readonly close: () => void;
}

export interface LivePracticeParts {
  readonly config: PracticeConfig;
  readonly ear: Ear;
  readonly buzz: (call: Call, atPageMs: number) => void;
  readonly clock: RunClock;
  readonly time: PageTime;
  readonly watch: ((ports: Omit<FixWatchPorts, 'geolocation'>) => FixWatch) | null;
  readonly record: (input: RunInput) => void;
  /** The session is over and its last call is heard out. */
  readonly onOver: () => void;
  /** What came in before the page was closed, asked for once: it is folded, not recorded and not said again. */
  readonly past?: () => readonly RunInput[] | null;
  /** How much is to be said from the start on; absent: as usual, or as the log has it. */
  readonly talk?: Talk;
}

/** Well within the engine's grid of half a second: see liveRun.ts. */
const TICK_MS = 100;
const SHOW_MS = 500;
/** The result of the last leg is said up to half a minute after the end. */
const AFTER_MS = 30_000;

/** After its moment a countdown counts to nothing: the words are said without it, a tone alone not at all. */
export const saidAfterwards =
  (voice: Voice) =>
  ({ saying, form, utterance }: Call): Utterance | null => {
    if (!('tone' in saying) || saying.tone !== 'countdown') return utterance;
    if (utterance.text === '') return null;
    return voice.utter(
      saying.kind === 'leg' ? { ...saying, tone: 'leg' } : { ...saying, tone: 'finish' },
      form,
    );
  };

export const startLivePractice = (parts: LivePracticeParts): LivePractice => {
  const { config, clock, time, ear } = parts;
  let practice = (parts.past?.() ?? []).reduce(
    (before, input) => practiceStep(before, input).practice,
    beginPractice(config),
  );
  const view = signal(practiceView(practice, clock.nowMs()));
  const lastCall = signal<Call | null>(null);
  const reception = signal<Reception>('waiting');
  const mouth = createSayAfter({ ear, clock, afterwards: saidAfterwards(config.voice) });
  let shownMs = 0;
  let over = false;

  const take = (input: RunInput): void => {
    if (over) return;
    parts.record(input);
    const next = practiceStep(practice, input);
    practice = next.practice;
    if (next.calls.length === 0) return;
    lastCall.value = next.calls.at(-1) ?? null;
    for (const call of next.calls) {
      mouth.say(call);
      parts.buzz(call, clock.pageMs(call.startMs));
    }
  };

  const show = (nowMs: number): void => {
    shownMs = nowMs;
    view.value = practiceView(practice, nowMs);
  };

  const tick = (): void => {
    const nowMs = clock.nowMs();
    take({ type: 'clock', atMs: nowMs });
    if (nowMs - shownMs >= SHOW_MS) show(nowMs);
    if (practice.endMs !== null && nowMs > practice.endMs + AFTER_MS && !penWaits(practice, nowMs)) {
      close();
      parts.onOver();
    }
  };

  const watch =
    parts.watch?.({
      nowMs: clock.nowMs,
      every: time.every,
      onFix: (fix, atMs) => take({ type: 'fix', atMs, fix }),
      onReception: (next) => {
        reception.value = next;
      },
    }) ?? null;
  const stopTicks = time.every(TICK_MS, tick);

  const close = (): void => {
    over = true;
    stopTicks();
    watch?.stop();
  };

  if (parts.talk !== undefined && parts.talk !== USUAL_SETTINGS.talk)
    take({ type: 'setting', atMs: clock.nowMs(), talk: parts.talk });

  return {
    config,
    view,
    lastCall,
    reception,
    press: (event) => {
      const nowMs = clock.nowMs();
      take({ type: 'event', atMs: nowMs, event });
      show(nowMs);
    },
    sense: take,
    seenAgain: () => {
      watch?.renew();
      tick();
    },
    soundLost: mouth.lost,
    soundBack: mouth.back,
    podSeen: () => podSeen(practice.estimate),
    close,
  };
};
