import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MORNING, type MorningStep } from '../../../../src/core/plan/morning.ts';
import { layersFor as layersForMessage } from '../../../../src/core/prepare/day/layers.ts';
import { planRaceDay as planRaceDayMessage } from '../../../../src/core/prepare/day/raceDay.ts';
import {
  parseRaceDayWish,
  RACE_DAY_LIMITS,
  type RaceDayWish,
} from '../../../../src/core/prepare/day/raceDayWish.ts';
import { timeOfDayText } from '../../../../src/core/prepare/format.ts';
import { inEnglish } from '../../../support/english.ts';

const planRaceDay = inEnglish(planRaceDayMessage);
const layersFor = inEnglish(layersForMessage);

const usual: RaceDayWish = {
  startMinute: 9 * 60 + 30,
  penClosesMin: 10,
  travelMin: 40,
  temperatureC: 11,
  durationS: 6240,
  massKg: 68,
};

const within = ({ least, most }: { least: number; most: number }) => fc.integer({ min: least, max: most });
const anyWish: fc.Arbitrary<RaceDayWish> = fc.record({
  startMinute: within(RACE_DAY_LIMITS.startMinute),
  penClosesMin: within(RACE_DAY_LIMITS.penClosesMin),
  travelMin: within(RACE_DAY_LIMITS.travelMin),
  temperatureC: fc.option(within(RACE_DAY_LIMITS.temperatureC)),
  durationS: within(RACE_DAY_LIMITS.durationS),
  massKg: fc.option(within(RACE_DAY_LIMITS.massKg)),
});

test('an ordinary race day, as the runner reads it', () => {
  const lines = planRaceDay(usual).map((i) => `${timeOfDayText(i.clockMin)} ${i.title}`);
  expect(lines).toEqual([
    '06:30 Get up',
    '07:00 Breakfast',
    '07:25 Leave',
    '08:05 Arrive',
    '08:30 Last full drink',
    '08:49 Warm-up: 15 min easy',
    '09:04 5 strides',
    '09:12 Warm kit off, layers on',
    '09:15 In the pen',
    '09:30 Gun',
  ]);
});

describe('laws of a race day', () => {
  const holds = (
    law: (at: Record<MorningStep, { from: number; until: number }>, wish: RaceDayWish) => void,
  ) =>
    void fc.assert(
      fc.property(anyWish, (wish) => {
        const items = planRaceDay(wish);
        const at = Object.fromEntries(items.map((i) => [i.kind, { from: i.fromMin, until: i.untilMin }]));
        law(at as Record<MorningStep, { from: number; until: number }>, wish);
      }),
    );

  test('every kind once, by the clock, nothing after the gun, nothing that ends before it begins', () => {
    void fc.assert(
      fc.property(anyWish, (wish) => {
        const items = planRaceDay(wish);
        expect(items.map((i) => i.kind).sort()).toEqual([...MORNING].sort());
        for (const [i, item] of items.entries()) {
          expect(Number.isInteger(item.fromMin)).toBe(true);
          expect(item.untilMin).toBeGreaterThanOrEqual(item.fromMin);
          expect(item.untilMin).toBeLessThanOrEqual(0);
          expect(item.fromMin).toBeGreaterThanOrEqual(items[i - 1]?.fromMin ?? -Infinity);
          expect(item.clockMin).toBe(wish.startMinute + item.fromMin);
          expect(item.reason).not.toBe('');
        }
      }),
    );
  });

  test('the chain of the morning keeps its order', () => {
    holds((at) => {
      expect(at.wake.from).toBeLessThan(at.breakfast.from);
      expect(at.wake.from).toBeLessThan(at.leave.from);
      expect(at.leave.until).toBe(at.arrive.from);
      expect(at.arrive.until).toBe(at.warmUp.from);
      expect(at.warmUp.until).toBe(at.strides.from);
      expect(at.strides.until).toBe(at.layers.from);
      expect(at.layers.until).toBe(at.pen.from);
      expect(at.pen.until).toBe(at.gun.from);
      expect(at.breakfast.from).toBeLessThan(at.lastDrink.from);
      expect(at.lastDrink.from).toBeLessThan(at.warmUp.from);
    });
  });

  test('breakfast is two to three hours before the gun, and never in the doorway', () => {
    holds((at) => {
      expect(at.breakfast.from).toBeGreaterThanOrEqual(-180);
      expect(at.breakfast.from).toBeLessThanOrEqual(-120);
      if (at.breakfast.from < at.leave.from)
        expect(at.leave.from - at.breakfast.from).toBeGreaterThanOrEqual(25);
    });
  });

  test('the warm-up is 10 to 20 min, with time for 4 to 6 strides, and is over before the pen closes', () => {
    holds((at, wish) => {
      const easyMin = at.warmUp.until - at.warmUp.from;
      expect(easyMin).toBeGreaterThanOrEqual(10);
      expect(easyMin).toBeLessThanOrEqual(20);
      expect(at.strides.until - at.strides.from).toBeGreaterThanOrEqual(6);
      expect(at.strides.until).toBeLessThan(-wish.penClosesMin);
      expect(at.pen.from).toBe(-wish.penClosesMin - 5);
    });
  });

  test('travel fits, and the last full drink is at least an hour before the gun', () => {
    holds((at, wish) => {
      expect(at.arrive.from - at.leave.from).toBe(wish.travelMin);
      expect(at.lastDrink.from).toBeLessThanOrEqual(-60);
    });
  });
});

