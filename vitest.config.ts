import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    reporters: ['default', './test/support/countsReporter.ts'],
    // The machines that this is checked on have two cores.
    maxWorkers: 2,
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
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['test/browser/**/*.test.ts'],
          globalSetup: ['test/browser/globalSetup.ts'],
          // One page at a time: the tests watch a real audio clock.
          fileParallelism: false,
          // Real time on a machine that may be busy: a touch or a sound can come late once, not three times running.
          retry: 2,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
