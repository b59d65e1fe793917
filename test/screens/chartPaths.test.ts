import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bandPath, distanceTicksM, linePath, niceTopS } from '../../src/screens/parts/chartPaths.ts';

const samples = [
  { distanceM: 0, aheadS: 0, aheadSdS: 1 },
  { distanceM: 100, aheadS: 2.5, aheadSdS: 1 },
  { distanceM: 200, aheadS: -4, aheadSdS: 2 },
];
const scale = { x: (m: number) => m, y: (s: number) => -s };

test('the curve goes through its samples, up is up', () => {
  expect(linePath(samples, scale)).toBe('M0.0 0.0L100.0 -2.5L200.0 4.0');
});

test('the band is 1.96 standard deviations on either side, there and back', () => {
  expect(bandPath(samples, scale)).toBe('M0.0 -2.0L100.0 -4.5L200.0 0.1L200.0 7.9L100.0 -0.5L0.0 2.0Z');
  expect(bandPath(samples.slice(0, 1), scale)).toBe('');
});

test('the axis holds every drift', () => {
  expect(niceTopS(samples)).toBe(10);
  fc.assert(
    fc.property(fc.double({ min: -3600, max: 3600, noNaN: true }), (aheadS) => {
      expect(niceTopS([{ distanceM: 0, aheadS, aheadSdS: 0 }])).toBeGreaterThanOrEqual(Math.abs(aheadS));
    }),
  );
});

test('ticks are round distances of the unit with room between them', () => {
  expect(distanceTicksM(5000, 'km', 300)).toEqual([1000, 2000, 3000, 4000, 5000]);
  expect(distanceTicksM(21_097.5, 'km', 300)).toEqual([5000, 10_000, 15_000, 20_000]);
  fc.assert(
    fc.property(
      fc.integer({ min: 1000, max: 100_000 }),
      fc.integer({ min: 120, max: 1200 }),
      (distanceM, width) => {
        const ticks = distanceTicksM(distanceM, 'mile', width);
        for (const [i, m] of ticks.entries())
          expect(((m - (ticks[i - 1] ?? 0)) * width) / distanceM).toBeGreaterThanOrEqual(44 - 1e-6);
      },
    ),
  );
});
