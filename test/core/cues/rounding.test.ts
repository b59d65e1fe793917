import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aheadFor, byFor, forecastFor, paceFor, timeFor } from '../../../src/core/cues/rounding.ts';
import { normalBelow } from '../../../src/core/units/normal.ts';

const ahead = fc.double({ min: -7000, max: 7000, noNaN: true });
const sd = fc.double({ min: 0, max: 120, noNaN: true });
/** Probability that a normal value about `mean` lies within `half` of `middle`. */
const within = (middle: number, half: number, mean: number, deviation: number): number =>
  deviation === 0
    ? Number(Math.abs(middle - mean) <= half)
    : normalBelow((middle + half - mean) / deviation) - normalBelow((middle - half - mean) / deviation);

describe('drift as it is said', () => {
  test.each([
    ["the contract's example", 1.7, 0.6, { side: 'up', seconds: 2, sure: true }],
    ['to the second where it is known', -3.4, 0.9, { side: 'down', seconds: 3, sure: true }],
    ['in twos', -9.3, 1.8, { side: 'down', seconds: 10, sure: true }],
    ['in fives', 12.3, 3, { side: 'up', seconds: 10, sure: true }],
    ['in tens', 44, 7, { side: 'up', seconds: 40, sure: true }],
    ['not sure', 9, 5, { side: 'up', seconds: 10, sure: false }],
    ['inside the noise', 1, 1, { side: 'even', seconds: 0, sure: true }],
    ['inside much noise', -5, 6, { side: 'even', seconds: 0, sure: false }],
    ['whole minutes from ten on', -754, 1, { side: 'down', seconds: 780, sure: true }],
    ['at most 99 minutes', -99_999, 1, { side: 'down', seconds: 5940, sure: true }],
  ])('%s', (_what, aheadS, sdS, said) => {
    expect(aheadFor(aheadS, sdS)).toEqual(said);
  });

  test('by dead reckoning is never sure', () => {
    fc.assert(fc.property(ahead, sd, (a, s) => !aheadFor(a, s, true).sure));
  });

  test('names a side only when it is right nine times in ten', () => {
    fc.assert(
      fc.property(ahead, sd, (a, s) => {
        const { side } = aheadFor(a, s);
        if (side === 'even') return;
        expect(within(side === 'up' ? 1e6 : -1e6, 1e6, a, s)).toBeGreaterThan(0.899);
      }),
    );
  });

  test('is sure of a number only where half of it or more cannot be noise', () => {
    fc.assert(
      fc.property(ahead, sd, (a, s) => {
        const said = aheadFor(a, s);
        if (said.side !== 'even' && said.sure) expect(s).toBeLessThanOrEqual(Math.abs(a) / 2);
      }),
    );
  });

  test('claims no more than is known: the truth lies within a step of the number more often than not', () => {
    fc.assert(
      fc.property(ahead, fc.double({ min: 0, max: 60, noNaN: true }), (a, s) => {
        const { side, seconds } = aheadFor(a, s);
        if (side === 'even' || seconds >= 600) return;
        const step = [1, 2, 5, 10, 30, 60].find((x) => x >= s) ?? 60;
        expect(seconds % step).toBe(0);
        expect(within(side === 'up' ? seconds : -seconds, step, a, s)).toBeGreaterThan(0.62);
      }),
    );
  });

  test('is symmetric, whole and in range', () => {
    fc.assert(
      fc.property(ahead, sd, (a, s) => {
        const up = aheadFor(a, s);
        const down = aheadFor(-a, s);
        expect(down.seconds).toBe(up.seconds);
        expect(Number.isInteger(up.seconds)).toBe(true);
        expect(up.seconds >= 0 && up.seconds <= 5940).toBe(true);
        expect(up.seconds === 0).toBe(up.side === 'even');
        expect(up.seconds > 600 ? up.seconds % 60 : 0).toBe(0);
      }),
    );
  });
});

describe('times as they are said', () => {
  test('to the second when taken well, in fives and tens when not', () => {
    expect(timeFor(1271.9, 0.6)).toBe(1272);
    expect(timeFor(1271.9, 2.4)).toBe(1272);
    expect(timeFor(1271.9, 3)).toBe(1270);
    expect(timeFor(1276, 20)).toBe(1280);
  });

  test('a forecast is coarser than a time that was taken', () => {
    expect(forecastFor(6214, 33)).toBe(6210);
    expect(forecastFor(6214, 60)).toBe(6240);
    expect(forecastFor(6214, 1)).toBe(6214);
  });

  test('stay within what there are words for', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e7, max: 1e7, noNaN: true }), sd, (t, s) => {
        for (const said of [timeFor(t, s), forecastFor(t, s)]) {
          expect(Number.isInteger(said)).toBe(true);
          expect(said >= 0 && said <= 35_999).toBe(true);
        }
      }),
    );
  });
});

describe('paces as they are said', () => {
  test('goal pace of 1:44:00 over a half', () => {
    expect(paceFor((6240 / 21_097.5) * 1000, 'km')).toEqual({ sPerUnit: 296, unit: 'km' });
    expect(paceFor((6240 / 21_097.5) * 1000, 'mile')).toEqual({ sPerUnit: 476, unit: 'mile' });
  });

  test('how much quicker or slower comes in steps that are known, and is never nothing', () => {
    expect(byFor(6.2, 0.8)).toBe(6);
    expect(byFor(6.2, 1.7)).toBe(6);
    expect(byFor(6.9, 2.4)).toBe(6);
    expect(byFor(6.2, 3)).toBe(5);
    expect(byFor(13.2, 8)).toBe(15);
    expect(byFor(1, 4)).toBe(5);
    expect(byFor(400, 4)).toBe(100);
  });
});
