import { type ReadonlySignal, signal } from '@preact/signals';
import type { Call } from '../core/cues/call.ts';
import type { Input } from '../core/estimate/input.ts';
import type { RunConfig } from '../core/run/run.ts';
import { writeLogLine } from '../log/logLine.ts';
import { type FixWatchPorts, watchFixes } from '../sensors/geolocation.ts';
import type { PageTime } from '../voice/device/pageTime.ts';
import type { Speaker } from '../voice/device/speaker.ts';
import { type LiveRun, startLiveRun } from './liveRun.ts';
import { runClockOf } from './runClock.ts';
import type { ScreenLock } from './screenLock.ts';

export interface RunModel {
  readonly current: ReadonlySignal<LiveRun | null>;
  readonly lock: ScreenLock['state'];
  readonly sound: Speaker['state'];
  /** Switches on the receiver, the sound and the screen lock. To be called in a touch, after the reasons were read. */
  readonly prepare: () => Promise<void>;
  /** The log of the current run as text, one JSON object a line. */
  readonly logFile: () => string;
  /** Puts the run away. */
  readonly leave: () => void;
  readonly seenAgain: () => void;
}

export interface RunParts {
  readonly configNow: () => RunConfig;
  readonly speaker: Speaker;
  readonly buzz: (call: Call, atPageMs: number) => void;
  readonly lock: ScreenLock;
  readonly geolocation: FixWatchPorts['geolocation'];
  readonly time: PageTime;
  readonly originMs: number;
}

export const createRunModel = (parts: RunParts): RunModel => {
  const current = signal<LiveRun | null>(null);
  let log: string[] = [];

  const record = (input: Input): void => {
    // The clock is told ten times a second and says nothing that the other lines do not.
    if (input.type !== 'clock') log.push(writeLogLine(input));
  };

  return {
    current,
    lock: parts.lock.state,
    sound: parts.speaker.state,
    prepare: async () => {
      log = [];
      current.value?.close();
      // Both want the touch that this is called in, so neither waits for the other.
      await Promise.all([parts.speaker.wake(), parts.lock.hold()]);
      current.value = startLiveRun({
        config: parts.configNow(),
        ear: parts.speaker,
        buzz: parts.buzz,
        clock: runClockOf(parts.time, parts.originMs),
        time: parts.time,
        watch: (ports) => watchFixes({ ...ports, geolocation: parts.geolocation }),
        record,
        onOver: parts.lock.release,
      });
    },
    logFile: () => log.map((line) => `${line}\n`).join(''),
    leave: () => {
      current.value?.close();
      current.value = null;
      parts.speaker.hush();
      parts.lock.release();
    },
    seenAgain: () => {
      current.value?.seenAgain();
      if (current.value !== null) void parts.lock.seenAgain();
    },
  };
};
