import { describe, expect, test } from 'vitest';
import { type Clocks, clocksAt, driftAt } from '../../../src/core/drift/drift.ts';
import { beginKeeping, type Keeping, keepOn, rateNow } from '../../../src/core/drift/keeping.ts';
import { chanceWithin, projectRest } from '../../../src/core/drift/projection.ts';
import type { Progress } from '../../../src/core/estimate/progress.ts';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { type Schedule, scheduleOf } from '../../../src/core/plan/schedule.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';
import { waving } from './feed.ts';

const plan: RacePlan = {
  version: 1,
  kind: 'race',
  name: 'Ten',
  distanceM: 10_000,
  goalS: 3000,
  goalBy: 'own',
  unit: 'km',
  pacing: 'pace',
  opening: null,
  push: null,
  checkpointsM: [],
  stations: [],
  fuel: [],
};
const even = scheduleOf(plan, null);
/** The second half climbs: a minute more than the first, at the same effort. */
const hilly: Schedule = {
  distanceM: 10_000,
  timeAtS: (m) => (m <= 5000 ? m * 0.294 : 1470 + (m - 5000) * 0.306),
  distanceAtM: (s) => (s <= 1470 ? s / 0.294 : 5000 + (s - 1470) / 0.306),
  paceAtSPerKm: (m) => (m < 5000 ? 294 : 306),
};

const at = (distanceM: number, speedMps: number, distanceSdM = 3): Progress => ({
  atMs: 0,
  startMs: 0,
  distanceM,
  distanceSdM,
  speedMps,
  speedSdMps: 0.05,
  baseSpeedMps: speedMps,
  signal: 'good',
  sinceFixS: 0,
});
const own = (s: number): Clocks => ({ ownS: s, goalS: s });
/** A receiver in the open: a rate of a minute is known to 0.4 %. */
const NOISE_POWER = 0.001;
const seen = (rate: number) => ({ rate, noisePower: NOISE_POWER });
const follow = (rates: readonly number[], from: Keeping = beginKeeping): Keeping =>
  rates.reduce((keeping, rate) => keepOn(keeping, seen(rate), 1), from);
/** After half an hour at one rate. */
const kept = (rate: number): Keeping => follow(Array.from({ length: 1800 }, () => rate));

describe('ahead and behind', () => {
  test("is the plan's time here less the clock, a metre being worth the planned pace", () => {
    const drift = driftAt(even, plan, at(4000, 3.4, 5), own(1190), kept(1));
    expect(drift.aheadS).toBeCloseTo(10, 9);
    expect(drift.aheadSdS).toBeCloseTo(1.5, 9);
  });

  test('by the gun where the plan says so and the gun was heard, else by the own clock', () => {
    expect(clocksAt({ ...plan, goalBy: 'gun' }, 60_000, 0, 100_000)).toEqual({ ownS: 40, goalS: 100 });
    expect(clocksAt({ ...plan, goalBy: 'gun' }, 60_000, null, 100_000)).toEqual({ ownS: 40, goalS: 40 });
    expect(clocksAt(plan, 60_000, 0, 100_000)).toEqual({ ownS: 40, goalS: 40 });
  });
});

