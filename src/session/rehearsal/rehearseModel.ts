import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Input } from '../../core/estimate/input.ts';
import type { RunConfig } from '../../core/run/run.ts';
import type { Ear } from '../../voice/device/ear.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import { type Rehearsal, startRehearsal } from './rehearsal.ts';

export const RATES = [1, 5, 20, 60] as const;
export type Rate = (typeof RATES)[number];

export const SOURCES = ['demo', 'plan'] as const;
/** What is rehearsed: the built-in demo race, or the runner's own plan. */
export type Source = (typeof SOURCES)[number];

export interface RehearseModel {
  readonly source: Signal<Source>;
  readonly rate: Signal<Rate>;
  /** What would be rehearsed now. */
  readonly config: ReadonlySignal<RunConfig>;
  readonly current: ReadonlySignal<Rehearsal | null>;
  /** To be called inside a touch or key press: it wakes the sound. */
  readonly begin: () => Promise<void>;
  readonly choose: (rate: Rate) => void;
  readonly leave: () => void;
}

export interface RehearseParts {
  /** The setting of a run to rehearse. */
  readonly configOf: (source: Source) => RunConfig;
  /** Everything that comes in during it. */
  readonly tapeOf: (source: Source) => readonly Input[];
  readonly ear: Ear;
  readonly wake: () => Promise<boolean>;
  readonly time: PageTime;
}

/** Quick enough to hear a race in a few minutes, slow enough to follow the figures. */
const FIRST_RATE: Rate = 20;

export const createRehearseModel = (parts: RehearseParts): RehearseModel => {
  const source = signal<Source>('demo');
  const rate = signal<Rate>(FIRST_RATE);
  const current = signal<Rehearsal | null>(null);
  return {
    source,
    rate,
    config: computed(() => parts.configOf(source.value)),
    current,
    begin: async () => {
      current.value?.end();
      await parts.wake();
      const tape = parts.tapeOf(source.value);
      current.value = startRehearsal(parts.configOf(source.value), tape, rate.value, parts.ear, parts.time);
    },
    choose: (to) => {
      rate.value = to;
      current.value?.setRate(to);
    },
    leave: () => {
      current.value?.end();
      current.value = null;
    },
  };
};
