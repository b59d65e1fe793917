import type { CourseLine } from '../../src/core/course/line.ts';
import { readRacePlan } from '../../src/core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../src/core/plan/racePlan.ts';
import { NO_PRESSES, type Presses, type Simulated, simulate } from '../../src/sensors/simulated.ts';
import { OPEN_SKY, type ReceiverModel, TALL, TOWN } from '../../src/sensors/simulatedReceiver.ts';
import { type RunnerModel, STEADY } from '../../src/sensors/simulatedRunner.ts';
import { recordingOf, roadOf, SHAPES, type Shape } from './courses.ts';

/** Where the tunnels of the tall streets begin, as shares of the course, and how long they take at 4 m/s. */
const TUNNELS = [
  { share: 0.31, lengthM: 45 * 4 },
  { share: 0.62, lengthM: 90 * 4 },
];

export const RECEPTIONS = {
  open: OPEN_SKY,
  town: TOWN,
  'tall, two tunnels': TALL,
  'town, no speed': { ...TOWN, speedSdMps: null },
} satisfies Record<string, ReceiverModel>;
export type Reception = keyof typeof RECEPTIONS;
/** All of them, the best first. */
export const RECEIVED = [
  'open',
  'town',
  'tall, two tunnels',
  'town, no speed',
] as const satisfies readonly Reception[];

/** What the engine has beside fixes: a course line, presses at the boards, or nothing. */
export const MODES = ['course', 'marks', 'bare'] as const;
export type Mode = (typeof MODES)[number];

export const planOf = (fields: Readonly<Record<string, unknown>>): RacePlan => {
  const plan = readRacePlan({ version: 1, kind: 'race', name: 'bench', ...fields });
  if (!plan.ok) throw new Error(`${plan.error.place}: ${plan.error.expected}`);
  return plan.value;
};

export const HALF = planOf({
  distanceM: 21097.5,
  goalS: 5700,
  opening: { untilM: 1500, quickerSPerKm: 5 },
  checkpointsM: [5000, 10000, 15000, 20000],
});

/** A race whose truth is known. */
export interface World {
  readonly plan: RacePlan;
  /** The road on the ground. */
  readonly road: CourseLine;
  /** What the engine is given of it. */
  readonly given: CourseLine | null;
  readonly receiver: ReceiverModel;
  readonly runner: RunnerModel;
  readonly run: Simulated;
}

export interface WorldWish {
  readonly plan?: RacePlan;
  readonly shape: Shape;
  readonly reception: Reception;
  readonly mode?: Mode;
  readonly runner?: Partial<RunnerModel>;
  readonly receiver?: Partial<ReceiverModel>;
  readonly seed: number;
}

const PEN_S = 90;
/** People press about a second off and forget one board in ten. */
const PRESS_SD_S = 0.8;
const PRESS_MISSED_SHARE = 0.1;

const pressesOf = (mode: Mode, distanceM: number): Presses => {
  if (mode !== 'marks') return NO_PRESSES;
  const atM = Array.from({ length: Math.ceil(distanceM / 1000) - 1 }, (_, i) => 1000 * (i + 1));
  return { ...NO_PRESSES, boards: { atM, sdS: PRESS_SD_S, missedShare: PRESS_MISSED_SHARE } };
};

export const worldOf = (wish: WorldWish): World => {
  const { shape, reception } = wish;
  // Another course or another street is another day, too.
  const seed = wish.seed * 100 + SHAPES.indexOf(shape) * 10 + Object.keys(RECEPTIONS).indexOf(reception);
  const plan = wish.plan ?? HALF;
  const mode = wish.mode ?? 'course';
  const road = roadOf(shape, plan.distanceM, seed);
  const deadM =
    reception === 'tall, two tunnels'
      ? TUNNELS.map(({ share, lengthM }) => {
          const fromM = share * plan.distanceM;
          return { fromM, toM: fromM + lengthM };
        })
      : [];
  const receiver: ReceiverModel = { ...RECEPTIONS[reception], deadM, ...wish.receiver };
  const runner: RunnerModel = { ...STEADY, ...wish.runner };
  const run = simulate({
    plan,
    line: road,
    runner,
    receiver,
    presses: pressesOf(mode, plan.distanceM),
    penS: PEN_S,
    seed,
  });
  return {
    plan,
    road,
    given: mode === 'course' ? recordingOf(road, seed + 50_000) : null,
    receiver,
    runner,
    run,
  };
};
