import { describe, expect, test } from 'vitest';
import { beginKeeping } from '../../../src/core/drift/keeping.ts';
import { weightsOf } from '../../../src/core/drift/manner.ts';
import { keepingOf, type OwnManner } from '../../../src/core/drift/ownManner.ts';
import { projectRest } from '../../../src/core/drift/projection.ts';

const RACE_S = 7200;
const HALF_M = 21_097.5;
const of = (own: Partial<OwnManner>) =>
  keepingOf({ fadeMore: 0, wanderSd: 0.015, races: 3, ...own }, RACE_S, HALF_M);

describe('a runner whose races are known', () => {
  test('is believed to run as others do where nothing is known', () => {
    expect(keepingOf(undefined, RACE_S, HALF_M)).toBe(beginKeeping);
  });

  test('and was steady, is foretold more narrowly than one who wandered, the more so the more was seen', () => {
    const sdS = (own: Partial<OwnManner>): number => projectRest(of(own), RACE_S, 0).sdS;
    expect(sdS({ wanderSd: 0.007 })).toBeLessThan(sdS({ wanderSd: 0.03 }));
    expect(sdS({ wanderSd: 0.05, races: 1 })).toBeLessThan(sdS({ wanderSd: 0.05, races: 10 }));
  });

  test('keeps every guess in play', () => {
    const weights = weightsOf(of({ wanderSd: 0.008, races: 4 }).manners);
    expect(weights.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    expect(Math.min(...weights)).toBeGreaterThan(0);
  });

  test('and faded, is foretold slower for the rest by half of the fade at half-way', () => {
    const restS = (fadeMore: number): number => projectRest(of({ fadeMore }), RACE_S / 2, 0).restS;
    expect(restS(0.04) / restS(0) - 1).toBeCloseTo(0.02, 3);
    expect(restS(-0.02)).toBeLessThan(restS(0));
    // Nobody is believed to fall apart.
    expect(restS(0.5)).toBe(restS(0.06));
  });
});
