import { type Shake, stepRateHz, WINDOW_MS } from './stepRate.ts';

/** Whether the accelerometer may be read: `ask` where the runner has to be asked first, in a touch (iOS). */
export type MotionLeave = 'given' | 'ask' | 'refused' | 'absent';

/** iOS alone has a permission for motion, and only for as long as the page lives. */
type AskingMotionEvent = typeof DeviceMotionEvent & { requestPermission?: () => Promise<string> };

const motionEvent = (win: Window & typeof globalThis): AskingMotionEvent | undefined =>
  (win as { DeviceMotionEvent?: AskingMotionEvent }).DeviceMotionEvent;

export const motionLeave = (win: Window & typeof globalThis): MotionLeave => {
  const event = motionEvent(win);
  if (event === undefined) return 'absent';
  return event.requestPermission === undefined ? 'given' : 'ask';
};

/** Asks where that is needed; to be called in a touch. Never throws. */
export const askForMotion = async (win: Window & typeof globalThis): Promise<MotionLeave> => {
  const leave = motionLeave(win);
  if (leave !== 'ask') return leave;
  try {
    return (await motionEvent(win)?.requestPermission?.()) === 'granted' ? 'given' : 'refused';
  } catch {
    return 'refused';
  }
};

export interface StepPorts {
  readonly target: Pick<EventTarget, 'addEventListener' | 'removeEventListener'>;
  readonly nowMs: () => number;
  readonly every: (ms: number, run: () => void) => () => void;
  /** Steps a second, null where no rhythm was found: at each look, as long as the sensor gives anything at all. */
  readonly onSteps: (stepHz: number | null) => void;
}

/** The engine weighs a step rate as one a second. */
const LOOK_EVERY_MS = 1000;

/** Listens to the accelerometer and tells the step rate now and then; returns what ends it. */
export const watchSteps = ({ target, nowMs, every, onSteps }: StepPorts): (() => void) => {
  let shakes: Shake[] = [];
  const onMotion = (event: Event): void => {
    const { acceleration, accelerationIncludingGravity } = event as DeviceMotionEvent;
    // Gravity only adds a constant to the size, and some phones give nothing else.
    const felt = acceleration?.x == null ? accelerationIncludingGravity : acceleration;
    if (felt?.x == null || felt.y == null || felt.z == null) return;
    shakes.push({ atMs: nowMs(), mps2: Math.hypot(felt.x, felt.y, felt.z) });
  };
  const look = (): void => {
    const fromMs = nowMs() - WINDOW_MS;
    shakes = shakes.filter((s) => s.atMs >= fromMs);
    if (shakes.length > 0) onSteps(stepRateHz(shakes));
  };
  target.addEventListener('devicemotion', onMotion);
  const stopLooking = every(LOOK_EVERY_MS, look);
  return () => {
    stopLooking();
    target.removeEventListener('devicemotion', onMotion);
  };
};
