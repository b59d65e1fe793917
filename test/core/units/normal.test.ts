import { expect, test } from 'vitest';
import { normalBelow } from '../../../src/core/units/normal.ts';

// Percentage points of the normal distribution; Abramowitz & Stegun (1964), tables 26.1 and 26.2. Values from memory.
test.each([
  [0, 0.5],
  [0.5, 0.691_462_461],
  [1, 0.841_344_746],
  [1.959_963_985, 0.975],
  [2.575_829_304, 0.995],
  [3, 0.998_650_102],
])('of a normal value below %f', (z, p) => {
  expect(Math.abs(normalBelow(z) - p)).toBeLessThan(1.5e-7);
  expect(Math.abs(normalBelow(-z) - (1 - p))).toBeLessThan(1.5e-7);
});
