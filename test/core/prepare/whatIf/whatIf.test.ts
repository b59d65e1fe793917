import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { speedLeftMps, usedBy } from '../../../../src/core/prepare/whatIf/endurance.ts';
import { WHAT_IF_EVIDENCE, WHAT_IF_LIMITS } from '../../../../src/core/prepare/whatIf/evidence.ts';
import type { Spread } from '../../../../src/core/prepare/whatIf/oneRun.ts';
import { chanceOf } from '../../../../src/core/prepare/whatIf/random.ts';
import {
  openingText as openingTextMessage,
  tallyText as tallyTextMessage,
} from '../../../../src/core/prepare/whatIf/text.ts';
import {
  USUAL_RUNS,
  USUAL_STATION_S,
  USUAL_WANDER_SD,
  type WhatIfWish,
  whatIf,
} from '../../../../src/core/prepare/whatIf/whatIf.ts';
import { demoCourse } from '../../../../src/demo/course.ts';
import { demoPlan } from '../../../../src/demo/race.ts';
import { inEnglish } from '../../../support/english.ts';
import { bareHalf, fullHalf, HALF_M } from '../plans.ts';

const openingText = inEnglish(openingTextMessage);
const tallyText = inEnglish(tallyTextMessage);

const spread = (middleS: number, sdLog: number): Spread => ({
  middleS,
  sdLog,
  wanderSd: USUAL_WANDER_SD,
  stationS: USUAL_STATION_S,
});

const wish = (change: Partial<WhatIfWish>): WhatIfWish => ({
  plan: fullHalf,
  course: null,
  spread: spread(6100, 0.03),
  lineAfterGunS: 0,
  seed: 7,
  runs: 400,
  ...change,
});

describe('chance', () => {
  const draw = (seed: number, stream: number, many: number) => {
    const chance = chanceOf(seed, stream);
    return Array.from({ length: many }, () => chance.normal());
  };

  test('the same seed and stream draw the same, others do not', () => {
    expect(draw(1, 2, 20)).toEqual(draw(1, 2, 20));
    expect(draw(1, 2, 20)).not.toEqual(draw(1, 3, 20));
    expect(draw(1, 2, 20)).not.toEqual(draw(2, 2, 20));
  });

  test('normal: mean, spread and tails of the first draws of 4000 streams', () => {
    const firsts = Array.from({ length: 4000 }, (_, stream) => chanceOf(99, stream).normal());
    const mean = firsts.reduce((a, b) => a + b, 0) / firsts.length;
    const sd = Math.sqrt(firsts.reduce((a, b) => a + (b - mean) ** 2, 0) / firsts.length);
    // Standard errors are 0.016, 0.011 and 0.0034; the seed is fixed, so this is no lottery.
    expect(Math.abs(mean)).toBeLessThan(0.05);
    expect(Math.abs(sd - 1)).toBeLessThan(0.035);
    expect(Math.abs(firsts.filter((z) => Math.abs(z) > 1.96).length / 4000 - 0.05)).toBeLessThan(0.011);
  });

  test('uniform stays in [0, 1)', () => {
    const chance = chanceOf(0, 0);
    const us = Array.from({ length: 5000 }, () => chance.uniform());
    expect(Math.min(...us)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...us)).toBeLessThan(1);
    expect(Math.abs(us.reduce((a, b) => a + b, 0) / us.length - 0.5)).toBeLessThan(0.015);
  });
});