describe('projected finish', () => {
  test("on plan the plan's", () => {
    expect(driftAt(even, plan, at(4000, 10 / 3), own(1200), kept(1)).projectedFinishS).toBeCloseTo(3000, 6);
  });

  test('the rest of the schedule at the way the runner has kept it', () => {
    const { projectedFinishS } = driftAt(even, plan, at(4000, 3), own(1200), kept(0.9));
    expect(Math.abs((projectedFinishS ?? 0) - (1200 + 1800 / 0.9))).toBeLessThan(5);
  });

  test('a hill to come is in the schedule: even effort on the flat half is no early finish', () => {
    const drift = driftAt(hilly, plan, at(4900, 1000 / 294), own(hilly.timeAtS(4900)), kept(1));
    expect(drift.projectedFinishS).toBeCloseTo(3000, 6);
  });

  test('in own time even where the goal is by the gun', () => {
    const drift = driftAt(
      even,
      { ...plan, goalBy: 'gun' },
      at(4000, 10 / 3),
      { ownS: 1200, goalS: 1260 },
      kept(1),
    );
    expect(drift.projectedFinishS).toBeCloseTo(3000, 6);
    expect(drift.goalChance).toBeLessThan(0.1);
    expect(drift.neededPaceSPerKm).toBeCloseTo(1740 / 6, 6);
  });

  test('nothing before there is anything to project from', () => {
    const drift = driftAt(even, plan, at(0, 0), own(0), kept(1));
    expect(drift.projectedFinishS).toBeNull();
    expect(drift.goalChance).toBe(0);
  });

  test('gets surer towards the line, and is never sure of nothing', () => {
    const sds = [2700, 1800, 900, 300, 30, 0].map((restS) => projectRest(kept(1), restS, 1).sdS);
    sds.forEach((sd, i) => {
      expect(sd).toBeGreaterThan(0);
      if (i > 0) expect(sd).toBeLessThan(sds[i - 1] ?? 0);
    });
  });
});

describe('needed pace and chance', () => {
  test('the pace that still makes the goal', () => {
    expect(driftAt(even, plan, at(4000, 3.3), own(1260), kept(1)).neededPaceSPerKm).toBeCloseTo(290, 9);
  });

  test('none when no time or no distance is left', () => {
    expect(driftAt(even, plan, at(9000, 3), own(3001), kept(1)).neededPaceSPerKm).toBeNull();
    expect(driftAt(even, plan, at(10_000, 3), own(2990), kept(1)).neededPaceSPerKm).toBeNull();
  });

  test('even odds on plan, near certainty either way with a minute at the end', () => {
    const chance = (clockS: number): number =>
      driftAt(even, plan, at(9000, 10 / 3), own(clockS), kept(1)).goalChance;
    expect(chance(2700)).toBeCloseTo(0.5, 2);
    expect(chance(2640)).toBeGreaterThan(0.99);
    expect(chance(2760)).toBeLessThan(0.01);
  });
});

describe('how the runner keeps the schedule', () => {
  test('is followed over minutes, from a belief in the plan', () => {
    expect(beginKeeping.rate).toBe(1);
    const soon = follow(Array.from({ length: 100 }, () => 0.97));
    expect(soon.rate).toBeGreaterThan(0.97);
    expect(soon.rate).toBeLessThan(0.995);
    expect(kept(0.97).rate).toBeCloseTo(0.97, 2);
  });

  test('says nothing of the seconds in which the runner gets away', () => {
    expect(follow(Array.from({ length: 40 }, () => 0.3)).manners).toBe(beginKeeping.manners);
  });

  test('a minute at a standstill hardly counts', () => {
    const stopped = follow(
      Array.from({ length: 60 }, () => 0),
      kept(1),
    );
    expect(
      follow(
        Array.from({ length: 120 }, () => 1),
        stopped,
      ).rate,
    ).toBeGreaterThan(0.98);
  });

  test('what was not seen tells nothing, but time passes', () => {
    let keeping = kept(1);
    const before = projectRest(keeping, 900, 1).sdS;
    for (let s = 0; s < 300; s++) keeping = keepOn(keeping, null, 1);
    expect(keeping.rate).toBe(kept(1).rate);
    keeping = follow(
      Array.from({ length: 20 }, () => 1),
      keeping,
    );
    expect(projectRest(keeping, 900, 1).sdS).toBeGreaterThan(before);
  });

  test('one who runs like a clock is foretold more sharply than one who wavers', () => {
    const clock = projectRest(kept(1), 1200, 1).sdS;
    const wavering = projectRest(follow(waving(0.03, 1800, 1)), 1200, 1).sdS;
    expect(wavering).toBeGreaterThan(1.5 * clock);
  });

  test('how the end is run nobody can foresee: two minutes from the line, who wavers may still spurt or fall off', () => {
    const wavering = follow(waving(0.03, 1800, 1));
    expect(projectRest(wavering, 120, 0).sdS).toBeGreaterThan(0.04 * 120);
    expect(projectRest(kept(1), 120, 0).sdS).toBeLessThan(0.04 * 120);
    expect(projectRest(kept(1), 120, 0).sdS).toBeGreaterThan(0.02 * 120);
  });

  test('one in five ends in a way of their own: six seconds in two minutes are no wonder even to a metronome', () => {
    const { restS, parts } = projectRest(kept(1), 120, 0);
    const within = (leftS: number): number => chanceWithin({ parts, restS, sdS: 0 }, leftS);
    expect(within(restS - 6)).toBeGreaterThan(0.02);
    expect(within(restS - 6)).toBeLessThan(0.06);
    expect(parts.reduce((sum, p) => sum + p.weight, 0)).toBeCloseTo(1, 9);
  });

  test('is in schedule seconds a second: 1 on a climb run at the planned effort', () => {
    expect(rateNow(hilly, at(7000, 1000 / 306))).toBeCloseTo(1, 9);
    expect(rateNow(hilly, at(3000, 1000 / 294))).toBeCloseTo(1, 9);
    expect(rateNow(hilly, at(3000, 1000 / 280))).toBeCloseTo(1.05, 9);
  });
});

