import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CourseLine, measureLine } from '../../../src/core/course/line.ts';
import { parseRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { levelTimeS, scheduleOf } from '../../../src/core/plan/schedule.ts';
import { boardSplits, boardsM, checkpointSplits } from '../../../src/core/plan/splits.ts';

type Plan = Parameters<typeof scheduleOf>[0];

/** Plans that a file could hold: legs in order, no leg quicker than a human. */
const plans: fc.Arbitrary<Plan> = fc
  .record({
    distanceM: fc.double({ min: 100, max: 100_000, noNaN: true }),
    paceSPerKm: fc.double({ min: 160, max: 900, noNaN: true }),
    cuts: fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })),
    openingWin: fc.double({ min: -60, max: 60, noNaN: true }),
    pushWin: fc.double({ min: 0, max: 60, noNaN: true }),
    pacing: fc.constantFrom('effort', 'pace'),
    openingWins: fc.constantFrom('kept', 'spent'),
  })
  .map(({ distanceM, paceSPerKm, cuts, openingWin, pushWin, pacing, openingWins }) => ({
    distanceM,
    goalS: (paceSPerKm * distanceM) / 1000,
    opening: { untilM: Math.min(...cuts) * distanceM, quickerSPerKm: openingWin },
    push: { fromM: Math.max(...cuts) * distanceM, quickerSPerKm: pushWin },
    pacing,
    openingWins,
  }))
  // What a spent opening takes back must leave a pace that can be run; the reader sees to that.
  .filter(({ distanceM, goalS, opening, push }) => {
    const backSPerKm = (opening.quickerSPerKm * opening.untilM) / (distanceM - opening.untilM);
    return goalS / distanceM + (Math.min(0, backSPerKm) - push.quickerSPerKm) / 1000 > 1 / 12;
  });

/** A straight course north with the given heights, evenly spaced. */
const hilly = (heights: readonly number[], officialM: number): CourseLine => {
  const stepDeg = officialM / (heights.length - 1) / 111_200;
  const points = heights.map((elevationM, i) => ({
    latitudeDeg: 54 + i * stepDeg,
    longitudeDeg: 7,
    elevationM,
  }));
  const line = measureLine(points, officialM);
  if (!line) throw new Error('no line');
  return line;
};

const heights = fc.array(fc.double({ min: -20, max: 300, noNaN: true }), { minLength: 2, maxLength: 80 });

describe('scheduleOf, laws', () => {
  it('is strictly increasing from 0 to the contract’s total, on the level and on hills', () => {
    fc.assert(
      fc.property(plans, heights, fc.boolean(), (plan, h, onHills) => {
        const s = scheduleOf(plan, onHills ? hilly(h, plan.distanceM) : null);
        expect(s.timeAtS(0)).toBe(0);
        expect(s.timeAtS(plan.distanceM)).toBeCloseTo(levelTimeS(plan, plan.distanceM), 6);
        let before = -1;
        for (let i = 0; i <= 200; i++) {
          const t = s.timeAtS((plan.distanceM * i) / 200);
          expect(t).toBeGreaterThan(before);
          before = t;
        }
      }),
    );
  });

  it('gives back a spent opening evenly, to the goal itself at the line', () => {
    const plan: Plan = {
      distanceM: 10_000,
      goalS: 3000,
      opening: { untilM: 2000, quickerSPerKm: 8 },
      openingWins: 'spent',
      push: null,
      pacing: 'pace',
    };
    const s = scheduleOf(plan, null);
    expect(s.timeAtS(2000)).toBeCloseTo(584, 9);
    // Half of the 16 s are given back half-way between the opening's end and the line.
    expect(s.timeAtS(6000)).toBeCloseTo(1792, 9);
    expect(s.timeAtS(10_000)).toBeCloseTo(3000, 9);
  });

  it('agrees with its inverse', () => {
    fc.assert(
      fc.property(plans, heights, fc.double({ min: 0, max: 1, noNaN: true }), (plan, h, k) => {
        const s = scheduleOf(plan, hilly(h, plan.distanceM));
        const d = k * plan.distanceM;
        expect(s.distanceAtM(s.timeAtS(d))).toBeCloseTo(d, 5);
      }),
    );
  });

  it('is the contract’s formula to the letter on a course without heights', () => {
    fc.assert(
      fc.property(plans, fc.double({ min: 0, max: 1, noNaN: true }), (plan, k) => {
        const d = k * plan.distanceM;
        const { opening: o, push: p } = plan;
        const wonS =
          ((o?.quickerSPerKm ?? 0) / 1000) * Math.min(d, o?.untilM ?? 0) +
          ((p?.quickerSPerKm ?? 0) / 1000) * Math.max(0, d - (p?.fromM ?? 0));
        expect(scheduleOf(plan, null).timeAtS(d)).toBeCloseTo((plan.goalS / plan.distanceM) * d - wonS, 6);
      }),
    );
  });

  it('keeps to the course beyond its ends', () => {
    const s = scheduleOf({ distanceM: 5000, goalS: 1500, opening: null, push: null, pacing: 'pace' }, null);
    expect([s.timeAtS(-5), s.timeAtS(6000), s.distanceAtM(-1), s.distanceAtM(1e9)]).toEqual([
      0, 1500, 0, 5000,
    ]);
    expect([s.paceAtSPerKm(-5), s.paceAtSPerKm(5000)]).toEqual([300, 300]);
  });
});

