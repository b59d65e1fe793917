import { STEADY } from '../../src/sensors/simulatedRunner.ts';
import { SHAPES } from './courses.ts';
import { race } from './race.ts';
import { mean, median, quantile } from './stats.ts';
import { fixed, printTable } from './table.ts';
import { planOf, type Reception, worldOf } from './worlds.ts';

const PLAN = planOf({ distanceM: 10000, goalS: 2700, checkpointsM: [5000] });
const PACE_S_PER_KM = (PLAN.goalS / PLAN.distanceM) * 1000;
const CHANGE_M = 4200;

/** Seconds from a change of pace to the ease or quicken it calls for; null where none came in the race. */
const delayS = (reception: Reception, waverShare: number, byS: number, seed: number): number | null => {
  const world = worldOf({
    plan: PLAN,
    shape: SHAPES[seed % SHAPES.length] ?? 'city',
    reception,
    runner: {
      waverShare,
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

/** A call is false when the runner's true pace over the minute before was this near to the plan, or on its other side. */
const NEAR_S_PER_KM = 3;
const MINUTE_S = 60;

/** False ease and quicken calls in ten kilometres run as evenly as `waverShare` says. */
const falseAlarms = (reception: Reception, waverShare: number, seed: number): number => {
  const shape = SHAPES[seed % SHAPES.length] ?? 'city';
  const world = worldOf({ plan: PLAN, shape, reception, runner: { waverShare }, seed });
  const { truth, startMs } = world.run;
  return race(world).calls.filter(({ saying, startMs: soundMs }) => {
    if (saying.kind !== 'ease' && saying.kind !== 'quicken') return false;
    const atS = (soundMs - startMs) / 1000;
    const ranM = truth.distanceAtM(atS) - truth.distanceAtM(Math.max(0, atS - MINUTE_S));
    const slowerS = (1000 * Math.min(MINUTE_S, atS)) / ranM - PACE_S_PER_KM;
    return (saying.kind === 'ease' ? -slowerS : slowerS) < NEAR_S_PER_KM;
  }).length;
};

const RUNNERS = [
  { name: 'truly even', waverShare: 0, departuresS: [-12, -6, 6, 12] },
  { name: `waver ${100 * STEADY.waverShare} %`, waverShare: STEADY.waverShare, departuresS: [-6, 6] },
] as const;

const RECEIVED = ['open', 'town'] as const;

/** How soon a change of pace is told, and how often one is told that is none. */
export const printPacing = (seeds: readonly number[]): void => {
  printTable(
    `Ease and quicken: how soon (10 km, pace changes at ${CHANGE_M} m, ${seeds.length} races a row)`,
    ['reception', 'runner', 'change', 'told', 'delay, s, median', 'delay, s, 90 %'],
    RECEIVED.flatMap((reception) =>
      RUNNERS.flatMap(({ name, waverShare, departuresS }) =>
        departuresS.map((byS) => {
          const delays = seeds.map((seed) => delayS(reception, waverShare, byS, seed));
          const told = delays.filter((d): d is number => d !== null);
          const change = `${byS > 0 ? '+' : '−'}${Math.abs(byS)} s/km`;
          const seen = `${told.length} of ${delays.length}`;
          return [reception, name, change, seen, fixed(median(told), 0), fixed(quantile(told, 0.9), 0)];
        }),
      ),
    ),
  );
  printTable(
    `Ease and quicken: false alarms in 10 km (${seeds.length} races a row)`,
    ['reception', 'runner', 'mean', 'most'],
    RECEIVED.flatMap((reception) =>
      RUNNERS.map(({ name, waverShare }) => {
        const alarms = seeds.map((seed) => falseAlarms(reception, waverShare, seed));
        return [reception, name, fixed(mean(alarms), 2), String(Math.max(...alarms))];
      }),
    ),
  );
};
