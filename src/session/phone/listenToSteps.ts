import { askForMotion, watchSteps } from '../../sensors/motion.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';

/** Listens to the runner's steps, where the device lets it; to be called in a touch. Returns what ends it. */
export const listenToSteps =
  (win: Window & typeof globalThis, time: PageTime) =>
  (onSteps: (stepHz: number | null) => void): (() => void) => {
    let stop = (): void => {};
    let ended = false;
    void askForMotion(win).then((leave) => {
      if (leave === 'given' && !ended)
        stop = watchSteps({ target: win, nowMs: time.nowMs, every: time.every, onSteps });
    });
    return () => {
      ended = true;
      stop();
    };
  };