describe('scheduleOf on hills', () => {
  const even: Plan = { distanceM: 10_000, goalS: 3000, opening: null, push: null, pacing: 'effort' };
  const upAndDown = hilly([0, 0, 40, 40, 0, 0], 10_000);

  it('goes slower up, quicker down, and so a little quicker on the level', () => {
    const s = scheduleOf(even, upAndDown);
    expect(s.paceAtSPerKm(3000)).toBeGreaterThan(s.paceAtSPerKm(5000) + 20);
    expect(s.paceAtSPerKm(7000)).toBeLessThan(s.paceAtSPerKm(5000) - 20);
    expect(s.paceAtSPerKm(500)).toBeLessThan(300.5);
  });

  it('leaves even pace alone where the plan asks for it', () => {
    expect(scheduleOf({ ...even, pacing: 'pace' }, upAndDown).timeAtS(3210)).toBeCloseTo(963, 9);
  });

  it('spreads no more than a few seconds over a flat course whose heights shake by a metre', () => {
    const shaken = hilly(
      Array.from({ length: 1001 }, (_, i) => 12 + (((i * 7919) % 13) - 6) / 6),
      10_000,
    );
    const s = scheduleOf(even, shaken);
    for (let d = 0; d <= 10_000; d += 100) expect(Math.abs(s.timeAtS(d) - 0.3 * d)).toBeLessThan(2);
  });
});

describe('splits', () => {
  const parsed = parseRacePlan(
    '{"distanceM": 21097.5, "goalS": 6240, "checkpointsM": [20000, 5000], "unit": "mile"}',
  );
  if (!parsed.ok) throw new Error('plan refused');
  const plan = parsed.value;
  const schedule = scheduleOf(plan, null);

  it('has one row a board and the finish last', () => {
    expect(boardsM(plan)).toHaveLength(13);
    const rows = boardSplits(plan, schedule);
    expect(rows).toHaveLength(14);
    expect(rows.at(-1)?.timeS).toBeCloseTo(6240, 9);
    expect(rows.reduce((sum, r) => sum + r.splitS, 0)).toBeCloseTo(6240, 9);
  });

  it('has no board at the finish itself', () => {
    expect(boardsM({ distanceM: 5000, unit: 'km' })).toEqual([1000, 2000, 3000, 4000]);
  });

  it('has the checkpoints in order', () => {
    expect(checkpointSplits(plan, schedule).map((r) => r.atM)).toEqual([5000, 20_000, 21_097.5]);
  });
});
