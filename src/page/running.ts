import { computed, effect } from '@preact/signals';
import { podSeen } from '../core/estimate/podSpeed.ts';
import { withLanguage } from '../core/plan/planLanguage.ts';
import { withBelieved } from '../core/review/withBelieved.ts';
import type { Bluetooth } from '../sensors/bluetooth/link.ts';
import { whenGeolocationAllowed } from '../sensors/geolocation.ts';
import { listenToSteps } from '../session/phone/listenToSteps.ts';
import { createScreenLock, noSleepVideo } from '../session/phone/screenLock.ts';
import { createPodShelf } from '../session/practice/podShelf.ts';
import { createCourseChoice } from '../session/practice/practiceCourse.ts';
import { createPracticeModel, type PracticeModel } from '../session/practice/practiceModel.ts';
import { readConfigWith } from '../session/run/readConfig.ts';
import { createRunLead } from '../session/run/runLead.ts';
import { createRunModel, type RunModel } from '../session/run/runModel.ts';
import { type Buttons, createButtons } from '../voice/device/buttons.ts';
import { createBuzz } from '../voice/device/buzz.ts';
import { createClick } from '../voice/device/click.ts';
import { pageTime } from '../voice/device/pageTime.ts';
import type { Afterwards } from './afterwards.ts';
import type { Before } from './before.ts';
import type { Ground } from './ground.ts';

/** What is told outside a run is told now or not at all. */
const TELL_WITHIN_MS = 2000;

/** What a race and a practice session both need of the phone. */
const deviceOf = ({ speaker, store, build }: Ground) => ({
  speaker,
  buzz: createBuzz(pageTime.nowMs),
  lock: createScreenLock(navigator.wakeLock, noSleepVideo),
  lead: createRunLead(navigator.locks),
  geolocation: navigator.geolocation,
  time: pageTime,
  originMs: performance.timeOrigin,
  wallMs: Date.now,
  store,
  build,
});

interface RaceParts {
  readonly ground: Ground;
  readonly review: Afterwards;
  readonly plan: Before['plan'];
  readonly buttons: Buttons;
  readonly footPod: PracticeModel['footPod'];
}

const createRace = ({ ground, review, plan, buttons, footPod }: RaceParts): RunModel => {
  const { voice, speaker, choices, spokenIn } = ground;
  return createRunModel({
    ...deviceOf(ground),
    // What is believed of the phone is part of the run: its log must fold to the same calls ever after.
    planFileNow: () =>
      withLanguage(
        withBelieved(plan.planFile(), review.own.value, plan.plan.value.goalS, footPod()),
        spokenIn(),
      ),
    readConfig: readConfigWith(voice),
    whenAllowed: whenGeolocationAllowed(navigator.permissions),
    choices,
    buttons,
    click: createClick(),
    listenToSteps: listenToSteps(window, pageTime),
    tell: (what) => {
      const atMs = pageTime.nowMs();
      speaker.say(voice.utter({ kind: 'notice', what, ahead: null }, 'long'), atMs, atMs + TELL_WITHIN_MS);
    },
  });
};

/** The race and the practice session, which lend each other their ears. */
export const createRunning = (ground: Ground, review: Afterwards, plan: Before['plan']) => {
  const { keep, choices, spokenIn, voice } = ground;
  const buttons = createButtons();
  const run = createRace({ ground, review, plan, buttons, footPod: () => practice.footPod() });
  const practice: PracticeModel = createPracticeModel({
    ...deviceOf(ground),
    voice,
    goal: plan.plan,
    language: spokenIn,
    talk: () => choices.talk.value,
    bluetooth: 'bluetooth' in navigator ? (navigator.bluetooth as Bluetooth) : undefined,
    alsoSensed: (input) => run.current.value?.sense(input),
    pods: createPodShelf(keep),
    course: createCourseChoice(keep),
  });
  const raceIsRun = computed(() =>
    ['finished', 'stopped'].includes(run.current.value?.view.value.phase.phase ?? ''),
  );
  // What the road told of the foot pod is kept when the race is over.
  effect(() => {
    const cell = raceIsRun.value ? run.current.peek()?.cell : undefined;
    if (cell !== undefined) practice.learnPod(podSeen(cell.folded().state.estimate));
  });
  return { run, practice, buttons };
};

export type Running = ReturnType<typeof createRunning>;
