import type { Call } from '../core/cues/call.ts';
import type { Drift } from '../core/drift/drift.ts';
import type { Progress } from '../core/estimate/progress.ts';
import {
  beginRun,
  driftOf,
  type Phase,
  phaseOf,
  progressOf,
  type Run,
  type RunConfig,
} from '../core/run/run.ts';
import type { RunInput } from '../core/run/settings.ts';
import { flush, step } from '../core/run/step.ts';

/** What came out of the engine, in order. */
export type Outcome =
  | { readonly type: 'call'; readonly call: Call }
  | { readonly type: 'trace'; readonly progress: Progress; readonly drift: Drift | null };

export interface Rehearsal {
  readonly outcomes: readonly Outcome[];
  /** Engine ms of own clock 0; the first input's where the runner never started. */
  readonly zeroMs: number;
  /** Own-clock seconds at the line; null where the run did not come to it. */
  readonly finishS: number | null;
  /** Where the estimate is at the end. */
  readonly distanceM: number;
  readonly fixes: number;
  /** Fixes that the estimate could not use. */
  readonly unused: number;
}

type Finish = Extract<Phase, { readonly phase: 'finished' }>;

const finishOf = (run: Run): Finish | null => {
  const now = phaseOf(run);
  return now.phase === 'finished' ? now : null;
};

/** Folds the engine over inputs, as the page does live; `traced` keeps the estimate after every fix of the run. */
export const rehearse = (config: RunConfig, inputs: readonly RunInput[], traced: boolean): Rehearsal => {
  const outcomes: Outcome[] = [];
  let run: Run = beginRun(config);
  /** Where the runner was when they ended the run: fixes go on coming. */
  let stoppedM: number | null = null;
  /** The run is over at the line: a press that comes after it moves no start. */
  let finish: Finish | null = null;
  const take = (next: { readonly run: Run; readonly calls: readonly Call[] }): void => {
    run = next.run;
    for (const call of next.calls) outcomes.push({ type: 'call', call });
  };
  for (const input of inputs) {
    take(step(run, input));
    finish ??= finishOf(run);
    const { phase } = phaseOf(run);
    if (phase === 'stopped') stoppedM ??= progressOf(run, run.atMs).distanceM;
    // Behind the line there is no course left to be anywhere on.
    if (traced && input.type === 'fix' && phase !== 'finished' && phase !== 'stopped') {
      const atMs = run.atMs;
      outcomes.push({ type: 'trace', progress: progressOf(run, atMs), drift: driftOf(run, atMs) });
    }
  }
  // What is due is still said when the recording has ended; the way that was run is the way up to its end.
  const lastM = progressOf(run, run.atMs).distanceM;
  take(flush(run));
  finish ??= finishOf(run);
  return {
    outcomes,
    zeroMs: finish?.startMs ?? run.estimate.startMs ?? inputs[0]?.atMs ?? 0,
    finishS: finish?.finishS ?? null,
    distanceM: stoppedM ?? (finish === null ? lastM : config.plan.distanceM),
    fixes: inputs.filter((i) => i.type === 'fix').length,
    unused: run.estimate.skipped,
  };
};
