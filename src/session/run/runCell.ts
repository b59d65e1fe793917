import { batch, type ReadonlySignal, signal } from '@preact/signals';
import type { Call } from '../../core/cues/call.ts';
import type { Drift } from '../../core/drift/drift.ts';
import type { Progress } from '../../core/estimate/progress.ts';
import {
  beginRun,
  driftOf,
  type Phase,
  phaseOf,
  progressOf,
  type Run,
  type RunConfig,
} from '../../core/run/run.ts';
import type { RunInput } from '../../core/run/settings.ts';
import { step } from '../../core/run/step.ts';

/** Where the run stands at one instant, for the screens: they format, they do not compute. */
export interface RunView {
  readonly atMs: number;
  readonly phase: Phase;
  /** Own clock, standing still from the finish on; null before the start. */
  readonly elapsedS: number | null;
  readonly progress: Progress;
  readonly drift: Drift | null;
  /** End of a quiet stretch that the runner asked for, engine ms; null outside one. */
  readonly quietUntilMs: number | null;
}

/** A point of the drift's curve. */
export interface DriftSample {
  readonly distanceM: number;
  readonly aheadS: number;
  readonly aheadSdS: number;
}

/** The one mutable cell of a run: what the inputs fold to, and what was called. */
export interface RunCell {
  readonly config: RunConfig;
  readonly calls: ReadonlySignal<readonly Call[]>;
  readonly samples: ReadonlySignal<readonly DriftSample[]>;
  /** Records an input, then folds it, and returns the calls that it brought. */
  readonly feed: (input: RunInput) => readonly Call[];
  readonly viewAt: (atMs: number) => RunView;
  /** Folds what is in the log already: nothing is recorded again, and what it called was called then. */
  readonly refold: (past: readonly RunInput[]) => void;
  /** Where the fold stands, as plain data: a cache of it. */
  readonly folded: () => Folded;
  /** Goes on from such a cache. */
  readonly restore: (folded: Folded) => void;
}

/** A fold without what the config brings anyway. */
export interface Folded {
  readonly state: Omit<Run, 'config' | 'race' | 'setup'>;
  readonly calls: readonly Call[];
  readonly samples: readonly DriftSample[];
}

/** The drift's curve is drawn from about this many points, whatever the distance. */
const SAMPLES = 400;

const elapsedS = (phase: Phase, atMs: number): number | null => {
  switch (phase.phase) {
    case 'before':
      return null;
    case 'running':
      return Math.max(0, atMs - phase.startMs) / 1000;
    case 'finished':
      return phase.finishS;
    case 'stopped':
      return phase.startMs === null ? null : Math.max(0, phase.stopMs - phase.startMs) / 1000;
  }
};

/** A call that was handed over to be sounded: its words stay for the book, its clips need not for hours. */
const said = (call: Call): Call => ({ ...call, utterance: { ...call.utterance, parts: NO_PARTS } });
const NO_PARTS: Call['utterance']['parts'] = [];

export const createRunCell = (config: RunConfig, record: (input: RunInput) => void = () => {}): RunCell => {
  let run = beginRun(config);
  const calls = signal<readonly Call[]>([]);
  const samples = signal<readonly DriftSample[]>([]);
  const sampleEveryM = config.plan.distanceM / SAMPLES;

  const viewAt = (atMs: number): RunView => {
    const phase = phaseOf(run);
    const { quietUntilMs } = run.settings;
    return {
      atMs,
      phase,
      elapsedS: elapsedS(phase, atMs),
      progress: progressOf(run, atMs),
      drift: driftOf(run, atMs),
      quietUntilMs: quietUntilMs !== null && atMs < quietUntilMs ? quietUntilMs : null,
    };
  };

  const sample = (atMs: number): void => {
    const { progress, drift } = viewAt(atMs);
    const lastM = samples.value.at(-1)?.distanceM ?? Number.NEGATIVE_INFINITY;
    if (drift === null || progress.distanceM < lastM + sampleEveryM) return;
    samples.value = [
      ...samples.value,
      { distanceM: progress.distanceM, aheadS: drift.aheadS, aheadSdS: drift.aheadSdS },
    ];
  };

  const fold = (input: RunInput): readonly Call[] => {
    const stepped = step(run, input);
    run = stepped.run;
    if (input.type === 'fix') sample(input.atMs);
    if (stepped.calls.length > 0) calls.value = [...calls.value, ...stepped.calls.map(said)];
    return stepped.calls;
  };

  return {
    config,
    calls,
    samples,
    feed: (input) => {
      record(input);
      return fold(input);
    },
    viewAt,
    refold: (past) => batch(() => past.forEach(fold)),
    folded: () => {
      const { config: _config, race: _race, setup: _setup, ...state } = run;
      return { state, calls: calls.value, samples: samples.value };
    },
    restore: (folded) => {
      run = { ...run, ...folded.state };
      calls.value = folded.calls;
      samples.value = folded.samples;
    },
  };
};
