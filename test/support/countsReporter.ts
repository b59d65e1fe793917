import { writeSync } from 'node:fs';
import type { Reporter, SerializedError, TestModule } from 'vitest/node';

/** Counts over all projects of one run. */
export interface Counts {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}

/** A file that could not be loaded, a hook that threw and an error outside any test count as failures: they fail the run. */
export const countTests = (modules: readonly TestModule[], strayErrors: number): Counts => {
  const counts = { passed: 0, failed: strayErrors, skipped: 0 };
  for (const module of modules) {
    counts.failed += module.errors().length;
    for (const suite of module.children.allSuites()) counts.failed += suite.errors().length;
    for (const test of module.children.allTests()) {
      const { state } = test.result();
      if (state === 'passed' || state === 'failed') counts[state]++;
      else counts.skipped++;
    }
  }
  return counts;
};

export const closingLine = ({ passed, failed, skipped }: Counts): string =>
  `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;

/**
 * Prints `N passed, N failed` (`, N skipped` where there are any) alone on the last line. It waits for the end of the
 * process, so that nothing that shuts down in between can write after it.
 */
export default class CountsReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], strayErrors: readonly SerializedError[]): void {
    const line = closingLine(countTests(modules, strayErrors.length));
    process.once('exit', () => writeSync(1, `${line}\n`));
  }
}
