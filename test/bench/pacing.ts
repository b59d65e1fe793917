import { SHAPES } from './courses.ts';
import { race } from './race.ts';
import { median, quantile } from './stats.ts';
import { fixed, printTable } from './table.ts';
import { planOf, type Reception, worldOf } from './worlds.ts';

const PLAN = planOf({ distanceM: 10000, goalS: 2700, checkpointsM: [5000] });
const PACE_S_PER_KM = (PLAN.goalS / PLAN.distanceM) * 1000;
const CHANGE_M = 4200;

/** Seconds from a change of pace to the ease or quicken it calls for; null where none came in the race. */
const delayS = (reception: Reception, byS: number, seed: number): number | null => {
  const world = worldOf({
    plan: PLAN,
    shape: SHAPES[seed % SHAPES.length] ?? 'city',
    reception,
    runner: {
      stretches: [{ fromM: CHANGE_M, toM: PLAN.distanceM, share: PACE_S_PER_KM / (PACE_S_PER_KM + byS) - 1 }],
    },
    seed,
  });
  const { truth, startMs } = world.run;
  const changeS = truth.crossingS(CHANGE_M) ?? 0;
  const call = race(world).calls.find(
    (c) => c.saying.kind === (byS > 0 ? 'quicken' : 'ease') && (c.startMs - startMs) / 1000 > changeS,
  );
  return call ? (call.startMs - startMs) / 1000 - changeS : null;
};

/** Ease and quicken calls in a race run as evenly as people can. */
const falseAlarms = (reception: Reception, seed: number): number => {
  const shape = SHAPES[seed % SHAPES.length] ?? 'city';
  const { calls } = race(worldOf({ plan: PLAN, shape, reception, seed }));
  return calls.filter((c) => c.saying.kind === 'ease' || c.saying.kind === 'quicken').length;
};

const DEPARTURES_S = [-12, -6, 6, 12];

/** How soon a change of pace is told, and how often one is told that is none. */
export const printPacing = (seeds: readonly number[]): void => {
  const rows = (['open', 'town'] as const).flatMap((reception) => {
    const alarms = seeds.map((seed) => falseAlarms(reception, seed));
    return DEPARTURES_S.map((byS) => {
      const delays = seeds.map((seed) => delayS(reception, byS, seed));
      const told = delays.filter((d): d is number => d !== null);
      return [
        reception,
        `${byS > 0 ? '+' : '−'}${Math.abs(byS)} s/km`,
        `${told.length} of ${delays.length}`,
        fixed(median(told), 0),
        fixed(quantile(told, 0.9), 0),
        fixed(alarms.reduce((a, b) => a + b, 0) / alarms.length, 2),
      ];
    });
  });
  printTable(
    `Ease and quicken (10 km, pace changes at ${CHANGE_M} m, ${seeds.length} races a row)`,
    ['reception', 'change', 'told', 'delay, s, median', 'delay, s, 90 %', 'false alarms in 10 km'],
    rows,
  );
};