describe('endurance', () => {
  const speed = fc.double({ min: 2, max: 6, noNaN: true });

  test('the even race at what one can do uses up everything, exactly at the line', () => {
    expect(usedBy(HALF_M, 3.5, HALF_M, 3.5)).toBe(1);
  });

  test('what is left is worth one even speed, and running it uses it up', () => {
    void fc.assert(
      fc.property(
        speed,
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 100, max: HALF_M, noNaN: true }),
        (capableMps, left, leftM) => {
          const mps = speedLeftMps(left, leftM, HALF_M, capableMps);
          expect(usedBy(leftM, mps, HALF_M, capableMps)).toBeCloseTo(left, 9);
        },
      ),
    );
  });

  test('any uneven split of the same time uses more than the even one', () => {
    void fc.assert(
      fc.property(speed, fc.double({ min: 0.02, max: 0.2, noNaN: true }), (mps, part) => {
        const firstMps = mps * (1 + part);
        const secondMps = 1 / (2 / mps - 1 / firstMps);
        const uneven = usedBy(HALF_M / 2, firstMps, HALF_M, mps) + usedBy(HALF_M / 2, secondMps, HALF_M, mps);
        expect(uneven).toBeGreaterThan(1);
      }),
    );
  });
});

describe('a thousand runs of a plan', () => {
  test('the same seed gives the same answer', () => {
    expect(whatIf(wish({}))).toEqual(whatIf(wish({})));
    expect(whatIf(wish({ seed: 8 }))).not.toEqual(whatIf(wish({})));
  });

  test('the fitter the runner, the better the chance', () => {
    const chances = [6700, 6400, 6200, 6000, 5600].map(
      (s) => whatIf(wish({ spread: spread(s, 0.03) })).plan.chance,
    );
    expect(chances).toEqual([...chances].sort((a, b) => a - b));
    expect(chances[0]).toBeLessThan(0.1);
    expect(chances.at(-1)).toBeGreaterThan(0.95);
  });

  test('a goal in the middle of the range has about an even chance, whatever the range', () => {
    for (const sdLog of [0.03, 0.06, 0.09]) {
      const { chance } = whatIf(wish({ spread: spread(6240, sdLog), runs: USUAL_RUNS, plan: bareHalf })).plan;
      expect(chance).toBeGreaterThan(0.35);
      expect(chance).toBeLessThan(0.55);
    }
  });

  test('who has room gains what the opening wins, less what the legs pay; who has none pays more, the quicker the more', () => {
    const changes = (middleS: number) =>
      whatIf(wish({ spread: spread(middleS, 0.01) })).openings.map((o) => o.changeS);
    const [even, ...withRoom] = changes(5600);
    expect(even).toBe(0);
    expect(withRoom).toEqual([...withRoom].sort((a, b) => b - a));
    for (const [i, quicker] of [2, 6, 10].entries()) {
      expect(withRoom[i]).toBeLessThan(0);
      expect(withRoom[i]).toBeGreaterThan(-1.5 * quicker - 0.5);
    }
    const [, ...atTheLimit] = changes(6400);
    expect(atTheLimit).toEqual([...atTheLimit].sort((a, b) => a - b));
    for (const change of atTheLimit) expect(change).toBeGreaterThan(0);
    expect(atTheLimit[2]).toBeGreaterThan(10);
  });

  test('who fades more makes an even goal less often, and loses it later; who wanders more makes it less often', () => {
    const goal = { plan: bareHalf, runs: 1500 };
    const of = (change: Partial<Spread>) =>
      whatIf(wish({ ...goal, spread: { ...spread(bareHalf.goalS * 0.99, 0.03), ...change } })).plan;
    const [usual, fades, wanders] = [of({}), of({ fadeMore: 0.04 }), of({ wanderSd: 2 * USUAL_WANDER_SD })];
    expect(fades.chance).toBeLessThan(usual.chance - 2 * usual.chanceSd);
    expect(fades.lost?.fromM).toBeGreaterThan(usual.lost?.fromM ?? Number.NaN);
    expect(wanders.chance).toBeLessThan(usual.chance - 2 * usual.chanceSd);
  });

  test('the goal is lost later by those who were nearer to it', () => {
    const far = whatIf(wish({ spread: spread(6700, 0.01) })).plan.lost;
    const near = whatIf(wish({ spread: spread(6300, 0.01) })).plan.lost;
    expect(far?.toM).toBeLessThan(near?.fromM ?? 0);
  });

  test('on hills at even effort the answer is that of the level course, within its own error', () => {
    const level = whatIf(wish({ plan: demoPlan }));
    const hilly = whatIf(wish({ plan: demoPlan, course: demoCourse() }));
    expect(hilly).not.toEqual(level);
    expect(Math.abs(hilly.plan.chance - level.plan.chance)).toBeLessThan(3 * level.plan.chanceSd);
    expect(Math.abs(hilly.plan.finishS.middle - level.plan.finishS.middle)).toBeLessThan(10);
  });

  test('a goal by the gun is the harder the later one crosses the line', () => {
    const plan = { ...fullHalf, goalBy: 'gun' as const };
    const chances = [0, 60, 180].map((lineAfterGunS) => whatIf(wish({ plan, lineAfterGunS })).plan.chance);
    expect(chances).toEqual([...chances].sort((a, b) => b - a));
    expect(chances[2]).toBeLessThan(chances[0] ?? 0);
    expect(whatIf(wish({ lineAfterGunS: 180 })).plan).toEqual(whatIf(wish({})).plan);
  });

  test('any sane wish gives sane answers', () => {
    const anyWish = fc.record({
      distanceM: fc.double({ min: 1000, max: 60_000, noNaN: true }),
      paceSPerKm: fc.double({ min: 180, max: 500, noNaN: true }),
      ability: fc.double({ min: 0.7, max: 1.4, noNaN: true }),
      sdLog: fc.double({ min: 0, max: 0.15, noNaN: true }),
      seed: fc.integer(),
    });
    void fc.assert(
      fc.property(anyWish, ({ distanceM, paceSPerKm, ability, sdLog, seed }) => {
        const goalS = (paceSPerKm * distanceM) / 1000;
        const plan = { ...bareHalf, distanceM, goalS };
        const answer = whatIf(wish({ plan, spread: spread(goalS * ability, sdLog), seed, runs: 20 }));
        for (const t of [answer.plan, ...answer.openings]) {
          expect(t.chance).toBeGreaterThanOrEqual(0);
          expect(t.chance).toBeLessThanOrEqual(1);
          expect(t.finishS.quick).toBeLessThanOrEqual(t.finishS.middle);
          expect(t.finishS.middle).toBeLessThanOrEqual(t.finishS.slow);
          expect(t.finishS.quick).toBeGreaterThan(goalS * 0.8);
          expect(Number.isFinite(t.finishS.slow)).toBe(true);
          expect(t.lost === null).toBe(t.chance === 1);
          if (t.lost) expect(t.lost.toM).toBeLessThanOrEqual(distanceM);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('says what it rests on and what it does not know', () => {
    expect(WHAT_IF_EVIDENCE.some((e) => e.kind === 'practice')).toBe(true);
    expect(WHAT_IF_LIMITS.map(({ text }) => text).join()).toContain('A model, not a forecast');
  });
});

describe('the answer in words', () => {
  const tally = {
    chance: 0.64,
    chanceSd: 0.015,
    finishS: { quick: 6150, middle: 6230, slow: 6500 },
    lost: { fromM: 12_100, toM: 17_300 },
  };
  const opening = { ...tally, quickerSPerKm: 6, untilM: 1500, changeS: -5.6, changeSdS: 0.2 };

  test.each([
    [
      tallyText(tally, 'km'),
      'Chance of the goal: about 6 in 10. Four in five finish between 1:42:30 and 1:48:30. Where it is missed, it is mostly lost between 12 km and 17 km.',
    ],
    [
      tallyText({ ...tally, chance: 1, lost: null }, 'km'),
      'Every run of this plan made the goal. Four in five finish between 1:42:30 and 1:48:30.',
    ],
    [openingText(opening, 'km'), '6 s per km quicker for 1.5 km: wins about 6 s on average.'],
    [
      openingText({ ...opening, changeS: 9 }, 'km'),
      '6 s per km quicker for 1.5 km: costs about 9 s on average.',
    ],
    [
      openingText({ ...opening, changeS: 9, changeSdS: 5 }, 'km'),
      '6 s per km quicker for 1.5 km: neither wins nor costs anything to speak of.',
    ],
  ])('%s', (text, expected) => {
    expect(text).toBe(expected);
  });
});
