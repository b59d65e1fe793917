import { describe, expect, test } from 'vitest';
import { breakfastFor, carbohydrateDuring, loadingFor } from '../../src/core/prepare/fuel/carbohydrate.ts';

const H = 3600;

describe('Burke et al. 2011, Jeukendrup 2014 (abstracts read): carbohydrate on the way', () => {
  test.each([
    [0.8 * H, 0, 0], // about an hour: small amounts or a mouth rinse
    [1.5 * H, 30, 60], // 1 to 2.5 h: 30-60 g/h
    [2.4 * H, 30, 60],
    [3.5 * H, 30, 90], // beyond 2.5 h: up to 90 g/h
  ])('%d s', (durationS, lower, upper) => {
    expect(carbohydrateDuring(durationS)).toMatchObject({ lower, upper });
  });

  test('is not scaled by body mass: the function does not ask for it', () => {
    expect(carbohydrateDuring).toHaveLength(1);
  });
});

describe('Wallis and Podlogar 2022 (read): 1-4 g/kg in the 1-4 h before efforts over 60 min', () => {
  test('breakfast lies inside, for 70 kg', () => {
    const breakfast = breakfastFor(1.75 * H, 70);
    expect(breakfast.carbohydrate.gPerKg).toMatchObject({ lower: 1, upper: 4 });
    expect(breakfast.carbohydrate.grams).toEqual({ lower: 70, upper: 280 });
    expect(breakfast.minutesBefore.fewest).toBeGreaterThanOrEqual(60);
    expect(breakfast.minutesBefore.most).toBeLessThanOrEqual(240);
  });

  test('without a mass only grams per kilogram are said', () => {
    expect(breakfastFor(2 * H, null).carbohydrate.grams).toBeNull();
  });
});

describe('the days before', () => {
  test('over 90 min: 10-12 g/kg a day for 36 to 48 h (a secondary page, read)', () => {
    const loading = loadingFor(1.75 * H, 60);
    expect(loading?.perDay.gPerKg).toMatchObject({ lower: 10, upper: 12, source: { kind: 'read' } });
    expect(loading?.perDay.grams).toEqual({ lower: 600, upper: 720 });
    expect(loading?.hours).toEqual({ fewest: 36, most: 48 });
  });

  test('60 to 90 min: 7-12 g/kg in 24 h (from memory, and marked so)', () => {
    expect(loadingFor(1.4 * H, 60)?.perDay.gPerKg).toMatchObject({
      lower: 7,
      upper: 12,
      source: { kind: 'memory' },
    });
  });

  test('under an hour: nothing special', () => {
    expect(loadingFor(0.7 * H, 60)).toBeNull();
  });
});
