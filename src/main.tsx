import { computed, effect } from '@preact/signals';
import { render } from 'preact';
import { podSeen } from './core/estimate/podSpeed.ts';
import { withLanguage } from './core/plan/planLanguage.ts';
import { withBelieved } from './core/review/withBelieved.ts';
import { demoCourse } from './demo/course.ts';
import { DEMO_PEN_S, DEMO_SEED, demoDeadM, demoPlan, demoPresses, demoRunner } from './demo/race.ts';
import { createPageLanguage } from './languages/onPage.ts';
import { createReviewStore } from './log/reviewStore.ts';
import { createLogStore } from './log/store.ts';
import { keepStorage, watchInstall } from './offline/install.ts';
import { keepVoice } from './offline/keepVoice.ts';
import { createOffline } from './offline/offline.ts';
import { App } from './screens/app.tsx';
import * as screens from './screens/laterScreens.ts';
import { LanguageChooser } from './screens/parts/languageChooser.tsx';
import { later } from './screens/parts/later.tsx';
import { OfflineState } from './screens/parts/offlineState.tsx';
import { SoundState } from './screens/parts/soundState.tsx';
import { ReadyScreen } from './screens/ready/ready.tsx';
import { RehearseScreen } from './screens/rehearse/rehearse.tsx';
import { watchRoute } from './screens/route.ts';
import { RunScreen } from './screens/run/run.tsx';
import './screens/style/all.ts';
import type { Bluetooth } from './sensors/bluetooth/link.ts';
import { whenGeolocationAllowed } from './sensors/geolocation.ts';
import { motionLeave } from './sensors/motion.ts';
import { simulate } from './sensors/simulated.ts';
import { TOWN } from './sensors/simulatedReceiver.ts';
import { watchVisibility } from './sensors/visibility.ts';
import { afterPaint } from './session/afterPaint.ts';
import { readBattery, readFreeMB } from './session/battery.ts';
import { pastRunsOf } from './session/coursePast.ts';
import { createEarDelay } from './session/earDelay.ts';
import { keepFace } from './session/keepFace.ts';
import { createLearnModel } from './session/learnModel.ts';
import { listenToSteps } from './session/listenToSteps.ts';
import { pageKeep } from './session/pageKeep.ts';
import { createPageVoice } from './session/pageVoice.ts';
import { createPlanModel } from './session/planModel.ts';
import { createPodShelf } from './session/podShelf.ts';
import { createCourseChoice } from './session/practiceCourse.ts';
import { createPracticeModel } from './session/practiceModel.ts';
import { createPrepareModel } from './session/prepareModel.ts';
import { createReminders } from './session/prepareReminders.ts';
import { simulateInWorker } from './session/prepareSimulate.ts';
import { readConfigWith } from './session/readConfig.ts';
import { createReadyModel } from './session/readyModel.ts';
import { createRehearseModel } from './session/rehearseModel.ts';
import { createReviewModel } from './session/reviewModel.ts';
import { createRunShelf } from './session/reviewRuns.ts';
import { createRunChoices } from './session/runChoices.ts';
import { createRunLead } from './session/runLead.ts';
import { createRunModel } from './session/runModel.ts';
import { createScreenLock, noSleepVideo } from './session/screenLock.ts';
import { practiceTape } from './session/tape.ts';
import { createButtons } from './voice/device/buttons.ts';
import { createBuzz } from './voice/device/buzz.ts';
import { createClick } from './voice/device/click.ts';
import { pageTime } from './voice/device/pageTime.ts';

/** What a runner hears who tries the sound. */
const SAMPLE = { side: 'up', seconds: 4, sure: true } as const;
/** What is told outside a run is told now or not at all. */
const TELL_WITHIN_MS = 2000;

const page = document.getElementById('page');
if (page === null) throw new Error('index.html has no #page');

