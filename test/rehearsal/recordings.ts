import type { CourseLine } from '../../src/core/course/line.ts';
import type { Input } from '../../src/core/estimate/input.ts';
import { readRacePlan } from '../../src/core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../src/core/plan/racePlan.ts';
import { boardsM } from '../../src/core/plan/splits.ts';
import { sayDoorError } from '../../src/core/units/result.ts';
import { type Presses, type Simulation, simulate } from '../../src/sensors/simulated.ts';
import { OPEN_SKY, TALL, TOWN } from '../../src/sensors/simulatedReceiver.ts';
import { roadOf } from '../../src/sensors/simulatedRoad.ts';
import { STEADY, type Truth } from '../../src/sensors/simulatedRunner.ts';

/** A run that the project makes itself, again and again the same, with what really happened in it. */
export interface Recording {
  readonly name: string;
  /** What it is for. */
  readonly shows: string;
  readonly plan: RacePlan;
  readonly course: CourseLine | null;
  readonly inputs: readonly Input[];
  readonly truth: Truth;
}

const planOf = (fields: object): RacePlan => {
  const got = readRacePlan(fields);
  if (!got.ok) throw new Error(sayDoorError(got.error));
  return got.value;
};

const START: Presses['others'] = [{ atS: 0, event: 'start' }];

const recorded = (
  head: Pick<Recording, 'name' | 'shows'> & { readonly withCourse: boolean },
  simulation: Omit<Simulation, 'penS'>,
): Recording => {
  const { inputs, truth } = simulate({ penS: 90, ...simulation });
  const course = head.withCourse ? simulation.line : null;
  return { name: head.name, shows: head.shows, plan: simulation.plan, course, inputs, truth };
};

const tenMilesByBoards = (): Recording => {
  const plan = planOf({
    name: 'Ten miles by the boards',
    distanceM: 16_093.44,
    goalS: 4500,
    unit: 'mile',
    checkpointsM: [8046.72],
    stations: [{ atM: 6400, offers: ['water'] }],
  });
  return recorded(
    {
      name: 'ten-miles',
      shows: 'miles, no course, a receiver without speed, presses at most of the boards, a slow fade',
      withCourse: false,
    },
    {
      plan,
      line: roadOf(plan.distanceM, 21),
      runner: { ...STEADY, fade: { fromM: 9000, share: 0.05 } },
      receiver: { ...TOWN, speedSdMps: null },
      presses: { boards: { atM: boardsM(plan), sdS: 0.8, missedShare: 0.1 }, others: START },
      seed: 21,
    },
  );
};

const tenKAmongTallBuildings = (): Recording => {
  const plan = planOf({
    name: 'Ten K among tall buildings',
    distanceM: 10_000,
    goalS: 2700,
    goalBy: 'gun',
    opening: { untilM: 1000, quickerSPerKm: 4 },
    push: { fromM: 8500, quickerSPerKm: 5 },
  });
  return recorded(
    {
      name: 'ten-k-tall',
      shows:
        'a goal by the gun, 40 s behind it at the line, two tunnels, a start that the engine finds by itself',
      withCourse: true,
    },
    {
      plan,
      line: roadOf(plan.distanceM, 22),
      runner: { ...STEADY, tooQuick: { untilM: 1500, share: 0.03 } },
      receiver: {
        ...TALL,
        deadM: [
          { fromM: 3100, toM: 3350 },
          { fromM: 6200, toM: 6800 },
        ],
      },
      presses: { boards: null, others: [{ atS: -40, event: 'gun' }] },
      seed: 22,
    },
  );
};

const halfWithAStop = (): Recording => {
  const plan = planOf({
    name: 'A half with a stop',
    distanceM: 21_097.5,
    goalS: 7200,
    stations: [{ atM: 5200 }, { atM: 10_300, offers: ['water', 'drink'] }, { atM: 15_400 }],
    fuel: [{ item: 'gel', atM: 10_000 }],
  });
  return recorded(
    {
      name: 'half-with-a-stop',
      shows: 'a minute lost at a stop, a question during it, most of it won back, fixes that come late',
      withCourse: true,
    },
    {
      plan,
      line: roadOf(plan.distanceM, 23),
      runner: {
        ...STEADY,
        stops: [{ atM: 7000, seconds: 62 }],
        stretches: [{ fromM: 12_000, toM: 19_000, share: 0.02 }],
      },
      receiver: { ...OPEN_SKY, lateShare: 0.02 },
      presses: { boards: null, others: [...START, { atS: 2420, event: 'ask' }] },
      seed: 23,
    },
  );
};

const fiveKGivenUp = (): Recording => {
  const plan = planOf({ name: 'Five K, given up', distanceM: 5000, goalS: 1320 });
  return recorded(
    {
      name: 'five-k-given-up',
      shows: 'a stop of the run before the line, after a question too early and one in time',
      withCourse: true,
    },
    {
      plan,
      line: roadOf(plan.distanceM, 24),
      runner: { ...STEADY, fade: { fromM: 1500, share: 0.25 } },
      receiver: TOWN,
      presses: {
        boards: null,
        others: [
          { atS: -20, event: 'ask' },
          ...START,
          { atS: 700, event: 'ask' },
          { atS: 960, event: 'stop' },
        ],
      },
      seed: 24,
    },
  );
};

export const RECORDINGS: readonly (() => Recording)[] = [
  tenMilesByBoards,
  tenKAmongTallBuildings,
  halfWithAStop,
  fiveKGivenUp,
];
