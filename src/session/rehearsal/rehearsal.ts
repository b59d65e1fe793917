import { type ReadonlySignal, signal } from '@preact/signals';
import type { Call } from '../../core/cues/call.ts';
import type { Input } from '../../core/estimate/input.ts';
import type { RunConfig } from '../../core/run/run.ts';
import type { Ear } from '../../voice/device/ear.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import { createRunCell, type RunCell, type RunView } from '../run/runCell.ts';
import { anchored, atRate, engineAtMs, pageAtMs, type TapeClock, withCall } from './tapeClock.ts';

export type RehearsalPhase = 'running' | 'paused' | 'over';

/** A run from a tape of inputs, by ear, at a chosen rate. */
export interface Rehearsal {
  readonly cell: RunCell;
  readonly phase: ReadonlySignal<RehearsalPhase>;
  readonly view: ReadonlySignal<RunView>;
  readonly rate: ReadonlySignal<number>;
  readonly setRate: (rate: number) => void;
  readonly pause: () => void;
  readonly goOn: () => void;
  /** The one thing the runner can do with their hands, at the tape's present instant. */
  readonly press: (event: 'marker' | 'ask') => void;
  readonly end: () => void;
}

/** How often the tape is looked at. Calls are placed on the audio clock, so this sets no accuracy. */
const TICK_MS = 100;
/** Time for the audio device to take a call that is due at once. */
const LEAD_MS = 60;
/**
 * Engine time without an input after which the engine is told that time has passed: within its grid of half a second, so
 * that a call is known before it begins.
 */
const CLOCK_EVERY_MS = 250;
/** How long the tape runs on after its last input, so that the last call can be heard out. */
const TAIL_MS = 1500;

export const startRehearsal = (
  config: RunConfig,
  tape: readonly Input[],
  startRate: number,
  ear: Ear,
  page: PageTime,
): Rehearsal => {
  const cell = createRunCell(config);
  const fromMs = tape[0]?.atMs ?? 0;
  const lastMs = tape.at(-1)?.atMs ?? 0;
  let clock: TapeClock = { engineMs: fromMs, pageMs: page.nowMs() + LEAD_MS, rate: startRate, calls: [] };
  let next = 0;
  let fedMs = fromMs;
  let quietFromMs = fromMs;
  let waiting: readonly { readonly call: Call; readonly atPageMs: number }[] = [];
  const phase = signal<RehearsalPhase>('running');
  const rate = signal(startRate);
  const view = signal(cell.viewAt(fromMs));

  const sound = (call: Call): void => {
    const atPageMs = pageAtMs(clock, call.startMs);
    ear.say(call.utterance, atPageMs, atPageMs);
    waiting = [...waiting.filter((w) => w.atPageMs > page.nowMs()), { call, atPageMs }];
  };

  /** Feeds one input; true when it brought a call, so that the clock has been set anew. */
  const take = (input: Input): boolean => {
    fedMs = input.atMs;
    const calls = cell.feed(input);
    for (const call of calls) {
      // The tick may have run past the instant at which the call begins: the race waits for it.
      const nowMs = page.nowMs();
      const behind = engineAtMs(clock, nowMs + LEAD_MS) > call.startMs;
      if (behind) clock = anchored(clock, call.startMs, nowMs + LEAD_MS);
      clock = withCall(clock, call.startMs, call.endMs);
      sound(call);
      quietFromMs = Math.max(quietFromMs, call.endMs);
    }
    return calls.length > 0;
  };

  /** Feeds everything up to an instant of the race; stops at a call. */
  const takeUntil = (untilMs: number): void => {
    for (;;) {
      const input = tape[next];
      const clockMs = fedMs + CLOCK_EVERY_MS;
      if (input !== undefined && input.atMs <= Math.min(untilMs, clockMs)) {
        next++;
        if (take(input)) return;
      } else if (clockMs <= untilMs) {
        if (take({ type: 'clock', atMs: clockMs })) return;
      } else return;
    }
  };

  const tick = (): void => {
    if (phase.value !== 'running') return;
    takeUntil(engineAtMs(clock, page.nowMs()));
    const atMs = Math.max(fedMs, engineAtMs(clock, page.nowMs()));
    view.value = cell.viewAt(atMs);
    if (next >= tape.length && atMs > Math.max(lastMs, quietFromMs) + TAIL_MS) finish();
  };

  const stopTicks = page.every(TICK_MS, tick);
  const finish = (): void => {
    stopTicks();
    phase.value = 'over';
  };

  /** Sets the race clock to another rate; what waits to sound is set anew on the audio clock. */
  const shift = (to: number): void => {
    const nowMs = page.nowMs();
    const unsaid = waiting.filter((w) => w.atPageMs > nowMs).map((w) => w.call);
    ear.takeBack();
    clock = atRate(clock, to, nowMs);
    if (to > 0) unsaid.forEach(sound);
    else waiting = unsaid.map((call) => ({ call, atPageMs: Number.POSITIVE_INFINITY }));
  };

  return {
    cell,
    phase,
    view,
    rate,
    setRate: (to) => {
      rate.value = to;
      if (phase.value === 'running') shift(to);
    },
    pause: () => {
      if (phase.value !== 'running') return;
      shift(0);
      phase.value = 'paused';
    },
    goOn: () => {
      if (phase.value !== 'paused') return;
      shift(rate.value);
      phase.value = 'running';
    },
    press: (event) => {
      if (phase.value !== 'running') return;
      const atMs = engineAtMs(clock, page.nowMs());
      takeUntil(atMs);
      take({ type: 'event', atMs: Math.max(fedMs, atMs), event });
      view.value = cell.viewAt(fedMs);
    },
    end: () => {
      ear.hush();
      finish();
    },
  };
};