const keep = pageKeep(window);
const language = createPageLanguage(navigator.languages, keep, document.documentElement);
const store = createLogStore();
const earDelayMs = createEarDelay(keep);
const choices = createRunChoices(keep);
const { voices, speaker, path, englishPath } = createPageVoice(
  language.chosenLanguage,
  choices.loud,
  store,
  pageTime,
  earDelayMs,
);
const { voice } = voices;
const spokenIn = (): string => voices.spoken.value.words.language;
// Measured when it is first looked at: nobody who wants to run should wait for it.
const demoLine = computed(demoCourse);
const demoTape = () =>
  simulate({
    plan: demoPlan,
    line: demoLine.value,
    runner: demoRunner,
    receiver: { ...TOWN, deadM: demoDeadM },
    presses: demoPresses,
    penS: DEMO_PEN_S,
    seed: DEMO_SEED,
  }).inputs;

const plan = createPlanModel(demoPlan, keep);
const pastRuns = pastRunsOf(store);
const reviews = createReviewStore();
const review = createReviewModel({
  shelf: createRunShelf({ store, reviews, build: import.meta.url, keep, language: spokenIn }),
  voice,
  voiceOfRun: voices.ofRun,
  ear: speaker,
  wake: speaker.wake,
  time: pageTime,
  keep,
  wallMs: Date.now,
});
// What kept runs say is known once they were read.
afterPaint(() => void review.refresh());
const prepare = createPrepareModel({
  plan,
  keep,
  now: () => new Date(),
  newId: () => crypto.randomUUID(),
  simulate: simulateInWorker(),
  own: review.own,
});
const reminders = createReminders({
  day: prepare.day,
  ear: speaker,
  wake: speaker.wake,
  voice,
  time: pageTime,
  wallMs: Date.now,
});

const rehearse = createRehearseModel({
  configOf: (source) =>
    source === 'demo'
      ? { plan: demoPlan, course: demoLine.value, voice }
      : { plan: plan.plan.value, course: plan.course.value, voice },
  tapeOf: (source) => (source === 'demo' ? demoTape() : practiceTape(plan.plan.value, plan.course.value)),
  ear: speaker,
  wake: speaker.wake,
  time: pageTime,
});

const buttons = createButtons();
const run = createRunModel({
  // What is believed of the phone is part of the run: its log must fold to the same calls ever after.
  planFileNow: () =>
    withLanguage(
      withBelieved(plan.planFile(), review.own.value, plan.plan.value.goalS, practice.footPod()),
      spokenIn(),
    ),
  readConfig: readConfigWith(voice),
  speaker,
  buzz: createBuzz(pageTime.nowMs),
  lock: createScreenLock(navigator.wakeLock, noSleepVideo),
  geolocation: navigator.geolocation,
  whenAllowed: whenGeolocationAllowed(navigator.permissions),
  time: pageTime,
  originMs: performance.timeOrigin,
  wallMs: Date.now,
  store,
  lead: createRunLead(navigator.locks),
  choices,
  buttons,
  click: createClick(),
  listenToSteps: listenToSteps(window, pageTime),
  // The file's name holds a hash of what is in it.
  build: import.meta.url,
  tell: (what) => {
    const atMs = pageTime.nowMs();
    speaker.say(voice.utter({ kind: 'notice', what, ahead: null }, 'long'), atMs, atMs + TELL_WITHIN_MS);
  },
});

const install = watchInstall();
const ready = createReadyModel({
  speaker,
  earDelayMs,
  sample: () =>
    voice.utter({ kind: 'checkpoint', place: { name: 'halfway' }, timeS: 3120, ahead: SAMPLE }, 'long'),
  lock: createScreenLock(navigator.wakeLock, noSleepVideo),
  geolocation: navigator.geolocation,
  time: pageTime,
  nowMs: () => performance.timeOrigin + pageTime.nowMs(),
  takeButtons: async (onPress) => (choices.buttons.value ? buttons.take(onPress) : false),
  giveButtons: () => {
    if (run.current.value === null) buttons.give();
  },
  battery: () => readBattery(navigator),
  keep: () => keepStorage(navigator.storage),
  freeMB: () => readFreeMB(navigator.storage),
  motionLeave: motionLeave(window),
  win: window,
});

