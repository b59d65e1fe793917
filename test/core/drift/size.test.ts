import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isSized, sizeOf } from '../../../src/core/drift/size.ts';

const PACE_S_PER_KM = 280;
const now = (quickerSPerKm: number, speedSdMps: number) => ({
  rate: 1 + quickerSPerKm / PACE_S_PER_KM,
  speedSdMps,
  paceSPerKm: PACE_S_PER_KM,
  quickIsFine: 0,
  slowIsFine: 0,
});

describe('the size of a departure', () => {
  test('is what goes beyond what is welcome', () => {
    const late = { ...now(15, 0.005), quickIsFine: 5 / PACE_S_PER_KM };
    expect(sizeOf('quick', late).sPerKm).toBeCloseTo(10, 1);
    expect(sizeOf('slow', { ...now(-15, 0.005), slowIsFine: 5 / PACE_S_PER_KM }).sPerKm).toBeCloseTo(10, 1);
  });

  test('well known it is what is seen, hardly known what is usual', () => {
    expect(sizeOf('quick', now(15, 0.005)).sPerKm).toBeCloseTo(15, 1);
    expect(sizeOf('slow', now(-15, 0.005)).sPerKm).toBeCloseTo(15, 1);
    expect(sizeOf('quick', now(30, 3)).sPerKm).toBeCloseTo(9, 0);
    expect(sizeOf('quick', now(30, 3)).sdSPerKm).toBeCloseTo(7, 0);
  });

  test('lies between the two, and is never known worse than either', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 60, noNaN: true }),
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        (quicker, sd) => {
          const { sPerKm, sdSPerKm, seenSPerKm } = sizeOf('quick', now(quicker, sd));
          expect(seenSPerKm).toBeCloseTo(quicker, 6);
          expect(sPerKm).toBeGreaterThanOrEqual(Math.min(9, quicker) - 1e-9);
          expect(sPerKm).toBeLessThanOrEqual(Math.max(9, quicker) + 1e-9);
          expect(sdSPerKm).toBeLessThan(7);
        },
      ),
    );
  });
});

test('a word about pace waits until the speed is known, but not for ever', () => {
  expect(isSized(now(5, 0.06), 60, true)).toBe(true);
  expect(isSized(now(5, 0.1), 60, true)).toBe(false);
  expect(isSized(now(5, 0.1), 200, true)).toBe(true);
  expect(isSized(now(5, 0.1), 200, false)).toBe(false);
  expect(isSized(now(5, 0.1), 500, false)).toBe(true);
});
