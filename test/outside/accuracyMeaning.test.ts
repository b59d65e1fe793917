import { describe, expect, test } from 'vitest';
import type { Input } from '../../src/core/estimate/input.ts';
import { distanceClaims, race } from '../bench/race.ts';
import { rms } from '../bench/stats.ts';
import { planOf, type World, worldOf } from '../bench/worlds.ts';

/**
 * What a stated accuracy of r metres means. The standard says 95 % [seen: w3c/geolocation index.html 4aebf6e7]; Android
 * documents a 68 % radius [seen: learn.microsoft.com mirror of Location.Accuracy]; Apple’s answer is the 2-D RMS, which
 * holds 63 % [seen: developer.apple.com/forums/thread/699996]. Browsers pass on what they get.
 */
const radiusOf = (share: number): number => Math.sqrt(-2 * Math.log(1 - share));
const MEANINGS = { standard: radiusOf(0.95), android: radiusOf(0.68), apple: Math.SQRT2 };

describe('Circular normal errors, radius in standard deviations of an axis [computed: Rayleigh’s distribution]', () => {
  test('95 %: 2.4477, 68 %: 1.5096, RMS: 1.4142', () => {
    expect(MEANINGS.standard).toBeCloseTo(2.4477468, 7);
    expect(MEANINGS.android).toBeCloseTo(1.5095922, 7);
    expect(1 - Math.exp(-(MEANINGS.apple ** 2) / 2)).toBeCloseTo(0.632, 3);
  });
});

const restated = (world: World, factor: number): World => {
  const inputs = world.run.inputs.map((input): Input => {
    if (input.type !== 'fix' || input.fix.accuracyM === null) return input;
    return { ...input, fix: { ...input.fix, accuracyM: input.fix.accuracyM * factor } };
  });
  return { ...world, run: { ...world.run, inputs } };
};

/** Distance error in metres RMS, and the mean square of what was claimed for it. */
const scored = (world: World): { readonly errorM: number; readonly claimedM: number } => {
  const claims = distanceClaims(race(world));
  return { errorM: rms(claims.map((c) => c.error)), claimedM: rms(claims.map((c) => c.sd)) };
};

describe('The engine is as right and as sure whichever of them a phone means', () => {
  const plan = planOf({ distanceM: 5000, goalS: 1500, checkpointsM: [2500] });
  const worlds = [1, 2, 3].map((seed) => worldOf({ plan, shape: 'city', reception: 'town', seed }));
  const asStated = worlds.map(scored);

  test.each([
    ['the standard’s radius where it was Android’s', MEANINGS.standard / MEANINGS.android],
    ['Apple’s radius where it was the standard’s', MEANINGS.apple / MEANINGS.standard],
  ])('%s', (_what, factor) => {
    for (const [i, world] of worlds.entries()) {
      const { errorM, claimedM } = scored(restated(world, factor));
      expect(errorM / (asStated[i]?.errorM ?? Number.NaN)).toBeCloseTo(1, 1);
      expect(claimedM / (asStated[i]?.claimedM ?? Number.NaN)).toBeCloseTo(1, 1);
    }
  });
});
