import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { splitSdS } from '../../../src/core/cues/splitDoubt.ts';

const FINISH_M = 21_097.5;
const SPEED_MPS = 3.7;
const between = (km: number, sd1S: number, sd2S: number, hasLine = true): number =>
  splitSdS({ atM: 1000 * (km - 1), sdS: sd1S }, { atM: 1000 * km, sdS: sd2S }, FINISH_M, hasLine, SPEED_MPS);

describe('the doubt about a split', () => {
  test('by a receiver alone each crossing errs for itself', () => {
    expect(between(10, 0.8, 0.8)).toBeCloseTo(Math.hypot(0.8, 0.8), 9);
    expect(between(10, 1.2, 0.4)).toBeCloseTo(Math.hypot(1.2, 0.4), 9);
  });

  test('by a line in doubt neighbours err together, least so near the finish', () => {
    expect(between(10, 7, 7)).toBeLessThan(4);
    expect(between(10, 7, 7)).toBeGreaterThan(2);
    expect(between(20, 7, 7)).toBeGreaterThan(between(10, 7, 7));
  });

  test('without a line the scale is in doubt, and a kilometre of it as a share of the way', () => {
    expect(between(10, 10.8, 12, false)).toBeLessThan(4);
    expect(between(2, 6, 12, false)).toBeGreaterThan(between(10, 10.8, 12, false));
  });

  test('a board that was pressed at shares nothing with the next', () => {
    expect(between(10, 0.8, 12, false)).toBeGreaterThan(11);
    expect(between(10, 12, 0.8, false)).toBeGreaterThan(11);
  });

  test('from the start it is the doubt of the crossing', () => {
    expect(splitSdS({ atM: 0, sdS: 0 }, { atM: 1000, sdS: 5 }, FINISH_M, true, SPEED_MPS)).toBe(5);
  });

  test('is a deviation: never below that of a receiver, never above that of two strangers', () => {
    const sd = fc.double({ min: 0.1, max: 60, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 21 }), sd, sd, fc.boolean(), (km, sd1, sd2, hasLine) => {
        const ownS = (s: number): number => Math.min(s, 6 / SPEED_MPS);
        const doubt = between(km, sd1, sd2, hasLine);
        expect(doubt).toBeGreaterThanOrEqual(Math.hypot(ownS(sd1), ownS(sd2)) - 1e-9);
        expect(doubt).toBeLessThanOrEqual(Math.hypot(sd1, sd2) + 1e-9);
      }),
    );
  });
});
