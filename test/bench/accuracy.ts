import { courseFileErrorM } from './courseFile.ts';
import { SHAPES, type Shape } from './courses.ts';
import { limitsOf } from './limit.ts';
import { odometerErrorsS } from './odometer.ts';
import { FIELDS, runnerOf } from './people.ts';
import {
  distanceClaims,
  driftClaims,
  finishClaims,
  gapsS,
  overlaps,
  type Passing,
  passings,
  race,
  routineGapsS,
  talkShare,
} from './race.ts';
import { type Claim, coverage, mean, rms } from './stats.ts';
import { fixed, percent, printTable } from './table.ts';
import { HALF, type Mode, RECEPTIONS, type Reception, worldOf } from './worlds.ts';

const receptions = Object.keys(RECEPTIONS) as Reception[];

/** All that one race says about the estimate. */
interface Score {
  readonly distance: readonly Claim[];
  readonly drift: readonly Claim[];
  readonly finish: readonly Claim[];
  readonly passings: readonly Passing[];
  readonly limitRmsM: number;
  /** 0 without a course file. */
  readonly fileRmsM: number;
  readonly odometerS: readonly number[];
  readonly overlaps: number;
  readonly talkShare: number;
  readonly calls: number;
  readonly dropped: number;
  readonly gapsS: readonly number[];
  readonly routineGapsS: readonly number[];
}

/** One claim a minute is enough for a projection that hardly changes. */
const PROJECTION_EVERY = 60;

const score = (shape: Shape, reception: Reception, mode: Mode, seed: number): Score => {
  // Every row has runners of several fields.
  const field =
    FIELDS[(seed + SHAPES.indexOf(shape) + receptions.indexOf(reception)) % FIELDS.length] ?? 'steady';
  const runner = runnerOf(field, HALF.distanceM, HALF.goalS, seed);
  const world = worldOf({ shape, reception, mode, runner, seed });
  const raced = race(world);
  const settled = raced.samples[0]?.ownS ?? 0;
  return {
    distance: distanceClaims(raced),
    drift: driftClaims(world, raced),
    finish: finishClaims(world, raced).filter((_, i) => i % PROJECTION_EVERY === 0),
    passings: passings(world, raced),
    limitRmsM: rms(limitsOf(world).flatMap(({ ownS, sdM }) => (ownS >= settled ? [sdM] : []))),
    fileRmsM: mode === 'course' ? courseFileErrorM(world.road, world.given) : 0,
    odometerS: odometerErrorsS(world),
    overlaps: overlaps(raced),
    talkShare: talkShare(world, raced),
    calls: raced.calls.length,
    dropped: raced.dropped,
    gapsS: gapsS(raced),
    routineGapsS: routineGapsS(raced),
  };
};

const numbers = (xs: readonly (number | null)[]): number[] => xs.filter((x): x is number => x !== null);

/** What the runner hears: the first columns of each row. */
const heard = (scores: readonly Score[]): string[] => {
  const passed = scores.flatMap((s) => s.passings);
  return [
    fixed(rms(numbers(passed.map((p) => p.errorS))), 2),
    fixed(rms(scores.flatMap((s) => s.odometerS)), 0),
    `${passed.filter((p) => p.errorS === null).length} of ${passed.length}`,
    fixed(rms(numbers(passed.map((p) => p.lateS))), 2),
    fixed(rms(scores.flatMap((s) => s.distance.map((c) => c.error))), 2),
  ];
};
const HEARD = [
  'checkpoint error, s RMS',
  'plain odometer, s RMS',
  'checkpoints missed',
  'sound off the crossing, s RMS',
  'distance error, m RMS',
];

/** How near to what can be known: only where the road is given. */
const limited = (scores: readonly Score[]): string[] => {
  const limitRmsM = rms(scores.map((s) => s.limitRmsM));
  const fileRmsM = rms(scores.map((s) => s.fileRmsM));
  const ratio = rms(scores.flatMap((s) => s.distance.map((c) => c.error))) / Math.hypot(limitRmsM, fileRmsM);
  return [fixed(limitRmsM, 2), fixed(fileRmsM, 2), fixed(ratio, 2)];
};
const LIMITED = ['limit of the receiver, m', 'of the course file, m', 'ratio to both'];

const honest = (scores: readonly Score[]): string[] => [
  percent(coverage(scores.flatMap((s) => s.distance))),
  percent(coverage(scores.flatMap((s) => s.drift))),
  percent(coverage(scores.flatMap((s) => s.finish))),
];
const HONEST = ['95 % of distance holds', 'of drift', 'of finish'];

const withLine = (name: string, scores: readonly Score[]): string[] => [
  name,
  ...heard(scores),
  ...limited(scores),
  ...honest(scores),
];
const without = (name: string, scores: readonly Score[]): string[] => [
  name,
  ...heard(scores),
  ...honest(scores),
];

/** How right the spoken numbers are, and how honest about it. */
export const printAccuracy = (seeds: readonly number[]): void => {
  const rows: string[][] = [];
  const all: Score[] = [];
  for (const reception of receptions) {
    const ofReception: Score[] = [];
    for (const shape of SHAPES) {
      const scores = seeds.map((seed) => score(shape, reception, 'course', seed));
      rows.push(withLine(`${reception}, ${shape}`, scores));
      ofReception.push(...scores);
    }
    rows.push(withLine(`**${reception}, all**`, ofReception));
    all.push(...ofReception);
  }
  printTable(
    `With a course line (half marathon, ${seeds.length} races a row)`,
    ['reception, course', ...HEARD, ...LIMITED, ...HONEST],
    rows,
  );

  const others: string[][] = [];
  for (const mode of ['marks', 'bare'] as const)
    for (const reception of receptions) {
      const scores = seeds.map((seed) => score('city', reception, mode, seed + 100));
      others.push(
        without(`${mode === 'marks' ? 'presses at boards' : 'nothing else'}, ${reception}`, scores),
      );
      all.push(...scores);
    }
  printTable(
    `Without a course line (city, ${seeds.length} races a row)`,
    ['beside fixes, reception', ...HEARD, ...HONEST],
    others,
  );

  printTable(
    'The ear, over all these races',
    ['what', 'value'],
    [
      ['overlapping calls', String(all.reduce((sum, s) => sum + s.overlaps, 0))],
      ['calls in a race, mean', fixed(mean(all.map((s) => s.calls)), 1)],
      [
        'dropped for want of room while they were true, in a race, mean',
        fixed(mean(all.map((s) => s.dropped)), 1),
      ],
      ['shortest silence between two calls, s', fixed(Math.min(...all.flatMap((s) => s.gapsS)), 1)],
      [
        'shortest silence before a routine call, s',
        fixed(Math.min(...all.flatMap((s) => s.routineGapsS)), 1),
      ],
      ['talk, share of the race, mean', percent(mean(all.map((s) => s.talkShare)), 1)],
      ['talk, share of the race, most', percent(Math.max(...all.map((s) => s.talkShare)), 1)],
    ],
  );
};
