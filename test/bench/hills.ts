import type { CourseLine } from '../../src/core/course/line.ts';
import { scheduleOf } from '../../src/core/plan/schedule.ts';
import { chanceOf } from '../../src/core/units/chance.ts';
import { NO_PRESSES, simulate } from '../../src/sensors/simulated.ts';
import { type RunnerModel, STEADY } from '../../src/sensors/simulatedRunner.ts';
import { recordingOf, roadOf } from './courses.ts';
import { distanceClaims, race } from './race.ts';
import { coverage, mean, rms } from './stats.ts';
import { fixed, percent, printTable } from './table.ts';
import { planOf, RECEPTIONS, type World } from './worlds.ts';

const DISTANCE_M = 15_000;
/** Rolling country: hills of such lengths from foot to foot, and how steep each is at its steepest. */
const WAVES = [
  { lengthM: 900, slope: 0.025 },
  { lengthM: 2100, slope: 0.02 },
  { lengthM: 4700, slope: 0.012 },
] as const;
/** Heights as phones record them: wrong by so much from one of these places to the next, and from point to point. */
const WANDER = { sdM: 2.5, everyM: 150 } as const;
const POINT_SD_M = 1.2;

type Heights = (m: number) => number;

const hillsOf = (seed: number): Heights => {
  const chance = chanceOf(seed + 777);
  const waves = WAVES.map(({ lengthM, slope }) => ({
    perM: (2 * Math.PI) / (lengthM * (0.8 + 0.4 * chance.uniform())),
    slope,
    from: 2 * Math.PI * chance.uniform(),
  }));
  return (m) =>
    waves.reduce((sum, { perM, slope, from }) => sum + (slope / perM) * Math.sin(perM * m + from), 0);
};

const shaken = (heights: Heights, seed: number): Heights => {
  const chance = chanceOf(seed + 99);
  const wander = Array.from({ length: DISTANCE_M / WANDER.everyM + 3 }, () => WANDER.sdM * chance.normal());
  const points = Array.from({ length: DISTANCE_M / 10 + 3 }, () => POINT_SD_M * chance.normal());
  return (m) => {
    const i = Math.max(0, Math.floor(m / WANDER.everyM));
    const k = m / WANDER.everyM - i;
    const wrong = (wander[i] ?? 0) * (1 - k) + (wander[i + 1] ?? 0) * k;
    return Math.round(heights(m) + wrong + (points[Math.max(0, Math.round(m / 10))] ?? 0));
  };
};

const RUNNERS = [
  { name: 'even effort', pacing: 'effort', hillLossPerPercent: 0 },
  { name: 'loses twice as much uphill', pacing: 'effort', hillLossPerPercent: 0.035 },
  { name: 'even pace', pacing: 'pace', hillLossPerPercent: 0 },
] as const;
const FILES: readonly { readonly name: string; readonly of: ((seed: number) => Heights) | null }[] = [
  { name: 'right', of: hillsOf },
  { name: 'shaken', of: (seed) => shaken(hillsOf(seed), seed) },
  { name: 'of another place', of: (seed) => hillsOf(seed + 1000) },
  { name: 'none', of: null },
];

const withHeights = (line: CourseLine, heights: Heights): CourseLine => ({
  ...line,
  elevationM: line.alongM.map(heights),
});

const worldOf = (
  { pacing, hillLossPerPercent }: (typeof RUNNERS)[number],
  heights: Heights | null,
  reception: 'open' | 'town',
  seed: number,
): World => {
  const flat = roadOf('city', DISTANCE_M, seed * 7 + 1);
  const road = withHeights(flat, hillsOf(seed));
  const plan = planOf({ distanceM: DISTANCE_M, goalS: 0.27 * DISTANCE_M, pacing });
  const runner: RunnerModel = { ...STEADY, hillLossPerPercent };
  const receiver = RECEPTIONS[reception];
  const run = simulate({
    plan,
    line: road,
    runner,
    receiver,
    presses: NO_PRESSES,
    penS: 60,
    seed: seed * 31,
  });
  const recording = recordingOf(flat, seed + 50_000);
  return { plan, road, given: heights ? withHeights(recording, heights) : recording, receiver, runner, run };
};

