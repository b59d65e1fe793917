import { describe, expect, test } from 'vitest';
import type { Input } from '../../../src/core/estimate/input.ts';
import { town } from './roads.ts';
import { type Part, play, scripted, setupOf } from './script.ts';

const withoutSpeed = (inputs: readonly Input[]): Input[] =>
  inputs.map((i) => (i.type === 'fix' ? { ...i, fix: { ...i.fix, speedMps: null } } : i));

/** Errors of the distance by the seconds since a part began, of a receiver that gives no speed. */
const errorsSince = (parts: readonly Part[], part: number, seed: number) => {
  const script = scripted(town, -8, [{ stand: 30 }, { to: 0, mps: 4 }, { press: 'start' }, ...parts], seed);
  const { progress } = play(setupOf(town, town.officialM), withoutSpeed(script.inputs));
  const fromMs = script.partMs[part + 3] ?? 0;
  return progress
    .filter((p) => p.atMs >= fromMs)
    .map((p) => ({ atS: (p.atMs - fromMs) / 1000, errorM: p.distanceM - script.alongAt(p.atMs) }));
};
const worst = (errors: readonly { atS: number; errorM: number }[], fromS: number): number =>
  errors.filter((e) => e.atS >= fromS).reduce((most, e) => Math.max(most, Math.abs(e.errorM)), 0);

describe('a receiver without speeds, and a runner who changes theirs', () => {
  test.each([1, 2, 3])(
    'walks for a minute: no more than three seconds of running are lost, seed %i',
    (seed) => {
      const parts: Part[] = [
        { to: 1000, mps: 4 },
        { to: 1090, mps: 1.5 },
        { to: 1600, mps: 4 },
      ];
      expect(worst(errorsSince(parts, 1, seed), 0)).toBeLessThan(22);
    },
  );

  test.each([1, 2, 3])(
    'stands 60 m aside of the course and comes back: is running at once, seed %i',
    (seed) => {
      const parts: Part[] = [
        { to: 1600, mps: 4 },
        { aside: [60, 0], mps: 2.5 },
        { stand: 90 },
        { aside: [0, 0], mps: 2.5 },
        { to: 2400, mps: 4 },
      ];
      expect(worst(errorsSince(parts, 4, seed), 25)).toBeLessThan(15);
    },
  );
});
