import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Call } from '../../core/cues/call.ts';
import type { Talk } from '../../core/cues/talk.ts';
import type { Voice } from '../../core/cues/voicePort.ts';
import type { Input } from '../../core/estimate/input.ts';
import type { PodScale } from '../../core/estimate/podScale.ts';
import { parseAnyPlan, practiceFile } from '../../core/plan/parsePracticePlan.ts';
import { UNNAMED_LANGUAGE, withLanguage } from '../../core/plan/planLanguage.ts';
import { footPodOf, withFootPod } from '../../core/plan/planPod.ts';
import type { PracticeCourse } from '../../core/plan/practiceCourse.ts';
import type { PracticePlan } from '../../core/plan/practicePlan.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { progression, type Week } from '../../core/practice/sessions/progression.ts';
import { READY_MADE_TEXT, type ReadyMade, readyMade } from '../../core/practice/sessions/readyMade.ts';
import { type Message, message } from '../../core/units/message.ts';
import { refusal } from '../../languages/refusal.ts';
import { t } from '../../languages/text.ts';
import type { LogStore } from '../../log/store.ts';
import type { BodySensor } from '../../sensors/bluetooth/bodySensors.ts';
import type { Bluetooth, LinkState } from '../../sensors/bluetooth/link.ts';
import { type FixWatchPorts, watchFixes } from '../../sensors/geolocation.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { Speaker } from '../../voice/device/speaker.ts';
import { watchSound } from '../ear/soundGap.ts';
import type { ScreenLock } from '../phone/screenLock.ts';
import { type Replay, startReplay } from '../review/reviewReplay.ts';
import { handOver } from '../run/handOver.ts';
import { findUnfinished, inputsOf, type Unfinished } from '../run/recovery.ts';
import { originAfter, runClockOf } from '../run/runClock.ts';
import type { RunLead } from '../run/runLead.ts';
import { type RunRecord, startRecord } from '../run/runRecord.ts';
import { nextAtMs } from './nextAt.ts';
import type { PodShelf } from './podShelf.ts';
import { createBody } from './practiceBody.ts';
import type { CourseChoice } from './practiceCourse.ts';
import { practisedCalls } from './practiceHear.ts';
import { type LivePractice, startLivePractice } from './practiceLive.ts';

/** What the runner has chosen: a session of the trade, or one of their own from a file. */
export type Choice = { readonly which: ReadyMade } | { readonly own: PracticePlan };

export interface PracticeModel {
  readonly choice: Signal<Choice>;
  readonly indoors: Signal<boolean>;
  readonly thresholdMin: Signal<number>;
  readonly longMin: Signal<number>;
  /** Beats a minute; null: no ceiling. */
  readonly ceiling: Signal<number | null>;
  /** When the pen closes, as a clock shows it: `08:20`; empty where nobody knows. */
  readonly penAt: Signal<string>;
  /** The way that the session is run on; null: any. */
  readonly course: ReadonlySignal<PracticeCourse | null>;
  readonly setCourse: (course: PracticeCourse | null) => void;
  /** What is chosen, laid out. */
  readonly plan: ReadonlySignal<PracticePlan>;
  readonly weeks: ReadonlySignal<readonly Week[]>;
  readonly said: Signal<Message | null>;
  readonly current: ReadonlySignal<LivePractice | null>;
  readonly sensors: ReadonlySignal<Readonly<Partial<Record<BodySensor, LinkState>>>>;
  /** False where the browser has no Web Bluetooth. */
  readonly hasBluetooth: boolean;
  readonly replay: ReadonlySignal<Replay | null>;
  readonly openFile: (text: string) => void;
  readonly file: () => string;
  /** To be called in a touch. */
  readonly prepare: () => Promise<void>;
  /** Takes up a session whose page went away minutes ago; true when there is one. To be called once. */
  readonly recover: () => Promise<boolean>;
  readonly pair: (sensor: BodySensor) => Promise<void>;
  /** What is known of the foot pod that is worn; null where none is, or nothing is known. */
  readonly footPod: () => PodScale | null;
  /** What a race has shown of it. */
  readonly learnPod: (seen: PodScale | null) => void;
  /** The session by ear, done by a simulated runner. To be called in a touch. */
  readonly hear: (rate: number) => Promise<void>;
  readonly hush: () => void;
  readonly leave: () => void;
  readonly seenAgain: () => void;
}

export interface PracticeParts {
  readonly goal: ReadonlySignal<RacePlan>;
  readonly voice: Voice;
  /** BCP 47 tag of what it speaks now; kept with the log. */
  readonly language?: () => string;
  readonly speaker: Speaker;
  /** How much is said. */
  readonly talk?: () => Talk;
  readonly buzz: (call: Call, atPageMs: number) => void;
  readonly lock: ScreenLock;
  readonly lead: RunLead;
  readonly geolocation: FixWatchPorts['geolocation'];
  readonly bluetooth: Bluetooth | undefined;
  readonly time: PageTime;
  readonly originMs: number;
  readonly wallMs: () => number;
  readonly store: LogStore;
  readonly build: string;
  /** A race hears the same belt. */
  readonly alsoSensed: (input: Input) => void;
  readonly pods: PodShelf;
  readonly course: CourseChoice;
}

const WEEKS = 8;
/** Within this a session goes on by itself; later the runner has gone home. */
const GO_ON_MS = 30 * 60_000;
/** A session says nothing of its own about the sound: what is true of the leg is said. */
const NO_NOTICE = (): void => {};

const isoOf = (ms: number): string => new Date(ms).toISOString();