const LAGS_S = [0, 1, 2, 4, 6, 8, 10, 12, 15, 18, 22, 26, 30, 35, 40, 50];
const SETTLED_S = 60;

/** One race: claims and truth of the way and of the speed, and what each lag of the truth would leave of the difference. */
const scoreOf = (world: World) => {
  const { truth } = world.run;
  const raced = race(world);
  const trueMps = (ownS: number): number => (truth.distanceAtM(ownS + 1) - truth.distanceAtM(ownS - 1)) / 2;
  const samples = raced.samples.filter(({ ownS }) => ownS > SETTLED_S);
  const lagged = LAGS_S.map((lagS) => {
    let [y, lastS] = [Number.NaN, 0];
    return rms(
      samples.map(({ ownS, progress }) => {
        const mps = trueMps(ownS);
        y = Number.isNaN(y) ? mps : y + (mps - y) * (lagS === 0 ? 1 : 1 - Math.exp((lastS - ownS) / lagS));
        lastS = ownS;
        return progress.speedMps - y;
      }),
    );
  });
  const schedule = scheduleOf(world.plan, world.road);
  const paceCalls = raced.calls.filter(({ saying }) => saying.kind === 'ease' || saying.kind === 'quicken');
  const falseCalls = paceCalls.filter(({ saying, startMs }) => {
    const ownS = (startMs - world.run.startMs) / 1000;
    const plannedS =
      schedule.timeAtS(truth.distanceAtM(ownS)) - schedule.timeAtS(truth.distanceAtM(Math.max(0, ownS - 60)));
    const quickerShare = plannedS / Math.min(60, ownS) - 1;
    return (saying.kind === 'ease' ? quickerShare : -quickerShare) < FALSE_SHARE;
  });
  return {
    distance: distanceClaims(raced),
    speed: samples.map(({ ownS, progress }) => ({
      error: progress.speedMps - trueMps(ownS),
      sd: progress.speedSdMps,
    })),
    lagged,
    calls: paceCalls.length,
    falseCalls: falseCalls.length,
  };
};
/** A call is false where the minute before was run this near to the plan, or on its other side: 3 s/km. */
const FALSE_SHARE = 0.011;

/** How well the estimate follows a runner up and down hills, by how they take them and by what the course file knows. */
export const printHills = (seeds: readonly number[]): void => {
  const rows = (['open', 'town'] as const).flatMap((reception) =>
    RUNNERS.flatMap((runner) =>
      FILES.map(({ name, of }) => {
        const scores = seeds.map((seed) => scoreOf(worldOf(runner, of?.(seed) ?? null, reception, seed)));
        const distance = scores.flatMap((s) => s.distance);
        const speed = scores.flatMap((s) => s.speed);
        const left = LAGS_S.map((_, i) => rms(scores.map((s) => s.lagged[i] ?? Number.NaN)));
        return [
          reception,
          runner.name,
          name,
          fixed(rms(distance.map((c) => c.error)), 2),
          percent(coverage(distance)),
          fixed(rms(speed.map((c) => c.error)), 3),
          percent(coverage(speed)),
          String(LAGS_S[left.indexOf(Math.min(...left))]),
          fixed(mean(scores.map((s) => s.calls)), 1),
          fixed(mean(scores.map((s) => s.falseCalls)), 1),
        ];
      }),
    ),
  );
  printTable(
    `Hills up to 5 % (15 km, ${seeds.length} races a row)`,
    [
      'reception',
      'runner',
      'heights in the course file',
      'distance error, m RMS',
      '95 % of distance holds',
      'speed error, m/s RMS',
      '95 % of speed holds',
      'speed comes late by, s',
      'pace calls a race',
      'false ones',
    ],
    rows,
  );
};
