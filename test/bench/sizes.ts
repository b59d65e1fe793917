import type { Call } from '../../src/core/cues/call.ts';
import { scheduleOf } from '../../src/core/plan/schedule.ts';
import { SHAPES } from './courses.ts';
import { race } from './race.ts';
import { mean, rms } from './stats.ts';
import { fixed, percent, printTable } from './table.ts';
import { planOf, RECEIVED, type Reception, type World, worldOf } from './worlds.ts';

/**
 * What is said of pace, held against what was true: runners too quick from the gun, behind a surge of the first half
 * minute, and runners who leave the plan on the way.
 */
const FIVE = planOf({
  distanceM: 5000,
  goalS: 1400,
  opening: { untilM: 1000, quickerSPerKm: 5 },
  push: { fromM: 4000, quickerSPerKm: 4 },
  checkpointsM: [],
});
const PACE_S_PER_KM = 280;
const CHANGE_M = 1900;
/** The surge: how far people are carried, and how much quicker than even they mean. */
const SURGE_M = 90;
const SURGE = 0.12;
const TOO_QUICK = [0, 4, 8, 12, 20] as const;
const CHANGES = [-20, -12, -8, -4, 4, 8, 12, 20] as const;

export type SizedKind = 'opening' | 'ease' | 'quicken' | 'settle' | 'push';

/** A size that was spoken, beside the truth in the same unit. */
export interface Sized {
  readonly kind: SizedKind;
  readonly reception: Reception;
  readonly said: number;
  /** True as it was spoken, and on average over the minute before. */
  readonly now: number;
  readonly minute: number;
  readonly ownS: number;
}

const MINUTE_S = 60;
/** 'Now' is the ten seconds about the word: a stride is no pace. */
const ABOUT_S = 5;

const shareOf = (quickerSPerKm: number): number => PACE_S_PER_KM / (PACE_S_PER_KM - quickerSPerKm) - 1;

const sizedOf = (world: World, reception: Reception, call: Call): Sized | null => {
  const { plan, given, run } = world;
  const { truth, startMs } = run;
  const schedule = scheduleOf(plan, given);
  const { saying } = call;
  const ownS = (call.startMs - startMs) / 1000;
  const atM = truth.distanceAtM(ownS);
  /** Seconds per kilometre quicker than planned, on average. */
  const quicker = (fromS: number, toS: number): number => {
    const from = Math.max(1, fromS);
    const planS = schedule.timeAtS(truth.distanceAtM(toS)) - schedule.timeAtS(truth.distanceAtM(from));
    return (planS / (toS - from) - 1) * schedule.paceAtSPerKm(atM);
  };
  const ahead = schedule.timeAtS(atM) - ownS;
  const at = { reception, ownS };
  switch (saying.kind) {
    case 'opening':
    case 'ease':
    case 'quicken': {
      if (!('byS' in saying)) return null;
      const side = saying.kind === 'quicken' ? -1 : 1;
      return {
        ...at,
        kind: saying.kind,
        said: saying.byS,
        now: side * quicker(ownS - ABOUT_S, ownS + ABOUT_S),
        minute: side * quicker(ownS - MINUTE_S, ownS),
      };
    }
    case 'settle': {
      const { side, seconds } = saying.ahead;
      const crossedS = truth.crossingS(call.atM ?? 0) ?? ownS;
      const trueS = schedule.timeAtS(call.atM ?? 0) - crossedS;
      return { ...at, kind: 'settle', said: side === 'down' ? -seconds : seconds, now: trueS, minute: trueS };
    }
    case 'push': {
      const restM = plan.distanceM - atM;
      const planS = schedule.timeAtS(plan.distanceM) - schedule.timeAtS(atM);
      // The pace that brings the plan's time, or the planned one where that cannot be held.
      const said = saying.pace.sPerUnit;
      const [brings = 0, planned = 0] = [Math.min(planS, planS + ahead), planS].map(
        (s) => (1000 * s) / restM,
      );
      const takes = Math.abs(said - brings) < Math.abs(said - planned) ? brings : planned;
      return { ...at, kind: 'push', said, now: takes, minute: takes };
    }
    default:
      return null;
  }
};

const racedBy = (reception: Reception, stretches: World['runner']['stretches'], seed: number): Sized[] => {
  const world = worldOf({
    plan: FIVE,
    shape: SHAPES[seed % SHAPES.length] ?? 'city',
    reception,
    runner: { stretches },
    seed,
  });
  return race(world).calls.flatMap((call) => sizedOf(world, reception, call) ?? []);
};

/** All sizes spoken in a reception. */
export const sizesIn = (reception: Reception, seeds: readonly number[]): Sized[] => {
  const surge = { fromM: 0, toM: SURGE_M, share: SURGE };
  const all = { fromM: 0, toM: FIVE.distanceM };
  return seeds.flatMap((seed) => [
    ...TOO_QUICK.flatMap((by) => racedBy(reception, [surge, { ...all, share: shareOf(by) }], seed)),
    // Each on a day of its own: until the change they would all be one race.
    ...CHANGES.flatMap((by, i) =>
      racedBy(reception, [surge, { ...all, fromM: CHANGE_M, share: shareOf(by) }], seed + 100 * (i + 1)),
    ),
  ]);
};

export const printSizes = (seeds: readonly number[]): void => {
  const rows = RECEIVED.flatMap((reception) => {
    const sizes = sizesIn(reception, seeds);
    return (['opening', 'ease', 'quicken', 'settle', 'push'] as const).map((kind) => {
      const of = sizes.filter((s) => s.kind === kind);
      const off = (truth: 'now' | 'minute'): number[] => of.map((s) => s.said - s[truth]);
      const isPace = kind !== 'settle' && kind !== 'push';
      const wrong = of.filter((s) => s.now < 0 && s.minute < 0).length;
      return [
        reception,
        kind === 'opening' ? 'opening, too quick' : kind,
        String(of.length),
        fixed(mean(off('now')), 1),
        fixed(rms(off('now')), 1),
        isPace ? fixed(mean(off('minute')), 1) : '',
        isPace ? fixed(rms(off('minute')), 1) : '',
        isPace ? percent(wrong / of.length, 1) : '',
      ];
    });
  });
  printTable(
    `What is said of pace, less what was true, s/km (5 km, ${seeds.length} times ${TOO_QUICK.length + CHANGES.length} runners a reception; settle: seconds of drift)`,
    ['reception', 'call', 'said', 'off now, mean', 'RMS', 'off the last minute, mean', 'RMS', 'wrong side'],
    rows,
  );
};
