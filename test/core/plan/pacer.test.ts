import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  evenShareAt,
  type LevelWithPacer,
  type PacerRace,
  pacerHeading,
} from '../../../src/core/plan/pacer.ts';
import { adviceFor } from '../../../src/core/plan/pacerAdvice.ts';
import type { Pacer, RacePlan } from '../../../src/core/plan/racePlan.ts';
import { scheduleOf } from '../../../src/core/plan/schedule.ts';
import { chanceOf } from '../../../src/core/prepare/whatIf/random.ts';
import { bareHalf, HALF_M } from '../prepare/plans.ts';

const flag: Pacer = { flagS: 6300, by: 'gun' };
/** The pacer crosses the line ten seconds after the gun. */
const raceFor = (lineAfterGunS: number): PacerRace => ({
  shareAt: (d) => d / HALF_M,
  pacerLeadS: lineAfterGunS - 10,
});

/** The moment at which a runner is level with a pacer who runs evenly to their flag by the gun. */
const pressAt = (distanceM: number, lineAfterGunS: number): LevelWithPacer => ({
  ownS: 10 + ((6300 - 10) * distanceM) / HALF_M - lineAfterGunS,
  lineAfterGunS,
  distanceM,
  distanceSdM: 5,
});

describe('the share of an even effort', () => {
  test('on a level course is the share of the way, whatever the plan wins where', () => {
    const plan: RacePlan = {
      ...bareHalf,
      opening: { untilM: 1500, quickerSPerKm: 12 },
      push: { fromM: 15_000, quickerSPerKm: 9 },
    };
    const share = evenShareAt(plan, scheduleOf(plan, null));
    for (const part of [0.05, 0.3, 0.5, 0.8, 1]) expect(share(part * HALF_M)).toBeCloseTo(part, 9);
  });
});

describe('where the pacer is heading', () => {
  test('an even pacer is on their flag wherever one meets them, whatever the own clock says', () => {
    const place = fc.double({ min: 500, max: HALF_M, noNaN: true });
    void fc.assert(
      fc.property(place, fc.double({ min: 10, max: 600, noNaN: true }), (distanceM, lineAfterGunS) => {
        const heading = pacerHeading(pressAt(distanceM, lineAfterGunS), raceFor(lineAfterGunS), flag);
        expect(heading.offFlag.s).toBeCloseTo(0, 6);
        expect(heading.gun.s).toBeCloseTo(6300, 6);
        expect(heading.runnerOwn.s).toBeCloseTo(6300 - lineAfterGunS, 6);
      }),
    );
  });

  test('who runs by their own clock is measured by it', () => {
    const heading = pacerHeading(pressAt(10_000, 95), raceFor(95), { flagS: 6300, by: 'own' });
    expect(heading.offFlag.s).toBeCloseTo(-10, 6);
  });

  test('hills count: behind by the clock on the way up is not behind the flag', () => {
    // The first half of the course takes 52 % of an even effort.
    const hilly: PacerRace = {
      pacerLeadS: 0,
      shareAt: (d) =>
        d < HALF_M / 2 ? (0.52 * d) / (HALF_M / 2) : 0.52 + (0.48 * (d - HALF_M / 2)) / (HALF_M / 2),
    };
    const press = { ownS: 0.52 * 6300, lineAfterGunS: 0, distanceM: HALF_M / 2, distanceSdM: 3 };
    expect(pacerHeading(press, hilly, flag).offFlag.s).toBeCloseTo(0, 6);
    expect(pacerHeading(press, { ...hilly, shareAt: (d) => d / HALF_M }, flag).offFlag.s).toBeCloseTo(252, 6);
  });

  test('is the surer the further on, and vague where starts are unknown', () => {
    const headingAt = (distanceM: number, lineAfterGunS: number | null, pacerLeadS: number | null) =>
      pacerHeading({ ...pressAt(distanceM, 60), lineAfterGunS }, { ...raceFor(60), pacerLeadS }, flag);
    const known = [1000, 3000, 8000, 16_000, 21_000].map((d) => headingAt(d, 60, 50).offFlag.sdS);
    expect(known).toEqual([...known].sort((a, b) => b - a));
    expect(known.at(-1)).toBeLessThan(3);
    expect(headingAt(3000, null, null).offFlag.sdS).toBeGreaterThan(150);
    // Side by side over the line, the gun does not matter to one's own clock.
    expect(headingAt(3000, null, 0).runnerOwn.sdS).toBe(headingAt(3000, 60, 0).runnerOwn.sdS);
  });

  test('its error is true: 95 % of simulated pacers finish inside 1.96 of it', () => {
    const chance = chanceOf(4, 4);
    const inside = { gun: 0, runnerOwn: 0 };
    const many = 2000;
    for (let n = 0; n < many; n++) {
      const d = 2000 + 17_000 * chance.uniform();
      const line = 90 * chance.uniform();
      const pacerLine = line * chance.uniform();
      const soFarS = 6290 + 60 * chance.normal();
      const truthGunS =
        pacerLine + (soFarS * d) / HALF_M + soFarS * (1 - d / HALF_M) * (1 + 0.005 * chance.normal());
      const press = {
        ownS: pacerLine + (soFarS * d) / HALF_M - line + chance.normal(),
        lineAfterGunS: line,
        distanceM: d + 8 * chance.normal(),
        distanceSdM: 8,
      };
      const heading = pacerHeading(press, { ...raceFor(line), pacerLeadS: null }, flag);
      if (Math.abs(heading.gun.s - truthGunS) < 1.96 * heading.gun.sdS) inside.gun++;
      if (Math.abs(heading.runnerOwn.s - (truthGunS - line)) < 1.96 * heading.runnerOwn.sdS)
        inside.runnerOwn++;
    }
    // An even unknown has no tails, so a little over 95 % is right. Fixed seed.
    for (const count of [inside.gun, inside.runnerOwn]) {
      expect(count / many).toBeGreaterThan(0.93);
      expect(count / many).toBeLessThan(0.985);
    }
  });
});

describe('whether to go with them', () => {
  const adviceAt = (press: LevelWithPacer, goalS: number, goalBy: 'own' | 'gun' = 'own') =>
    adviceFor(pacerHeading(press, raceFor(press.lineAfterGunS ?? 90), flag), goalS, goalBy);

  test('a pacer who is heading for the goal', () => {
    expect(adviceAt(pressAt(12_000, 60), 6240)).toBe('with');
  });

  test('the flag by the gun is a minute quicker for who crossed a minute late: the own clock decides', () => {
    expect(adviceAt(pressAt(15_000, 120), 6300)).toBe('let go');
    expect(adviceAt(pressAt(15_000, 120), 6300, 'gun')).toBe('with');
  });

  test('a pacer who went out too quick is let go', () => {
    const early = { ...pressAt(10_000, 30), ownS: pressAt(10_000, 30).ownS - 50 };
    expect(adviceAt(early, 6270)).toBe('let go');
  });

  test('a pacer who is late is passed', () => {
    const late = { ...pressAt(10_000, 30), ownS: pressAt(10_000, 30).ownS + 60 };
    expect(adviceAt(late, 6270)).toBe('go past');
  });

  test('in the first kilometre nobody can tell', () => {
    const vague = { ...pressAt(900, 60), lineAfterGunS: null };
    const heading = pacerHeading(vague, { ...raceFor(60), pacerLeadS: null }, flag);
    expect(adviceFor(heading, 6300, 'own')).toBe('unsure');
  });
});
