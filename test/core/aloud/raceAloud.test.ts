import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Aloud, raceAloud } from '../../../src/core/aloud/aloud.ts';
import { type Places, raceWishes } from '../../../src/core/aloud/raceWishes.ts';
import { raceOf } from '../../../src/core/cues/race.ts';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { scheduleOf } from '../../../src/core/plan/schedule.ts';
import { ITEMS, OFFERS } from '../../../src/core/plan/supplies.ts';
import { demoCourse } from '../../../src/demo/course.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { spoken } from '../../../src/languages/en/spoken.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const voice = voiceOf(spoken.pack, spoken.words);
const level = (plan: RacePlan) => scheduleOf(plan, null);
const aloud = (plan: RacePlan, leadS = 10, places: Places = 'boards'): Aloud =>
  raceAloud(plan, level(plan), voice, { leadS, places });
const textsOf = ({ calls }: Aloud): string[] => calls.map((c) => c.utterance.text);

/** Between the end of a call and the begin of the next. */
const GAP_S = 2;

const anyPlan: fc.Arbitrary<RacePlan> = fc
  .record({
    distanceM: fc.integer({ min: 1500, max: 50_000 }),
    paceSPerKm: fc.integer({ min: 170, max: 600 }),
    unit: fc.constantFrom('km' as const, 'mile' as const),
    opens: fc.boolean(),
    pushes: fc.boolean(),
    checkpoints: fc.array(fc.double({ min: 0.01, max: 0.99, noNaN: true }), { maxLength: 12 }),
    stations: fc.array(
      fc.record({
        at: fc.double({ min: 0, max: 1, noNaN: true }),
        offers: fc.subarray([...OFFERS], { minLength: 1 }),
      }),
      { maxLength: 15 },
    ),
    fuel: fc.array(
      fc.record({ at: fc.double({ min: 0, max: 1, noNaN: true }), item: fc.constantFrom(...ITEMS) }),
      { maxLength: 10 },
    ),
  })
  .map(({ distanceM, paceSPerKm, unit, opens, pushes, checkpoints, stations, fuel }) => ({
    ...demoPlan,
    distanceM,
    goalS: (distanceM * paceSPerKm) / 1000,
    unit,
    opening: opens ? { untilM: 0.08 * distanceM, quickerSPerKm: 5 } : null,
    push: pushes ? { fromM: 0.85 * distanceM, quickerSPerKm: 4 } : null,
    checkpointsM: [...new Set(checkpoints.map((x) => Math.round(x * distanceM)))].sort((a, b) => a - b),
    stations: stations.map(({ at, offers }) => ({ atM: at * distanceM, offers })),
    fuel: fuel.map(({ at, item }) => ({ atM: at * distanceM, item })),
  }));

