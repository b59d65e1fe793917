import { type ReadonlySignal, signal } from '@preact/signals';
import type { RunConfig } from '../../core/run/run.ts';
import type { RunHead } from '../../log/store.ts';
import type { Keeping } from '../../log/storeRecorder.ts';
import { watchFixes } from '../../sensors/geolocation.ts';
import { simulatedGeolocation } from '../../sensors/simulatedGeolocation.ts';
import { watchSound } from '../ear/soundGap.ts';
import { type LiveRun, startLiveRun } from './liveRun.ts';
import { workButtons } from './lockScreen.ts';
import { refolding, type Unfinished } from './recovery.ts';
import { originAfter, type RunClock, runClockOf } from './runClock.ts';
import type { RunParts } from './runModel.ts';
import { type RunRecord, startRecord } from './runRecord.ts';
import { practiceTape } from './tape.ts';

/** The run under way, and what it takes of the phone: the log, the watch on the sound, the buttons, the steps. */
export interface UnderWay {
  readonly current: ReadonlySignal<LiveRun | null>;
  /** Whether the device takes the log. */
  readonly keeping: ReadonlySignal<Keeping>;
  /** @param past  the run to go on with; null for a new one */
  readonly begin: (config: RunConfig, head: RunHead, past: Unfinished | null) => void;
  /** Gives back all that it took of the phone; the run is still there to be looked at. */
  readonly giveBack: () => void;
  /** Puts the run away. */
  readonly leave: () => void;
  /** Of the last run that was begun; null before. */
  readonly record: () => RunRecord | null;
}

export const createUnderWay = (parts: RunParts): UnderWay => {
  const { speaker, time, wallMs } = parts;
  const current = signal<LiveRun | null>(null);
  const keeping = signal<Keeping>('stored');
  let record: RunRecord | null = null;
  let stops: readonly (() => void)[] = [];

  const onKeeping = (next: Keeping): void => {
    const before = keeping.value;
    keeping.value = next;
    if (next !== 'stored' && before === 'stored') current.value?.notice('notStored');
    if (next === 'stored') current.value?.notice('storedAgain');
  };

  const stopBesides = (): void => {
    for (const stop of stops) stop();
    stops = [];
  };

  const giveBack = (): void => {
    stopBesides();
    parts.buttons.give();
    record?.end();
    parts.lock.release();
    parts.lead.give();
  };

  const receiverOf = (head: RunHead, config: RunConfig, clock: RunClock) => {
    const { geolocation, whenAllowed } = parts;
    if (head.simulated !== true)
      return { geolocation, ...(whenAllowed === undefined ? {} : { whenAllowed }) };
    return {
      geolocation: simulatedGeolocation({
        tape: practiceTape(config.plan, config.course),
        nowMs: clock.nowMs,
        every: time.every,
        startedMs: () => {
          const phase = current.value?.view.value.phase;
          return phase?.phase === 'running' ? phase.startMs : null;
        },
      }),
    };
  };

  /** What goes on beside the run until it is over; each returns what ends it. */
  const besides = (run: LiveRun, head: RunHead, clock: RunClock, resumed: boolean): (() => void)[] => {
    const { sense, notice, soundLost, soundBack } = run;
    const steps =
      head.simulated === true
        ? undefined
        : parts.listenToSteps?.((stepHz) => sense({ type: 'motion', atMs: clock.nowMs(), stepHz }));
    return [
      ...(steps === undefined ? [] : [steps]),
      workButtons(parts.buttons, run),
      watchSound(speaker.state, time, resumed, notice, (isThere) => (isThere ? soundBack() : soundLost())),
    ];
  };

  const begin = (config: RunConfig, head: RunHead, past: Unfinished | null): void => {
    const originMs = past === null ? parts.originMs : originAfter(past.last, wallMs(), time.nowMs());
    const clock = runClockOf(time, originMs);
    keeping.value = 'stored';
    let run: LiveRun | null = null;
    record = startRecord({
      store: parts.store,
      head,
      clocks: () => ({ engineMs: clock.nowMs(), wallMs: wallMs() }),
      time,
      build: parts.build,
      foldedNow: () => run?.cell.folded() ?? null,
      onKeeping,
      storedLines: past?.lines.length ?? null,
    });
    const { add, called } = record;
    run = startLiveRun({
      config,
      ear: speaker,
      buzz: parts.buzz,
      clock,
      time,
      watch: (ports) => watchFixes({ ...ports, ...receiverOf(head, config, clock) }),
      record: add,
      onCalls: called,
      onOver: giveBack,
      wallMs,
      // What was chosen for a run that goes on is in its log.
      ...(past === null ? { talk: parts.choices.talk.value } : { refold: refolding(past, parts.build) }),
    });
    current.value = run;
    stopBesides();
    stops = besides(run, head, clock, past !== null);
  };

  return {
    current,
    keeping,
    begin,
    giveBack,
    leave: () => {
      current.value?.close();
      current.value = null;
      speaker.hush();
      giveBack();
    },
    record: () => record,
  };
};