export const createPracticeModel = (parts: PracticeParts): PracticeModel => {
  const { goal, voice, speaker, time, lock, lead } = parts;
  const choice = signal<Choice>({ which: 'twice15' });
  const indoors = signal(false);
  const thresholdMin = signal(15);
  const longMin = signal(100);
  const ceiling = signal<number | null>(null);
  const penAt = signal('');
  const said = signal<Message | null>(null);
  const current = signal<LivePractice | null>(null);
  const replay = signal<Replay | null>(null);
  let record: RunRecord | null = null;
  let stopSound = (): void => {};

  const session = computed((): PracticePlan => {
    const chosen = choice.value;
    if ('own' in chosen) return chosen.own;
    const wish = {
      thresholdMin: thresholdMin.value,
      longMin: longMin.value,
      heartMostBpm: ceiling.value,
      penClosesMs: nextAtMs(penAt.value, parts.wallMs()),
    };
    // The name goes into the file and the log as it is read now.
    const made = readyMade(chosen.which, goal.value, wish, t(READY_MADE_TEXT[chosen.which].title));
    return indoors.value ? { ...made, place: 'indoors' } : made;
  });
  const plan = computed((): PracticePlan => {
    const { course: _, ...rest } = session.value;
    const course = parts.course.course.value;
    return course === null || rest.place === 'indoors' ? rest : { ...rest, course };
  });

  let clock = runClockOf(time, parts.originMs);
  const file = (): string => practiceFile(plan.value, isoOf);
  const body = createBody({
    bluetooth: parts.bluetooth,
    nowMs: () => clock.nowMs(),
    onInput: (input) => {
      current.value?.sense(input);
      parts.alsoSensed(input);
    },
    pods: parts.pods,
  });

  const end = (): void => {
    if (record !== null) body.learnPod(current.value?.podSeen() ?? null);
    record?.end();
    record = null;
    stopSound();
    lock.release();
    lead.give();
  };

  const hush = (): void => {
    replay.value?.end();
    replay.value = null;
  };

  /** @param past  the session to go on with; null for a new one */
  const start = (past: Unfinished | null, now: PracticePlan): void => {
    const planFile =
      past?.head.planFile ??
      withLanguage(withFootPod(file(), body.footPod()), parts.language?.() ?? UNNAMED_LANGUAGE);
    const head = past?.head ?? ({ id: Math.round(clock.nowMs()), version: 1, planFile } as const);
    const pod = footPodOf(planFile);
    const made = startRecord({
      store: parts.store,
      head,
      clocks: () => ({ engineMs: clock.nowMs(), wallMs: parts.wallMs() }),
      time,
      build: parts.build,
      foldedNow: () => null,
      onKeeping: (keeping) => {
        if (keeping !== 'stored') said.value = message('This device does not keep the log of this session.');
      },
      storedLines: past?.lines.length ?? null,
    });
    record = made;
    const live = startLivePractice({
      config: { plan: now, voice, ...(pod === null ? {} : { footPod: pod }) },
      ear: speaker,
      buzz: parts.buzz,
      clock,
      time,
      watch:
        now.place === 'road' ? (ports) => watchFixes({ ...ports, geolocation: parts.geolocation }) : null,
      record: made.add,
      onOver: end,
      ...(past === null
        ? { talk: parts.talk?.() ?? 'normal' }
        : {
            past: handOver([...inputsOf(past.lines), { type: 'clock', atMs: past.last.engineMs } as const]),
          }),
    });
    current.value = live;
    stopSound();
    stopSound = watchSound(speaker.state, time, false, NO_NOTICE, (isThere) =>
      isThere ? live.soundBack() : live.soundLost(),
    );
  };

  return {
    choice,
    indoors,
    thresholdMin,
    longMin,
    ceiling,
    penAt,
    course: parts.course.course,
    setCourse: parts.course.set,
    plan,
    weeks: computed(() => progression(WEEKS, longMin.value)),
    said,
    current,
    sensors: body.states,
    hasBluetooth: parts.bluetooth !== undefined,
    replay,
    openFile: (text) => {
      const got = parseAnyPlan(text);
      if (!got.ok) said.value = refusal(got.error);
      else if (got.value.kind === 'race') said.value = message('This file is a race: open it under Plan.');
      else {
        choice.value = { own: got.value.plan };
        if (got.value.plan.course !== undefined) parts.course.set(got.value.plan.course);
        said.value = null;
      }
    },
    file,
    prepare: async () => {
      hush();
      const [, , leads] = await Promise.all([speaker.wake(), lock.hold(), lead.take()]);
      if (leads) start(null, plan.value);
      else {
        lock.release();
        said.value = message('A run is in another window of this device.');
      }
    },
    recover: async () => {
      try {
        const past = await findUnfinished(parts.store, parts.wallMs());
        const got = past && parseAnyPlan(past.head.planFile);
        if (past === null || !got?.ok || got.value.kind !== 'practice') return false;
        if (parts.wallMs() - past.last.wallMs > GO_ON_MS || !(await lead.take())) return false;
        choice.value = { own: got.value.plan };
        clock = runClockOf(time, originAfter(past.last, parts.wallMs(), time.nowMs()));
        start(past, got.value.plan);
        void speaker.wake();
        void lock.hold();
        return true;
      } catch {
        // No storage here: then there is nothing to take up.
        return false;
      }
    },
    pair: body.pair,
    footPod: body.footPod,
    learnPod: body.learnPod,
    hear: async (rate) => {
      hush();
      await speaker.wake();
      const calls = practisedCalls(plan.value, voice);
      replay.value = startReplay(calls, 0, calls.at(-1)?.endS ?? 0, rate, { voice, ear: speaker, time });
    },
    hush,
    leave: () => {
      current.value?.close();
      end();
      current.value = null;
      speaker.hush();
    },
    seenAgain: () => {
      current.value?.seenAgain();
      if (current.value !== null) void lock.seenAgain();
    },
  };
};