describe('a race plan said aloud by the clock', () => {
  test('goes from the start to the line', () => {
    const texts = textsOf(aloud(demoPlan));
    expect(texts.slice(0, 5)).toEqual([
      'Clock running.',
      'Opening. Hold four five zero per K until one point five K.',
      'By the plan at one K now.',
      'Settle at four fifty-six per K.',
      'By the plan at two K now.',
    ]);
    expect(texts).toContain('Take your gel in two hundred metres. Water follows.');
    expect(texts).toContain('By the plan halfway now.');
    expect(texts).toContain('Push to four fifty-two per K.');
    expect(texts.at(-1)).toBe('By the plan at twenty-one point one K now.');
  });

  test('tells goal and pace at once where no opening comes', () => {
    const [first] = textsOf(aloud({ ...demoPlan, opening: null }));
    expect(first).toMatch(/^Clock running\. Goal one hour forty-four minutes\. Hold four fifty-six/);
  });

  test('never says how the runner stands: it cannot know', () => {
    for (const text of textsOf(aloud(demoPlan))) expect(text).not.toMatch(/ahead|behind|on plan|split/i);
  });

  test('with checkpoints alone leaves the boards out', () => {
    const calls = aloud(demoPlan, 10, 'checkpoints').calls.filter((c) => c.kind === 'due');
    expect(calls.map((c) => c.atM)).toEqual(
      [...demoPlan.checkpointsM, demoPlan.distanceM].filter((m, i, all) => all.indexOf(m) === i),
    );
  });

  test('knows a board that stands elsewhere, and one that nobody knows', () => {
    const wrongBoards = [
      { saysM: 3000, standsAtM: 3080 },
      { saysM: 4000, standsAtM: null },
    ];
    const dueM = aloud({ ...demoPlan, wrongBoards })
      .calls.filter((c) => c.kind === 'due')
      .map((c) => c.atM);
    expect(dueM).toContain(3080);
    expect(dueM).not.toContain(3000);
    expect(dueM).not.toContain(4000);
  });

  test('counts down where there is room for it, and ends with a tone after the last word', () => {
    const counted = aloud(demoPlan, 10);
    expect(counted.tones.slice(0, 2)).toEqual([
      { atS: -9.5, tone: 'marker' },
      { atS: -3, tone: 'countdown' },
    ]);
    expect(aloud(demoPlan, 5).tones[0]).toEqual({ atS: -3, tone: 'countdown' });
    expect(aloud(demoPlan, 0).tones.map(({ tone }) => tone)).toEqual(['finish']);
    const last = counted.calls.at(-1);
    const endS = (last?.atS ?? 0) + (last?.utterance.durationS ?? 0);
    expect(counted.tones.at(-1)?.atS).toBeGreaterThan(endS);
  });

  test('follows the schedule of the hills', () => {
    const hilly = scheduleOf(demoPlan, demoCourse());
    const calls = raceAloud(demoPlan, hilly, voice, { leadS: 10, places: 'boards' }).calls;
    const dues = calls.filter((c) => c.kind === 'due');
    for (const { atS, atM } of dues) expect(atS).toBe(hilly.timeAtS(atM ?? 0));
    const apart = dues.map(({ atS, atM }) => Math.abs(atS - level(demoPlan).timeAtS(atM ?? 0)));
    expect(Math.max(...apart)).toBeGreaterThan(5);
  });
});

describe('of any race plan', () => {
  test('each call has its time, and none runs into another', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { calls, dropped } = aloud(plan);
        const wishes = raceWishes(raceOf(plan, level(plan), true), 'boards');
        expect(calls.length + dropped.length).toBe(wishes.length);
        for (const [i, call] of calls.entries()) {
          const before = calls[i - 1];
          if (before)
            expect(call.atS).toBeGreaterThanOrEqual(before.atS + before.utterance.durationS + GAP_S - 1e-9);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('a place is told when the plan is there, or not at all', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        for (const { kind, atS, atM } of aloud(plan).calls)
          if (kind === 'due') expect(atS).toBe(level(plan).timeAtS(atM ?? 0));
      }),
      { numRuns: 60 },
    );
  });

  test('what is ahead is told ahead: 60 to 600 m by the plan', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        for (const { kind, atS, atM } of aloud(plan).calls) {
          if (kind !== 'fuel' && kind !== 'station') continue;
          const inM = (atM ?? 0) - level(plan).distanceAtM(atS);
          expect(inM).toBeGreaterThanOrEqual(60 - 1e-6);
          expect(inM).toBeLessThanOrEqual(600 + 1e-6);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('start and finish are never dropped, and a checkpoint only for another one', () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        const { calls, dropped } = aloud(plan);
        expect(calls.some((c) => c.kind === 'start')).toBe(true);
        expect(calls.some((c) => c.kind === 'due' && c.atM === plan.distanceM)).toBe(true);
        for (const { atM, atS } of dropped) {
          if (!plan.checkpointsM.includes(atM ?? -1)) continue;
          const near = calls.some((c) => Math.abs(c.atS - atS) < 10);
          expect(near).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});
