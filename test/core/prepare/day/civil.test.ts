import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  addDays,
  civilTime,
  dateOfDay,
  dayNumber,
  isCivilDate,
  weekdayOf,
} from '../../../../src/core/prepare/day/civil.ts';

const MS_PER_DAY = 86_400_000;

describe('dates', () => {
  test('agree with the platform over nine thousand years', () => {
    void fc.assert(
      fc.property(fc.integer({ min: -700_000, max: 2_900_000 }), (days) => {
        const date = dateOfDay(days);
        const theirs = new Date(days * MS_PER_DAY);
        expect(date).toEqual({
          year: theirs.getUTCFullYear(),
          month: theirs.getUTCMonth() + 1,
          day: theirs.getUTCDate(),
        });
        expect(dayNumber(date)).toBe(days);
        expect(weekdayOf(date)).toBe((theirs.getUTCDay() + 6) % 7);
      }),
    );
  });

  test('minutes fold to the day that they fall on', () => {
    expect(civilTime({ year: 2027, month: 3, day: 1 }, -30)).toEqual({
      date: { year: 2027, month: 2, day: 28 },
      minuteOfDay: 1410,
    });
    expect(addDays({ year: 2028, month: 2, day: 28 }, 1)).toEqual({ year: 2028, month: 2, day: 29 });
  });

  test.each([
    [2027, 2, 29, false],
    [2028, 2, 29, true],
    [1900, 2, 29, false],
    [2027, 13, 1, false],
    [2027, 4, 31, false],
    [2027, 4, 0, false],
    [2027.5, 4, 1, false],
    [Number.NaN, 4, 1, false],
    [2027, 4, 30, true],
  ])('%s-%s-%s exists: %s', (year, month, day, exists) => {
    expect(isCivilDate({ year, month, day })).toBe(exists);
  });
});
