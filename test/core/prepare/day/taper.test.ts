import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Weekday } from '../../../../src/core/prepare/day/civil.ts';
import { shareOut } from '../../../../src/core/prepare/day/shareOut.ts';
import { planTaper as planTaperMessage, type TaperWish } from '../../../../src/core/prepare/day/taper.ts';
import { inEnglish } from '../../../support/english.ts';
import { HALF_TAPER } from '../raceDays.ts';

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const planTaper = inEnglish(planTaperMessage);

const weekday = fc.integer({ min: 0, max: 6 }).map((n) => n as Weekday);
const anyWish: fc.Arbitrary<TaperWish> = fc
  .record({
    raceWeekday: weekday,
    weeklyKm: fc.double({ min: 10, max: 200, noNaN: true }),
    runDays: fc.uniqueArray(weekday, { minLength: 1, maxLength: 7 }),
    pick: fc.nat(),
    goalPaceSPerKm: fc.double({ min: 170, max: 600, noNaN: true }),
    raceDistanceM: fc.constantFrom(5000, 10_000, 21_097.5, 42_195),
    unit: fc.constantFrom('km' as const, 'mile' as const),
  })
  .map(({ pick, ...rest }) => ({ ...rest, longRunDay: rest.runDays[pick % rest.runDays.length] ?? 0 }));

test('the last two weeks of a runner with four runs and 50 km a week', () => {
  const lines = planTaper(HALF_TAPER)
    .days.filter((d) => d.kind !== 'rest')
    .map((d) => `${WEEKDAYS[d.weekday]} ${d.title}`);
  expect(lines).toEqual([
    'Sunday 10.8 km steady, the longest of the week',
    'Tuesday 5.4 km easy',
    'Thursday 6.4 km with goal pace in it',
    'Saturday 5.4 km easy',
    'Sunday 8.9 km steady, the longest of the week',
    'Tuesday 5.4 km with goal pace in it',
    'Thursday 4.5 km easy',
    'Saturday 2.2 km very easy',
    'Sunday Race: half marathon',
  ]);
});

describe('laws of the taper', () => {
  const weeks = (wish: TaperWish) => {
    const { days } = planTaper(wish);
    return [days.slice(0, 7), days.slice(7, 14)];
  };

  test('fifteen days in order, the last one the race on its weekday', () => {
    void fc.assert(
      fc.property(anyWish, (wish) => {
        const { days } = planTaper(wish);
        expect(days.map((d) => d.dayOffset)).toEqual(Array.from({ length: 15 }, (_, i) => i - 14));
        expect(days.at(-1)).toMatchObject({ kind: 'race', weekday: wish.raceWeekday });
        for (const [i, day] of days.entries())
          if (i > 0) expect(day.weekday).toBe(((days[i - 1]?.weekday ?? 0) + 1) % 7);
      }),
    );
  });

  test('volume of each week is down 41 to 60 %, to the nearest 100 m', () => {
    void fc.assert(
      fc.property(anyWish, (wish) => {
        for (const week of weeks(wish)) {
          const kept = week.reduce((sum, d) => sum + d.distanceM, 0) / (wish.weeklyKm * 1000);
          const roundingPart = 50 / (wish.weeklyKm * 1000);
          expect(1 - kept).toBeGreaterThanOrEqual(0.41 - roundingPart);
          expect(1 - kept).toBeLessThanOrEqual(0.6 + roundingPart);
        }
      }),
    );
  });

  test('frequency is kept: runs on the usual days and no other', () => {
    void fc.assert(
      fc.property(anyWish, (wish) => {
        for (const week of weeks(wish))
          for (const day of week) {
            const runs = wish.runDays.includes(day.weekday);
            expect(day.kind === 'rest').toBe(!runs);
            expect(day.distanceM > 0).toBe(runs);
          }
      }),
    );
  });

  test('intensity is kept: goal pace or strides once a week; nothing hard in the last two days', () => {
    void fc.assert(
      fc.property(anyWish, (wish) => {
        for (const week of weeks(wish)) {
          const quick = week.filter((d) => /goal pace|strides/.test(`${d.title} ${d.detail}`));
          expect(quick.length).toBeGreaterThan(0);
        }
        for (const day of planTaper(wish).days.slice(12, 14))
          expect(['rest', 'easy', 'primer']).toContain(day.kind);
      }),
    );
  });
});

describe('sharing out', () => {
  test('adds up to the total in steps', () => {
    const weights = fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 1, maxLength: 10 });
    void fc.assert(
      fc.property(fc.double({ min: 0, max: 300_000, noNaN: true }), weights, (total, w) => {
        const shares = shareOut(total, w, 100);
        const sum = shares.reduce((a, b) => a + b, 0);
        expect(sum).toBe(w.some((x) => x > 0) ? 100 * Math.round(total / 100) : 0);
        for (const [i, share] of shares.entries()) if (w[i] === 0) expect(share).toBe(0);
      }),
    );
  });
});
