import { type ReadonlySignal, signal } from '@preact/signals';
import type { Call } from '../../core/cues/call.ts';
import type { NoticeName } from '../../core/cues/notice.ts';
import type { LogStore } from '../../log/store.ts';
import type { Keeping } from '../../log/storeRecorder.ts';
import type { FixWatchPorts } from '../../sensors/geolocation.ts';
import type { Buttons } from '../../voice/device/buttons.ts';
import type { Click } from '../../voice/device/click.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { Speaker } from '../../voice/device/speaker.ts';
import type { ScreenLock } from '../phone/screenLock.ts';
import type { LiveRun } from './liveRun.ts';
import { findUnfinished, type ReadConfig, type Unfinished } from './recovery.ts';
import type { RunChoices } from './runChoices.ts';
import type { RunLead } from './runLead.ts';
import { createUnderWay } from './underWay.ts';

export interface RunModel {
  readonly current: ReadonlySignal<LiveRun | null>;
  readonly lock: ScreenLock['state'];
  readonly sound: Speaker['state'];
  /** Whether the device takes the log. */
  readonly keeping: ReadonlySignal<Keeping>;
  /** Another window leads a run. */
  readonly elsewhere: ReadonlySignal<boolean>;
  /** A run that was broken off so long ago that the runner is asked about it. */
  readonly brokenOff: ReadonlySignal<Unfinished | null>;
  /** Switches on the receiver, the sound and the screen lock. To be called in a touch, after the reasons were read. */
  readonly prepare: (who?: 'runner' | 'simulated') => Promise<void>;
  /** The run under way is practised at home, by a simulated runner. */
  readonly simulated: ReadonlySignal<boolean>;
  /** Takes up a run whose page went away; true when there is one to show. To be called once, when the page opens. */
  readonly recover: () => Promise<boolean>;
  /** What the runner says to a run broken off. */
  readonly goOn: () => Promise<void>;
  readonly putAway: () => Promise<void>;
  readonly choices: RunChoices;
  /** That a touch was felt. */
  readonly click: (kind: Click) => void;
  /** Wakes the sound, in a touch. */
  readonly wake: () => Promise<unknown>;
  /** The log of the current run as text, one JSON object a line. */
  readonly logFile: () => Promise<string>;
  /** Puts the run away. */
  readonly leave: () => void;
  readonly hidden: () => void;
  readonly seenAgain: () => void;
}

export interface RunParts {
  /** The plan as a plan file with its course; the run is made from it, and so is its recovery. */
  readonly planFileNow: () => string;
  readonly readConfig: ReadConfig;
  readonly speaker: Speaker;
  readonly buzz: (call: Call, atPageMs: number) => void;
  readonly lock: ScreenLock;
  readonly geolocation: FixWatchPorts['geolocation'];
  readonly whenAllowed?: NonNullable<FixWatchPorts['whenAllowed']>;
  readonly time: PageTime;
  readonly originMs: number;
  readonly wallMs: () => number;
  readonly store: LogStore;
  readonly lead: RunLead;
  readonly choices: RunChoices;
  readonly buttons: Buttons;
  readonly click: (kind: Click) => void;
  /** Names the build, so that no cache of another one is used. */
  readonly build: string;
  /** Listens to the runner's steps, where the device lets it; returns what ends it. To be called in a touch. */
  readonly listenToSteps?: (onSteps: (stepHz: number | null) => void) => () => void;
  /** Says something outside a run. */
  readonly tell: (what: NoticeName) => void;
}

/** Within this a run goes on by itself; later the runner may have gone home. */
const GO_ON_MS = 30 * 60_000;

export const createRunModel = (parts: RunParts): RunModel => {
  const { speaker, lock, time, store, wallMs } = parts;
  const { current, keeping, begin, record, leave } = createUnderWay(parts);
  const elsewhere = signal(false);
  const simulated = signal(false);
  const brokenOff = signal<Unfinished | null>(null);

  /** What was only practised is no run: it goes when it is left, and what a closed page left of it goes with the next. */
  const forget = async (): Promise<void> => {
    await record()?.ended();
    for (const { id, simulated: practised } of await store.heads()) if (practised) await store.remove(id);
  };

  const takeButtons = (): Promise<boolean> =>
    parts.buttons.take((press) => {
      parts.click(press === 'marker' ? 'press' : 'hold');
      const run = current.value;
      if (press !== 'hush') run?.press(press);
      // Who has a pacer in the plan asks about them on the way more often than for quiet.
      else if (run?.cell.config.plan.pacer !== undefined) run.press('level');
      else run?.hush();
    });

  const goOnWith = async (past: Unfinished): Promise<boolean> => {
    const config = parts.readConfig(past.head.planFile);
    if (config === null) return false;
    elsewhere.value = !(await parts.lead.take());
    if (elsewhere.value) return true;
    brokenOff.value = null;
    begin(config, past.head, past);
    void speaker.wake();
    void lock.hold();
    return true;
  };

  return {
    current,
    lock: lock.state,
    sound: speaker.state,
    keeping,
    elsewhere,
    brokenOff,
    simulated,
    prepare: async (who = 'runner') => {
      current.value?.close();
      // Both want the touch that this is called in, so neither waits for the other.
      const [, , leads] = await Promise.all([
        speaker.wake(),
        lock.hold(),
        parts.lead.take(),
        parts.choices.buttons.value ? takeButtons() : null,
      ]);
      elsewhere.value = !leads;
      const planFile = parts.planFileNow();
      const config = parts.readConfig(planFile);
      simulated.value = who === 'simulated';
      const id = Math.round(parts.originMs + time.nowMs());
      const head = { id, version: 1, planFile } as const;
      if (leads && config !== null)
        begin(config, simulated.value ? { ...head, simulated: true } : head, null);
      else {
        lock.release();
        if (!leads) parts.tell('elsewhere');
      }
    },
    recover: async () => {
      try {
        if ((await store.heads()).some((head) => head.simulated)) await forget();
        const past = await findUnfinished(store, wallMs());
        // A practice session is not taken up as a race.
        if (past === null || parts.readConfig(past.head.planFile) === null) return false;
        if (wallMs() - past.last.wallMs <= GO_ON_MS) return await goOnWith(past);
        brokenOff.value = past;
        return true;
      } catch {
        // No storage here: then there is nothing to take up.
        return false;
      }
    },
    goOn: async () => {
      if (brokenOff.value !== null) await goOnWith(brokenOff.value);
    },
    putAway: async () => {
      const past = brokenOff.value;
      brokenOff.value = null;
      if (past === null) return;
      const { lines, last, head } = past;
      await store.append({ run: head.id, lines: [], from: lines.length, ...last, over: true }, 'strict');
    },
    choices: parts.choices,
    click: parts.click,
    wake: speaker.wake,
    logFile: async () => ((await record()?.lines()) ?? []).map((line) => `${line}\n`).join(''),
    leave: () => {
      leave();
      if (simulated.value) forget().catch(() => {});
      simulated.value = false;
    },
    hidden: () => {
      current.value?.hidden();
      record()?.hidden();
    },
    seenAgain: () => {
      current.value?.seenAgain();
      if (current.value !== null) void lock.seenAgain();
    },
  };
};
