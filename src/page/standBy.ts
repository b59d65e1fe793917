import { computed } from '@preact/signals';
import { keepStorage, watchInstall } from '../offline/install.ts';
import { keepVoice } from '../offline/keepVoice.ts';
import { createOffline } from '../offline/offline.ts';
import { motionLeave } from '../sensors/motion.ts';
import { afterPaint } from '../session/phone/afterPaint.ts';
import { createScreenLock, noSleepVideo } from '../session/phone/screenLock.ts';
import { readBattery, readFreeMB } from '../session/ready/battery.ts';
import { createReadyModel } from '../session/ready/readyModel.ts';
import { pageTime } from '../voice/device/pageTime.ts';
import type { Ground } from './ground.ts';
import type { Running } from './running.ts';

/** What a runner hears who tries the sound. */
const SAMPLE = { side: 'up', seconds: 4, sure: true } as const;

const createReady = ({ speaker, earDelayMs, voice, choices }: Ground, { run, buttons }: Running) =>
  createReadyModel({
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

const createStored = ({ speaker, path, englishPath }: Ground, { run }: Running) => {
  const voiceKept = keepVoice({
    caches: globalThis.caches,
    path,
    isStored: (wanted) => wanted === englishPath,
  });
  return createOffline({
    workers: navigator.serviceWorker,
    caches: globalThis.caches,
    needed: ['/index.html', englishPath],
    voiceDecoded: computed(() => ['asleep', 'ready'].includes(speaker.state.value) && voiceKept.value),
    voiceRests: computed(() => !speaker.begun.value && voiceKept.value),
    runIsOn: () => run.current.value !== null,
    reload: () => location.reload(),
    begin: afterPaint,
  });
};

/** What makes a phone ready for the day: the check, the tones to learn, and that all of it is stored. */
export const createStandBy = (ground: Ground, running: Running) => ({
  install: watchInstall(),
  ready: createReady(ground, running),
  /** The tones and the quiz about them, loaded with their screen. */
  learn: async () => {
    const { createLearnModel } = await import('../session/ear/learnModel.ts');
    return createLearnModel({
      speaker: ground.speaker,
      time: pageTime,
      talk: ground.choices.talk,
      newSeed: Date.now,
      nav: navigator,
    });
  },
  offline: createStored(ground, running),
});

export type StandBy = ReturnType<typeof createStandBy>;
