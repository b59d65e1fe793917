import { expect, test } from 'vitest';
import { fieldIn } from './field.ts';
import { mean, rms } from './stats.ts';

test('in town a size is right in the mean, and a mixed field that never answers is not nagged', () => {
  const races = fieldIn('town', [1, 2]);
  const words = races.flatMap((r) => r.words);
  expect(words.length).toBeGreaterThan(40);
  const off = words.map((w) => w.said - w.kept);
  expect(Math.abs(mean(off))).toBeLessThan(2);
  expect(rms(off)).toBeLessThan(4);
  expect(words.length / races.length).toBeLessThan(4);
  for (const { talk } of races) expect(talk).toBeLessThan(0.05);
});
