import { defineConfig } from 'vitest/config';

/** Browsers that are not Chromium: `npm run test:others`. Apart from `npm test`, for not every machine has them. */
export default defineConfig({
  test: {
    reporters: ['default', './test/support/countsReporter.ts'],
    include: ['test/others/*.others.ts'],
    globalSetup: ['test/others/setup.ts'],
    fileParallelism: false,
    testTimeout: 90_000,
    hookTimeout: 90_000,
  },
});
