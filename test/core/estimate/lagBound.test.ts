import { describe, expect, test } from 'vitest';
import { boundLag } from '../../../src/core/estimate/courseReadings.ts';
import { at, cov, firstBelief, LAG, N, S } from '../../../src/core/estimate/courseState.ts';
import { airOf, USUAL_RECEIVER } from '../../../src/core/estimate/receiver.ts';

const beliefWith = (lagS: number) => {
  const g = firstBelief(airOf(2), USUAL_RECEIVER, 5000, 5, 1);
  g.x[LAG] = lagS;
  return g;
};

describe('how late positions come', () => {
  test('is left alone where receivers do so', () => {
    for (const lagS of [0, 0.4, 1.5, 2]) {
      const g = beliefWith(lagS);
      boundLag(g);
      expect(at(g, LAG)).toBe(lagS);
      expect(at(g, S)).toBe(5000);
    }
  });

  test('is led back towards what is possible, and takes the distance with it that it had been given', () => {
    const g = beliefWith(-1);
    // A position that was seen: the later positions come, the further the runner is.
    g.P[S * N + LAG] = 0.6;
    g.P[LAG * N + S] = 0.6;
    const before = cov(g, LAG, LAG);
    boundLag(g);
    expect(at(g, LAG)).toBeGreaterThan(-0.5);
    expect(at(g, LAG)).toBeLessThanOrEqual(0);
    expect(at(g, S)).toBeGreaterThan(5001);
    expect(cov(g, LAG, LAG)).toBeLessThan(before);
    const late = beliefWith(4);
    boundLag(late);
    expect(at(late, LAG)).toBeLessThan(3);
    expect(at(late, LAG)).toBeGreaterThanOrEqual(2);
  });
});
