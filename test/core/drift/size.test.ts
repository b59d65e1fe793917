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
    const plain = sizeOf('quick', now(10, 0.05));
    expect(sizeOf('quick', { ...now(15, 0.05), quickIsFine: 5 / PACE_S_PER_KM }).sPerKm).toBeCloseTo(
      plain.sPerKm,
      6,
    );
    expect(sizeOf('slow', { ...now(-15, 0.05), slowIsFine: 5 / PACE_S_PER_KM }).sPerKm).toBeCloseTo(
      plain.sPerKm,
      6,
    );
  });

  test('well known it is nearly what is seen, hardly known what is usual', () => {
    for (const seen of [6, 15, 25])
      expect(Math.abs(sizeOf('quick', now(seen, 0.005)).sPerKm - seen)).toBeLessThan(2);
    expect(sizeOf('quick', now(30, 3)).sPerKm).toBeCloseTo(5.7, 0);
    expect(sizeOf('slow', now(-30, 3)).sPerKm).toBeCloseTo(5.7, 0);
  });

  test('in town half of what is seen where that is usual, nearly all where it is large', () => {
    const inTown = (seen: number): number => sizeOf('slow', now(-seen, 0.064)).sPerKm;
    expect(inTown(9)).toBeGreaterThan(4);
    expect(inTown(9)).toBeLessThan(6.5);
    expect(inTown(30)).toBeGreaterThan(20);
  });

  test('grows with what is seen, and lies between that and what departures are like', () => {
    const size = (quicker: number, sd: number) => sizeOf('quick', now(quicker, sd));
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 60, noNaN: true }),
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        (quicker, sd) => {
          const { sPerKm, sdSPerKm, seenSPerKm } = size(quicker, sd);
          expect(seenSPerKm).toBeCloseTo(quicker, 6);
          expect(sPerKm).toBeGreaterThanOrEqual(Math.min(3, quicker) - 1e-9);
          expect(sPerKm).toBeLessThanOrEqual(Math.max(12, quicker) + 1e-9);
          expect(size(quicker + 1, sd).sPerKm).toBeGreaterThan(sPerKm);
          expect(sdSPerKm).toBeLessThan(10);
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
