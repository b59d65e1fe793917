import { LIMIT } from '../../src/core/drift/departure.ts';
import { STEADY } from '../../src/sensors/simulatedRunner.ts';
import { toldIn } from './curve.ts';
import { printField } from './field.ts';
import { idealOf } from './ideal.ts';
import {
  AIRS,
  type Air,
  CHANGE_M,
  DEPARTURE_S_PER_KM,
  delayOf,
  orNever,
  PACE_S_PER_KM,
  type Paced,
  PLAN,
  pacedIn,
} from './paced.ts';
import { printSizes } from './sizes.ts';
import { mean, median, quantile } from './stats.ts';
import { fixed, printTable } from './table.ts';
import { RECEPTIONS } from './worlds.ts';

const RUNNERS = [
  { name: 'truly even', waverShare: 0 },
  { name: `waver ${100 * STEADY.waverShare} %`, waverShare: STEADY.waverShare },
] as const;
const DEPARTURES = [-DEPARTURE_S_PER_KM, DEPARTURE_S_PER_KM] as const;
const LARGER = [-12, 12] as const;
/** Streets with a better speed: of a truly even runner only. */
const isIdealised = ({ name }: Air): boolean => name.includes('speed to');

const printDelays = (all: readonly Paced[], races: number): void => {
  const rows = AIRS.flatMap((air) =>
    RUNNERS.flatMap(({ name, waverShare }) => {
      const sizes = [
        ...new Set(
          all.filter((p) => p.air === air && p.waverShare === waverShare).map((p) => Math.abs(p.byS)),
        ),
      ];
      return sizes
        .filter((size) => size > 0)
        .sort((a, b) => a - b)
        .map((size) => {
          const of = all.filter(
            (p) => p.air === air && p.waverShare === waverShare && Math.abs(p.byS) === size,
          );
          const delays = of.map((p) => delayOf(p, p.calls));
          const told = delays.filter((d) => d !== null).length;
          const times = delays.map(orNever);
          return [
            air.name,
            name,
            `${size} s/km`,
            `${told} of ${of.length}`,
            fixed(median(times), 0),
            fixed(quantile(times, 0.9), 0),
          ];
        });
    }),
  );
  printTable(
    `Ease and quicken: how soon (10 km, pace changes at ${CHANGE_M} m, ${races} races quicker and ${races} slower a row)`,
    ['reception', 'runner', 'change', 'told', 'delay, s, median', 'delay, s, 90 %'],
    rows,
  );
};

const printAlarms = (all: readonly Paced[], races: number): void => {
  printTable(
    `Ease and quicken: false alarms in 10 km (${races} races a row)`,
    ['reception', 'runner', 'mean', 'most'],
    AIRS.flatMap((air) =>
      RUNNERS.flatMap(({ name, waverShare }) => {
        const alarms = all
          .filter((p) => p.air === air && p.waverShare === waverShare && p.byS === 0)
          .map((p) => p.falseCalls);
        return alarms.length === 0
          ? []
          : [[air.name, name, fixed(mean(alarms), 2), String(Math.max(...alarms))]];
      }),
    ),
  );
};

const CURVE = [1.7, 2.1, LIMIT, 3, 3.5] as const;

const printCurve = (all: readonly Paced[]): void => {
  const byMps = 1000 / PACE_S_PER_KM - 1000 / (PACE_S_PER_KM + DEPARTURE_S_PER_KM);
  const even = all.filter((p) => p.waverShare === 0);
  const rows = AIRS.map((air) => {
    const of = even.filter((p) => p.air === air);
    const points = CURVE.map((limit) => {
      const alarms = of.filter((p) => p.byS === 0).map((p) => toldIn(p.shown, limit).length);
      const delays = of
        .filter((p) => Math.abs(p.byS) === DEPARTURE_S_PER_KM)
        .map((p) => orNever(delayOf(p, toldIn(p.shown, limit))));
      return `${fixed(mean(alarms), 1)}; ${fixed(median(delays), 0)}`;
    });
    const ideal = idealOf({ ...RECEPTIONS[air.reception], ...air.receiver }, byMps, PLAN.goalS);
    return [air.name, ...points, fixed(ideal.z40, 1), fixed(ideal.delayS, 0)];
  });
  printTable(
    `Ease and quicken: what a limit costs (false alarms in 10 km; median delay of ${DEPARTURE_S_PER_KM} s/km, s; a truly even runner)`,
    [
      'reception',
      ...CURVE.map((limit) => (limit === LIMIT ? `**limit ${limit}**` : `limit ${limit}`)),
      'stands out after 40 s, sd',
      'who knows everything, at 1 false alarm, s',
    ],
    rows,
  );
};

/** How soon a change of pace is told, how often one is told that is none, and what the one costs in the other. */
export const printPacing = (seeds: readonly number[]): void => {
  const all = AIRS.flatMap((air) =>
    RUNNERS.flatMap(({ waverShare }) => {
      const byS = waverShare === 0 && !isIdealised(air) ? [0, ...DEPARTURES, ...LARGER] : [0, ...DEPARTURES];
      return waverShare > 0 && isIdealised(air)
        ? []
        : byS.flatMap((by) => seeds.map((seed) => pacedIn(air, waverShare, by, seed)));
    }),
  );
  printDelays(all, seeds.length);
  printAlarms(all, seeds.length);
  printCurve(all);
  printSizes(seeds.slice(0, Math.ceil(seeds.length / 2)));
  printField(seeds.slice(0, Math.ceil(seeds.length / 2)));
};
