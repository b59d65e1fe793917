import type { CourseLine } from '../core/course/line.ts';
import type { EventName, Input } from '../core/estimate/input.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import { scheduleOf } from '../core/plan/schedule.ts';
import { type Chance, chanceOf } from '../core/units/chance.ts';
import { type ReceiverModel, receive } from './simulatedReceiver.ts';
import { type RunnerModel, runPlan, type Truth } from './simulatedRunner.ts';

/** What a simulated runner presses. Times are own-clock seconds. */
export interface Presses {
  /** At boards, each a human's second early or late, some forgotten. */
  readonly boards: {
    readonly atM: readonly number[];
    readonly sdS: number;
    readonly missedShare: number;
  } | null;
  readonly others: readonly { readonly atS: number; readonly event: EventName }[];
}

export interface Simulation {
  readonly plan: RacePlan;
  /** The line on the ground, true to scale: `officialM` is what it measures. */
  readonly line: CourseLine;
  readonly runner: RunnerModel;
  readonly receiver: ReceiverModel;
  readonly presses: Presses;
  /** Seconds of waiting in the pen before the start. */
  readonly penS: number;
  readonly seed: number;
}

export interface Simulated {
  /** In order of arrival, as the engine eats them. */
  readonly inputs: readonly Input[];
  readonly truth: Truth;
  /** Epoch ms of own clock 0. */
  readonly startMs: number;
}

/** 2027-05-09 08:30:00 UTC, a Sunday morning: simulated races have to be on some day. */
const RACE_DAY_MS = 1_809_851_400_000;

export const NO_PRESSES: Presses = { boards: null, others: [{ atS: 0, event: 'start' }] };

const boardPresses = (
  { boards }: Presses,
  truth: Truth,
  chance: Chance,
): { atS: number; event: EventName }[] =>
  (boards?.atM ?? []).flatMap((atM) => {
    const crossingS = truth.crossingS(atM);
    const missed = chance.uniform() < (boards?.missedShare ?? 0);
    const atS = (crossingS ?? 0) + (boards?.sdS ?? 0) * chance.normal();
    return crossingS === null || missed ? [] : [{ atS, event: 'marker' as const }];
  });

/** Runs a plan over a line and receives it: inputs for the engine, and what really happened. The same seed, the same run. */
export const simulate = ({ plan, line, runner, receiver, presses, penS, seed }: Simulation): Simulated => {
  const startMs = RACE_DAY_MS;
  const schedule = scheduleOf(plan, line);
  const truth = runPlan(plan, schedule, line, runner, penS, chanceOf(seed));
  const fixes = receive(line, truth, receiver, startMs, chanceOf(seed + 0.5e9));
  const pressed = [...presses.others, ...boardPresses(presses, truth, chanceOf(seed + 1e9))];
  const ms = (s: number): number => Math.round(startMs + s * 1000);
  const inputs: Input[] = [
    ...pressed.map(({ atS, event }): Input => ({ type: 'event', atMs: ms(atS), event })),
    ...fixes.map(({ arrivedS, fix }): Input => ({ type: 'fix', atMs: ms(arrivedS), fix })),
  ];
  return { inputs: inputs.sort((a, b) => a.atMs - b.atMs), truth, startMs };
};