const learn = createLearnModel({
  speaker,
  time: pageTime,
  talk: choices.talk,
  newSeed: Date.now,
  nav: navigator,
});

const voiceKept = keepVoice({
  caches: globalThis.caches,
  path,
  isStored: (wanted) => wanted === englishPath,
});
const offline = createOffline({
  workers: navigator.serviceWorker,
  caches: globalThis.caches,
  needed: ['/index.html', englishPath],
  voiceDecoded: computed(() => ['asleep', 'ready'].includes(speaker.state.value) && voiceKept.value),
  runIsOn: () => run.current.value !== null,
  reload: () => location.reload(),
  begin: afterPaint,
});

const practice = createPracticeModel({
  goal: plan.plan,
  voice,
  language: spokenIn,
  speaker,
  talk: () => choices.talk.value,
  buzz: createBuzz(pageTime.nowMs),
  lock: createScreenLock(navigator.wakeLock, noSleepVideo),
  lead: createRunLead(navigator.locks),
  geolocation: navigator.geolocation,
  bluetooth: 'bluetooth' in navigator ? (navigator.bluetooth as Bluetooth) : undefined,
  time: pageTime,
  originMs: performance.timeOrigin,
  wallMs: Date.now,
  store,
  build: import.meta.url,
  alsoSensed: (input) => run.current.value?.sense(input),
  pods: createPodShelf(keep),
  course: createCourseChoice(keep),
});
const raceIsRun = computed(() =>
  ['finished', 'stopped'].includes(run.current.value?.view.value.phase.phase ?? ''),
);
effect(() => {
  const cell = raceIsRun.value ? run.current.peek()?.cell : undefined;
  if (cell !== undefined) practice.learnPod(podSeen(cell.folded().state.estimate));
});

watchVisibility((visible) => {
  if (visible) {
    run.seenAgain();
    offline.look();
  } else run.hidden();
});

keepFace(window, () => run.current.value?.phase.value === 'running');

// A run that was cut off is more urgent than whatever the address says.
void voices.first
  .then(run.recover)
  .then(async (found) => {
    if (found) location.hash = '#/run';
    else if (await practice.recover()) location.hash = '#/practice';
  })
  // A run goes on in the language that it began in; after it the choice is followed again.
  .finally(() =>
    voices.follow(
      computed(() => (run.current.value ?? run.brokenOff.value ?? practice.current.value) !== null),
    ),
  );

const AloudScreen = later(() =>
  import('./screens/aloud/door.tsx').then(({ aloudScreen }) =>
    aloudScreen({ plan, session: practice.plan, spoken: voices.spoken, speaker, time: pageTime }),
  ),
);

render(
  <App
    route={watchRoute()}
    screens={{
      goal: () => <screens.GoalScreen model={prepare} plan={plan} />,
      course: () => <screens.CourseScreen model={plan} runs={pastRuns} />,
      plan: () => <screens.PlanScreen model={plan} />,
      fuel: () => <screens.FuelScreen model={prepare} plan={plan} />,
      day: () => <screens.DayScreen model={prepare} plan={plan} reminders={reminders} />,
      paper: () => <screens.PaperScreen model={prepare} plan={plan} />,
      aloud: () => <AloudScreen />,
      whatIf: () => <screens.WhatIfScreen model={prepare} plan={plan} />,
      practice: () => <screens.PracticeScreen model={practice} race={plan} runs={pastRuns} />,
      runs: () => <screens.RunsScreen model={review} />,
      rehearse: () => <RehearseScreen model={rehearse} sound={<SoundState speaker={speaker} />} />,
      run: () => <RunScreen model={run} plan={plan.plan.value} />,
      ready: () => <ReadyScreen model={ready} offline={offline.state} install={install} />,
      learn: () => <screens.LearnScreen model={learn} />,
      share: () => <screens.ShareScreen plan={plan} />,
    }}
    foot={
      <>
        <OfflineState offline={offline} />
        <LanguageChooser language={language} voice={voices.state} />
      </>
    }
  />,
  page,
);
