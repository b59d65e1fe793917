import { expect, test } from 'vitest';
import { sizesIn } from './sizes.ts';
import { mean, rms } from './stats.ts';

test('what is said of pace in the open is the size of now, and on the right side', () => {
  const sizes = sizesIn('open', [2]).filter(({ kind }) => kind !== 'settle' && kind !== 'push');
  expect(sizes.length).toBeGreaterThan(8);
  const off = sizes.map(({ said, now }) => said - now);
  expect(rms(off)).toBeLessThan(4.5);
  // These runners leave the plan by more than a field does, and are said to by a little less than they do.
  expect(Math.abs(mean(off))).toBeLessThan(3);
  for (const { now, minute } of sizes) expect(Math.max(now, minute)).toBeGreaterThan(0);
});