describe('foretold for a field', () => {
  // Each runner waves by 1 to 2 % over 50 s about a pace that wanders by 0.05 % a root second.
  const RUNNERS = 600;
  const WALK = 0.0005;
  const FREE_S = 600;
  const ASKED = [900, 1500, 2100, 2700];
  const claims: { readonly z: number; readonly chance: number; readonly made: boolean }[] = [];
  for (let seed = 1; seed <= RUNNERS; seed++) {
    const { normal, uniform } = chanceOf(seed);
    const waves = waving(0.01 + 0.01 * uniform(), 4000, seed);
    let base = 1;
    let keeping = beginKeeping;
    let doneS = 0;
    const said: { readonly finishS: number; readonly sdS: number; readonly chance: number }[] = [];
    let s = 0;
    for (; doneS < 3000; s++) {
      if (s > FREE_S) base += WALK * normal();
      const rate = base * (waves[s] ?? 1);
      doneS += rate;
      keeping = keepOn(keeping, seen(rate), 1);
      if (ASKED.includes(s)) {
        const drift = driftAt(even, plan, at(even.distanceAtM(doneS), 10 / 3, 0), own(s), keeping);
        const { projectedFinishS, projectedFinishSdS: sdS, goalChance: chance } = drift;
        said.push({ finishS: projectedFinishS ?? 0, sdS, chance });
      }
    }
    for (const { finishS, sdS, chance } of said)
      claims.push({ z: (finishS - s) / sdS, chance, made: s <= 3000 });
  }

  test('95 % intervals of the finish hold', () => {
    const inside = claims.filter(({ z }) => Math.abs(z) <= 1.96).length / claims.length;
    expect(inside).toBeGreaterThan(0.93);
    expect(inside).toBeLessThan(0.98);
  });

  test('of the chances between 60 and 90 % about three in four come true', () => {
    const likely = claims.filter(({ chance }) => chance > 0.6 && chance < 0.9);
    const made = likely.filter((c) => c.made).length / likely.length;
    expect(likely.length).toBeGreaterThan(240);
    expect(made).toBeGreaterThan(0.65);
    expect(made).toBeLessThan(0.85);
  });
});

test('the chance is that of the mixture, whatever is left', () => {
  const projection = projectRest(kept(1), 1000, 1);
  expect(projection.parts.reduce((sum, p) => sum + p.weight, 0)).toBeCloseTo(1, 9);
  expect(chanceWithin(projection, 0)).toBeLessThan(1e-6);
  expect(chanceWithin(projection, 2000)).toBeGreaterThan(1 - 1e-6);
  expect(chanceWithin(projection, projection.restS)).toBeCloseTo(0.5, 2);
});
