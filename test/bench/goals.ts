import { chanceOf } from '../../src/core/units/chance.ts';
import { race } from './race.ts';
import { mean } from './stats.ts';
import { fixed, percent, printTable } from './table.ts';
import { planOf, worldOf } from './worlds.ts';

/**
 * Runners who may or may not make it: their speed for the day is off the plan by a few per cent, and most of them fade.
 * Hardly anybody holds an even pace to the end: Nikolaidis et al., Medicina 55 (2019) 14, over 7258 half marathons, finds
 * each part slower than the one before and a mean change of speed of 4.1 %.
 */
const DAY_SD_SHARE = 0.012;
const FADE_MEAN_SHARE = 0.02;
const FADE_SD_SHARE = 0.02;

/** Ten kilometres take half the time of a half marathon to simulate and show the same. */
const TEN = planOf({ distanceM: 10000, goalS: 2700, checkpointsM: [5000] });
const EVERY_S = 60;
const BINS = 10;

interface Said {
  readonly chance: number;
  readonly made: boolean;
}

const sayings = (seed: number): Said[] => {
  const chance = chanceOf(seed + 5000);
  const day = DAY_SD_SHARE * chance.normal();
  const fade = Math.max(0, FADE_MEAN_SHARE + FADE_SD_SHARE * chance.normal());
  const world = worldOf({
    plan: TEN,
    shape: 'city',
    reception: seed % 2 === 0 ? 'open' : 'town',
    runner: {
      // The middle of the day's spread makes the goal half of the time.
      stretches: [{ fromM: 0, toM: TEN.distanceM, share: day + FADE_MEAN_SHARE / 4 }],
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
  const said = Array.from({ length: races }, (_, i) => sayings(i + 1)).flat();
  const rows = Array.from({ length: BINS }, (_, bin) => {
    const inBin = said.filter(({ chance }) => Math.min(BINS - 1, Math.floor(chance * BINS)) === bin);
    return [
      `${bin * BINS}–${(bin + 1) * BINS} %`,
      String(inBin.length),
      percent(mean(inBin.map((s) => s.chance))),
      percent(mean(inBin.map((s) => (s.made ? 1 : 0)))),
    ];
  });
  printTable(
    `Chance of the goal (10 km, ${races} races, asked once a minute)`,
    ['said', 'times', 'said, mean', 'came true'],
    rows,
  );
  const brier = mean(said.map(({ chance, made }) => (chance - (made ? 1 : 0)) ** 2));
  console.log(`\nBrier score ${fixed(brier, 3)} (always saying ‘even odds’: 0.250).`);
};
