import { expect, test } from 'vitest';
import { SHAPES } from './courses.ts';
import { limitsOf } from './limit.ts';
import { coverage, rms } from './stats.ts';
import { HALF, planOf, worldOf } from './worlds.ts';

const SEEDS = [1, 2];
const PLAN = planOf({ distanceM: 10000, goalS: (10000 * HALF.goalS) / HALF.distanceM });

/** Without what the limit leaves out: bursts, and fixes that arrive seconds late. */
const claims = (reception: 'open' | 'town' | 'town, no speed') =>
  SHAPES.flatMap((shape) =>
    SEEDS.flatMap((seed) =>
      limitsOf(
        worldOf({ plan: PLAN, shape, reception, seed, receiver: { burstsPerHour: 0, lateShare: 0 } }),
      ).filter(({ ownS }) => ownS > 60 && ownS < PLAN.goalS - 60),
    ),
  );

test.each(['open', 'town', 'town, no speed'] as const)(
  'a filter that is told everything reaches the limit: %s',
  (reception) => {
    const told = claims(reception);
    const ratio = rms(told.map((l) => l.errorM)) / rms(told.map((l) => l.sdM));
    // Errors are correlated over minutes: 8 races of 43 minutes hold some hundred independent ones.
    expect(ratio).toBeGreaterThan(0.85);
    expect(ratio).toBeLessThan(1.15);
    const held = coverage(told.map(({ errorM, sdM }) => ({ error: errorM, sd: sdM })));
    expect(held).toBeGreaterThan(0.9);
    expect(held).toBeLessThan(0.99);
  },
);
