import { defineConfig } from 'vitest/config';

/** What these hear or measure is off by milliseconds or seconds where the machine has other work: they run by themselves. */
const ALONE = ['timing', 'run', 'rehearse', 'ready', 'recovery'].map(
  (name) => `test/browser/${name}.test.ts`,
);

const browser = {
  globalSetup: ['test/browser/globalSetup.ts'],
  // Real time on a machine that may be busy: a touch or a sound can come late once, not three times running.
  retry: 2,
  testTimeout: 60_000,
  hookTimeout: 60_000,
};

export default defineConfig({
  test: {
    reporters: ['default', './test/support/countsReporter.ts'],
    // The machines that this is checked on have two cores.
    maxWorkers: 2,
    // One group behind the other: unit tests take the processor, pages wait most of the time.
    projects: [
      {
        extends: true,
        test: {
          name: 'unit',
          setupFiles: ['test/support/chance.ts'],
          include: ['test/**/*.test.{ts,tsx}'],
          exclude: ['test/browser/**'],
          // A whole race takes a second alone, and ten when the machine has other work.
          testTimeout: 60_000,
          sequence: { groupOrder: 0 },
        },
      },
      {
        extends: true,
        test: {
          ...browser,
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          exclude: ALONE,
          // Measured: three pages at a time keep one core busy.
          maxWorkers: 3,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        test: {
          ...browser,
          name: 'browser alone',
          include: ALONE,
          fileParallelism: false,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
