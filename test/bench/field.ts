import { scheduleOf } from '../../src/core/plan/schedule.ts';
import { chanceOf } from '../../src/core/units/chance.ts';
import { type RunnerModel, STEADY } from '../../src/sensors/simulatedRunner.ts';
import { SHAPES } from './courses.ts';
import { OTHERS, otherRunnerOf } from './otherPeople.ts';
import { FIELDS, runnerOf } from './people.ts';
import { race, talkShare } from './race.ts';
import { mean, rms } from './stats.ts';
import { fixed, percent, printTable } from './table.ts';
import { planOf, RECEIVED, type Reception, worldOf } from './worlds.ts';

/** The words about pace that a mixed field hears, none of whom answers: how many, how true, and how much of the race. */
const TEN = planOf({
  distanceM: 10_000,
  goalS: 2700,
  opening: { untilM: 1000, quickerSPerKm: 4 },
  push: { fromM: 8500, quickerSPerKm: 4 },
  checkpointsM: [5000],
  stations: [
    { atM: 3100, offers: ['water'] },
    { atM: 6100, offers: ['water'] },
  ],
});

/** Leaves the plan by 1.2 to 4.2 % for 1.5 to 3.5 km; half of them were carried away at the start. */
const departing = (seed: number): Partial<RunnerModel> => {
  const { uniform } = chanceOf(seed + 77);
  const share = (uniform() < 0.5 ? -1 : 1) * (0.012 + 0.03 * uniform());
  const fromM = 1500 + 4000 * uniform();
  const tooQuick = uniform() < 0.5 ? { untilM: 1500, share: 0.04 * uniform() } : null;
  return { tooQuick, stationLossS: 3, stretches: [{ fromM, toM: fromM + 1500 + 2000 * uniform(), share }] };
};

const runnersOf = (seed: number): readonly Partial<RunnerModel>[] => [
  ...FIELDS.map((field) => runnerOf(field, TEN.distanceM, TEN.goalS, seed + 40)),
  ...OTHERS.map((other) => otherRunnerOf(other, TEN.distanceM, seed + 40)),
  departing(2 * seed),
  departing(2 * seed + 1),
];

/** A word about pace beside what was true, s/km on the side that it names. */
export interface Word {
  readonly said: number;
  /** Over the minute before it and the minute after. */
  readonly kept: number;
  /** Over the minute before. */
  readonly minute: number;
}

export interface FieldRace {
  readonly words: readonly Word[];
  readonly talk: number;
}

const MINUTE_S = 60;

const racedBy = (runner: Partial<RunnerModel>, reception: Reception, seed: number): FieldRace => {
  const world = worldOf({
    plan: TEN,
    shape: SHAPES[seed % SHAPES.length] ?? 'city',
    reception,
    runner: { ...STEADY, ...runner },
    seed,
  });
  const { truth, startMs } = world.run;
  const schedule = scheduleOf(TEN, world.given);
  const raced = race(world);
  const words = raced.calls.flatMap(({ saying, startMs: soundMs }): Word[] => {
    if (!('byS' in saying)) return [];
    const ownS = (soundMs - startMs) / 1000;
    const side = saying.kind === 'quicken' ? -1 : 1;
    const quicker = (fromS: number, toS: number): number => {
      const planS =
        schedule.timeAtS(truth.distanceAtM(toS)) - schedule.timeAtS(truth.distanceAtM(Math.max(1, fromS)));
      return side * (planS / (toS - Math.max(1, fromS)) - 1) * schedule.paceAtSPerKm(truth.distanceAtM(ownS));
    };
    return [
      {
        said: saying.byS,
        kept: quicker(ownS - MINUTE_S, ownS + MINUTE_S),
        minute: quicker(ownS - MINUTE_S, ownS),
      },
    ];
  });
  return { words, talk: talkShare(world, raced) };
};

/** Everybody once a seed. */
export const fieldIn = (reception: Reception, seeds: readonly number[]): readonly FieldRace[] =>
  seeds.flatMap((seed) =>
    runnersOf(seed).map((runner, i) => racedBy(runner, reception, 300 + 100 * i + seed)),
  );

/** Nearer to the plan than this over the minute before, or on its other side, a word was for nothing. */
const NEAR_S_PER_KM = 3;

export const printField = (seeds: readonly number[]): void => {
  const rows = RECEIVED.map((reception) => {
    const races = fieldIn(reception, seeds);
    const words = races.flatMap((r) => r.words);
    const off = words.map((w) => w.said - w.kept);
    return [
      reception,
      String(races.length),
      fixed(words.length / races.length, 1),
      String(Math.max(...races.map((r) => r.words.length))),
      percent(words.filter((w) => w.minute < NEAR_S_PER_KM).length / words.length),
      percent(words.filter((w) => w.minute < 0 && w.kept < 0).length / words.length, 1),
      fixed(mean(off), 1),
      fixed(rms(off), 1),
      percent(mean(races.map((r) => r.talk)), 1),
      percent(Math.max(...races.map((r) => r.talk)), 1),
    ];
  });
  printTable(
    'Words about pace in a mixed field that never answers (10 km)',
    [
      'reception',
      'races',
      'words a race',
      'most',
      'for nothing',
      'wrong side',
      'size less what was kept up, s/km, mean',
      'RMS',
      'talk, mean',
      'talk, most',
    ],
    rows,
  );
};
