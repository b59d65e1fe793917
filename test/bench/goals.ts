import type { RunnerModel } from '../../src/sensors/simulatedRunner.ts';
import { OTHERS, type Other, otherRunnerOf } from './otherPeople.ts';
import { FIELDS, type Field, runnerOf } from './people.ts';
import { race } from './race.ts';
import { type Claim, coverage, mean, rms } from './stats.ts';
import { fixed, percent, printTable } from './table.ts';
import { planOf, type Reception, worldOf } from './worlds.ts';

/** Ten kilometres take half the time of a half marathon to simulate and show the same. */
const TEN = planOf({ distanceM: 10000, goalS: 2700, checkpointsM: [5000] });
const EVERY_S = 60;
const BINS = 10;
const RECEIVED = ['open', 'town', 'tall, two tunnels'] as const satisfies readonly Reception[];
const PHASES = [0.25, 0.5, 0.75, 0.95] as const;

interface Said {
  readonly chance: number;
  readonly made: boolean;
}

/** All that one race says about its end. */
interface Foretold {
  readonly field: Field | Other;
  readonly reception: Reception;
  readonly said: readonly Said[];
  /** Projected finish where the share of PHASES is run. */
  readonly at: readonly (Claim | null)[];
}

const isOther = (field: Field | Other): field is Other => OTHERS.some((other) => other === field);
const modelOf = (field: Field | Other, seed: number): Partial<RunnerModel> =>
  isOther(field)
    ? otherRunnerOf(field, TEN.distanceM, seed)
    : runnerOf(field, TEN.distanceM, TEN.goalS, seed);

const foretell = (field: Field | Other, reception: Reception, seed: number): Foretold => {
  const runner = modelOf(field, seed);
  const world = worldOf({ plan: TEN, shape: seed % 2 === 0 ? 'city' : 'laps', reception, runner, seed });
  const finishS = world.run.truth.crossingS(TEN.distanceM) ?? Number.POSITIVE_INFINITY;
  const made = finishS <= TEN.goalS;
  const { samples } = race(world);
  let nextS = EVERY_S;
  const said: Said[] = [];
  for (const { ownS, drift } of samples) {
    if (ownS < nextS) continue;
    nextS += EVERY_S;
    said.push({ chance: drift.goalChance, made });
  }
  const at = PHASES.map((share): Claim | null => {
    const drift = samples.find(({ trueM }) => trueM >= share * TEN.distanceM)?.drift;
    return drift?.projectedFinishS == null
      ? null
      : { error: drift.projectedFinishS - finishS, sd: drift.projectedFinishSdS };
  });
  return { field, reception, said, at };
};

const isClaim = (claim: Claim | null | undefined): claim is Claim => claim != null;

const printChances = (all: readonly Foretold[], races: number): void => {
  const columns: readonly (readonly Said[])[] = [
    ...FIELDS.map((field) => all.filter((f) => f.field === field).flatMap((f) => f.said)),
    all.filter((f) => !isOther(f.field)).flatMap((f) => f.said),
    all.filter((f) => isOther(f.field)).flatMap((f) => f.said),
  ];
  const names = [...FIELDS, 'all', 'others'];
  const rows = Array.from({ length: BINS }, (_, bin) => [
    `${bin * BINS}–${(bin + 1) * BINS} %`,
    ...columns.flatMap((said) => {
      const inBin = said.filter((s) => Math.min(BINS - 1, Math.floor(s.chance * BINS)) === bin);
      return [String(inBin.length), percent(mean(inBin.map((s) => (s.made ? 1 : 0))))];
    }),
  ]);
  const brier = (said: readonly Said[]): number =>
    mean(said.map(({ chance, made }) => (chance - (made ? 1 : 0)) ** 2));
  printTable(
    `Chance of the goal (10 km, ${races} races a field, asked once a minute)`,
    ['said', ...names.flatMap((name) => [`times, ${name}`, `came true, ${name}`])],
    [...rows, ['Brier score (even odds: 0.25)', ...columns.flatMap((said) => ['', fixed(brier(said), 3)])]],
  );
};

const printFinishes = (everybody: readonly Foretold[]): void => {
  const all = everybody.filter((f) => !isOther(f.field));
  const others = everybody.filter((f) => isOther(f.field));
  const row = (name: string, of: readonly Foretold[]): string[] => [
    name,
    String(of.length),
    ...PHASES.flatMap((_, i) => {
      const claims = of.map((f) => f.at[i]).filter(isClaim);
      return [percent(coverage(claims)), fixed(rms(claims.map((c) => c.error)), 1)];
    }),
    percent(coverage(of.flatMap((f) => f.at.filter(isClaim)))),
  ];
  printTable(
    'Projected finish: how often its 95 % interval holds, and how far off it is (10 km)',
    [
      'who and where',
      'races',
      ...PHASES.flatMap((p) => [`holds at ${percent(p)}`, 'off, s RMS']),
      'holds, all',
    ],
    [
      ...FIELDS.map((field) =>
        row(
          field,
          all.filter((f) => f.field === field),
        ),
      ),
      ...RECEIVED.map((reception) =>
        row(
          reception,
          all.filter((f) => f.reception === reception),
        ),
      ),
      row('**all**', all),
      ...OTHERS.map((other) =>
        row(
          other,
          others.filter((f) => f.field === other),
        ),
      ),
      row('**others**', others),
    ],
  );
};

/** Of the times when it said 70 to 80 %, how many came true; and how often the projected finish is right. */
export const printGoals = (races: number): void => {
  const all = [...FIELDS, ...OTHERS].flatMap((field) =>
    Array.from({ length: isOther(field) ? Math.ceil(races / 2) : races }, (_, i) =>
      foretell(field, RECEIVED[i % RECEIVED.length] ?? 'open', i + 1),
    ),
  );
  printChances(all, races);
  printFinishes(all);
};
