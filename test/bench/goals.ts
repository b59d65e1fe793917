import { chanceOf } from '../../src/core/units/chance.ts';
import { race } from './race.ts';
import { mean } from './stats.ts';
import { fixed, percent, printTable } from './table.ts';
import { planOf, worldOf } from './worlds.ts';

/**
 * Runners who may or may not make it: each day's speed is off the plan by a per cent or so, and in the second half it
 * changes evenly. One field holds its pace on average; in the other most fade, as real fields do: Nikolaidis et al.,
 * Medicina 55 (2019) 14, find over 7258 half marathons each part slower than the one before, 4.1 % from part to part.
 */
const FIELDS = [
  { name: 'hold on average', fadeMeanShare: 0 },
  { name: 'most fade', fadeMeanShare: 0.02 },
] as const;
type Field = (typeof FIELDS)[number];
const DAY_SD_SHARE = 0.012;
const FADE_SD_SHARE = 0.02;

/** Ten kilometres take half the time of a half marathon to simulate and show the same. */
const TEN = planOf({ distanceM: 10000, goalS: 2700, checkpointsM: [5000] });
const EVERY_S = 60;
const BINS = 10;

interface Said {
  readonly chance: number;
  readonly made: boolean;
}

const sayings = ({ fadeMeanShare }: Field, seed: number): Said[] => {
  const chance = chanceOf(seed + 5000);
  const day = DAY_SD_SHARE * chance.normal();
  const fade = fadeMeanShare + FADE_SD_SHARE * chance.normal();
  const world = worldOf({
    plan: TEN,
    shape: 'city',
    reception: seed % 2 === 0 ? 'open' : 'town',
    runner: {
      // A fade from half-way costs a quarter of itself over the race: the field makes the goal half of the time.
      stretches: [{ fromM: 0, toM: TEN.distanceM, share: day + fadeMeanShare / 4 }],
      fade: { fromM: TEN.distanceM / 2, share: fade },
    },
    seed,
  });
  const finishS = world.run.truth.crossingS(TEN.distanceM) ?? Number.POSITIVE_INFINITY;
  const made = finishS <= TEN.goalS;
  let nextS = EVERY_S;
  const said: Said[] = [];
  for (const { ownS, drift } of race(world).samples) {
    if (ownS < nextS) continue;
    nextS += EVERY_S;
    said.push({ chance: drift.goalChance, made });
  }
  return said;
};

/** Of the times when it said 70 to 80 %, how many came true. */
export const printGoals = (races: number): void => {
  const said = FIELDS.map((field) => Array.from({ length: races }, (_, i) => sayings(field, i + 1)).flat());
  const rows = Array.from({ length: BINS }, (_, bin) => [
    `${bin * BINS}–${(bin + 1) * BINS} %`,
    ...said.flatMap((ofField) => {
      const inBin = ofField.filter((s) => Math.min(BINS - 1, Math.floor(s.chance * BINS)) === bin);
      return [String(inBin.length), percent(mean(inBin.map((s) => (s.made ? 1 : 0))))];
    }),
  ]);
  printTable(
    `Chance of the goal (10 km, ${races} races a field, asked once a minute)`,
    ['said', ...FIELDS.flatMap(({ name }) => [`times, ${name}`, `came true, ${name}`])],
    [
      ...rows,
      [
        'Brier score (even odds: 0.25)',
        ...said.flatMap((ofField) => [
          '',
          fixed(mean(ofField.map(({ chance, made }) => (chance - (made ? 1 : 0)) ** 2)), 3),
        ]),
      ],
    ],
  );
};
