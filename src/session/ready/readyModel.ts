import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Utterance } from '../../core/cues/voicePort.ts';
import { type FixWatch, type FixWatchPorts, type Reception, watchFixes } from '../../sensors/geolocation.ts';
import { askForMotion, type MotionLeave } from '../../sensors/motion.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { Speaker } from '../../voice/device/speaker.ts';
import type { ScreenLock, ScreenLockState } from '../phone/screenLock.ts';
import { createTapTest, type TapTest } from './tapTest.ts';

/** The battery as some browsers tell it. */
export interface BatteryReading {
  /** 0 to 1. */
  readonly level: number;
  readonly charging: boolean;
}

/** What the runner said to "did you hear it?". */
export type Heard = 'notAsked' | 'playing' | 'yes' | 'no';

/** Everything that the check page tries, as found; `null` where it has not been tried or cannot be known. */
export interface ReadyModel {
  readonly begun: ReadonlySignal<boolean>;
  readonly reception: ReadonlySignal<Reception>;
  /** The best accuracy that the receiver stated so far, metres. */
  readonly bestM: ReadonlySignal<number | null>;
  readonly lock: ReadonlySignal<ScreenLockState>;
  readonly sound: Speaker['state'];
  readonly heard: ReadonlySignal<Heard>;
  readonly taps: TapTest;
  /** How often a headset button came through since the check began; null where there are none. */
  readonly pressed: ReadonlySignal<number | null>;
  readonly battery: ReadonlySignal<BatteryReading | null>;
  /** Whether the browser promised to keep the log; null where it gives no promises. */
  readonly kept: ReadonlySignal<boolean | null>;
  readonly freeMB: ReadonlySignal<number | null>;
  readonly motion: ReadonlySignal<MotionLeave>;
  readonly vibrates: boolean;
  /** To be called in a touch: asks for all that must be asked for, and tries it. */
  readonly begin: () => Promise<void>;
  readonly play: () => void;
  readonly sayHeard: (yes: boolean) => void;
  /** Lets go of everything, when the page is left. */
  readonly end: () => void;
}

export interface ReadyParts {
  readonly speaker: Speaker;
  /** By how much calls begin earlier for the earphones' sake. */
  readonly earDelayMs: Signal<number>;
  /** What is said for the ear's trial. */
  readonly sample: () => Utterance;
  readonly lock: ScreenLock;
  readonly geolocation: FixWatchPorts['geolocation'];
  readonly time: PageTime;
  readonly nowMs: () => number;
  /** Takes the headset's buttons if the runner wants them; tells each press. */
  readonly takeButtons: (onPress: () => void) => Promise<boolean>;
  readonly giveButtons: () => void;
  readonly battery: () => Promise<BatteryReading | null>;
  readonly keep: () => Promise<boolean | null>;
  readonly freeMB: () => Promise<number | null>;
  readonly motionLeave: MotionLeave;
  readonly win: Window & typeof globalThis;
}

const SOON_MS = 200;
const LATEST_MS = 2000;

export const createReadyModel = (parts: ReadyParts): ReadyModel => {
  const { speaker, lock, time } = parts;
  const begun = signal(false);
  const reception = signal<Reception>('waiting');
  const bestM = signal<number | null>(null);
  const heard = signal<Heard>('notAsked');
  const pressed = signal<number | null>(null);
  const battery = signal<BatteryReading | null>(null);
  const kept = signal<boolean | null>(null);
  const freeMB = signal<number | null>(null);
  const motion = signal<MotionLeave>(parts.motionLeave);
  let watch: FixWatch | null = null;

  const receive = (): void => {
    watch?.stop();
    watch = watchFixes({
      geolocation: parts.geolocation,
      nowMs: parts.nowMs,
      every: time.every,
      onFix: ({ accuracyM }) => {
        if (accuracyM !== null) bestM.value = Math.min(accuracyM, bestM.value ?? accuracyM);
      },
      onReception: (next) => {
        reception.value = next;
      },
    });
  };

  const look = async (): Promise<void> => {
    [battery.value, kept.value, freeMB.value] = await Promise.all([
      parts.battery(),
      parts.keep(),
      parts.freeMB(),
    ]);
  };

  return {
    begun,
    reception,
    bestM,
    lock: lock.state,
    sound: speaker.state,
    heard,
    taps: createTapTest(speaker, time, parts.earDelayMs),
    pressed,
    battery,
    kept,
    freeMB,
    motion: computed(() => motion.value),
    vibrates: typeof parts.win.navigator.vibrate === 'function',
    begin: async () => {
      begun.value = true;
      receive();
      const buttons = parts.takeButtons(() => {
        pressed.value = (pressed.value ?? 0) + 1;
      });
      const [, , leave, taken] = await Promise.all([
        speaker.wake(),
        lock.hold(),
        askForMotion(parts.win),
        buttons,
        look(),
      ]);
      motion.value = leave;
      if (taken) pressed.value ??= 0;
    },
    play: () => {
      // Played again, it begins again.
      speaker.hush();
      const atMs = time.nowMs() + SOON_MS;
      heard.value = speaker.say(parts.sample(), atMs, atMs + LATEST_MS) === 'scheduled' ? 'playing' : 'no';
    },
    sayHeard: (yes) => {
      heard.value = yes ? 'yes' : 'no';
    },
    end: () => {
      watch?.stop();
      watch = null;
      begun.value = false;
      parts.giveButtons();
      lock.release();
    },
  };
};