describe('what changes the day', () => {
  const find = (wish: RaceDayWish, kind: MorningStep) => planRaceDay(wish).find((i) => i.kind === kind);

  test('a long journey: breakfast is packed', () => {
    expect(find({ ...usual, travelMin: 150 }, 'breakfast')?.title).toContain('packed');
    expect(find(usual, 'breakfast')?.title).toBe('Breakfast');
  });

  test('heat and long races: a short warm-up; short races: a long one', () => {
    expect(find({ ...usual, temperatureC: 25 }, 'warmUp')?.title).toContain('10 min');
    expect(find({ ...usual, durationS: 14_000 }, 'warmUp')?.title).toContain('10 min');
    expect(find({ ...usual, durationS: 2400 }, 'warmUp')?.title).toContain('20 min');
  });

  test('a pen that closes early: stay warm in it', () => {
    expect(find({ ...usual, penClosesMin: 40 }, 'pen')?.reason).toContain('closes early');
  });

  test('a race at half past midnight: the day begins on the day before', () => {
    const wake = find({ ...usual, startMinute: 30 }, 'wake');
    expect(wake?.clockMin).toBeLessThan(0);
    expect(timeOfDayText(wake?.clockMin ?? 0)).toBe('21:30');
  });

  test('breakfast in grams where the mass is known, per kilogram where not', () => {
    expect(find(usual, 'breakfast')?.reason).toContain('68 to 272 g');
    expect(find({ ...usual, massKg: null }, 'breakfast')?.reason).toContain('for each kg');
  });

  test('cautions stand where they belong', () => {
    expect(find(usual, 'breakfast')?.cautions).toContain('practised');
    expect(find(usual, 'lastDrink')?.cautions).toContain('thirst');
    expect(find(usual, 'warmUp')?.cautions).toContain('traffic');
    expect(find(usual, 'layers')?.cautions).toContain('rules');
  });

  test('the colder, the more to throw away', () => {
    const texts = [null, 3, 12, 18, 28].map((c) => layersFor(c).text);
    expect(new Set(texts).size).toBe(5);
    expect(texts[1]).toContain('gloves');
    expect(texts[4]).toContain('shade');
  });
});

describe('entries', () => {
  test.each([
    ['startMinute', 1440],
    ['startMinute', Number.NaN],
    ['penClosesMin', -1],
    ['penClosesMin', 91],
    ['travelMin', 601],
    ['temperatureC', 80],
    ['durationS', 0],
    ['massKg', 5],
  ])('%s of %s is refused by name', (field, value) => {
    const parsed = parseRaceDayWish({ ...usual, [field]: value });
    expect(parsed.ok ? 'accepted' : parsed.error.place).toBe(field);
  });

  test('part minutes err on the early side', () => {
    const parsed = parseRaceDayWish({ ...usual, travelMin: 40.2, penClosesMin: 9.5 });
    expect(parsed).toEqual({ ok: true, value: { ...usual, travelMin: 41, penClosesMin: 10 } });
  });
});
