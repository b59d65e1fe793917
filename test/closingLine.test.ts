import { expect, test } from 'vitest';
import { closingLine } from './support/countsReporter.ts';

test.each([
  [{ passed: 12, failed: 0, skipped: 0 }, '12 passed, 0 failed'],
  [{ passed: 0, failed: 3, skipped: 0 }, '0 passed, 3 failed'],
  [{ passed: 7, failed: 1, skipped: 2 }, '7 passed, 1 failed, 2 skipped'],
])('the run closes with a plain line %#', (counts, line) => {
  expect(closingLine(counts)).toBe(line);
});
