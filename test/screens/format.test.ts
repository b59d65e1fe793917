import { describe, expect, test } from 'vitest';
import { clock, distance, pace, sounded, span } from '../../src/screens/format.ts';

describe('a clock', () => {
  test.each([
    [0, '0:00'],
    [59.99, '0:59'],
    [60, '1:00'],
    [3599.9, '59:59'],
    [3725, '1:02:05'],
    [-3, '0:00'],
  ])('of %f s reads %s: whole seconds that have passed', (seconds, text) => {
    expect(clock(seconds)).toBe(text);
  });

  test('rounds what is planned, and never to a sixtieth second', () => {
    expect(span(59.6)).toBe('1:00');
    expect(span(3599.5)).toBe('1:00:00');
  });
});

describe('pace and distance', () => {
  // Common practice: 90 minutes for a half marathon are 4:16 per km and 6:52 per mile.
  test('are in the unit asked for', () => {
    const paceSPerKm = 5400 / 21.0975;
    expect(pace(paceSPerKm, 'km')).toBe('4:16');
    expect(pace(paceSPerKm, 'mile')).toBe('6:52');
    expect(distance(1609.344, 'mile')).toBe('1.00');
    expect(distance(21_097.5, 'km', 4)).toBe('21.0975');
  });

  test('of one who stands is a dash', () => {
    expect(pace(Number.POSITIVE_INFINITY, 'km')).toBe('–');
  });
});

describe('a drift', () => {
  test.each([
    [3.6, 'up', '4'],
    [-3.6, 'down', '4'],
    [0.4, 'even', '0'],
    [-0.4, 'even', '0'],
    [99.4, 'up', '99'],
    [-125, 'down', '2:05'],
  ])('of %f s is shown %s with %s and no sign', (aheadS, side, figure) => {
    expect(sounded(aheadS)).toEqual({ side, figure });
  });
});
