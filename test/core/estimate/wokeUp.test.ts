import { describe, expect, test } from 'vitest';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';
import { follow } from './follow.ts';
import { changeFixes, inTurn, withoutEvents } from './meddling.ts';
import { town } from './roads.ts';

/** Until then the phone is placed by networks: it wanders over the block, states 70 m, and knows no speed. */
const byNetwork = (untilS: number) =>
  changeFixes((input, ownS) => {
    if (ownS > untilS) return input;
    const [east, north] = [60 * Math.sin(ownS / 9), 50 * Math.cos(ownS / 13)];
    const fix = { ...input.fix, ...pointOn(planeAt(input.fix), east, north), accuracyM: 70, speedMps: null };
    return { ...input, fix };
  });

describe('a phone that is placed by networks until its receiver wakes', () => {
  test('after the start: what it said is forgotten, and the race goes on from the press', () => {
    for (const seed of [1, 2, 3]) {
      const { samples } = follow({ road: town, meddle: byNetwork(120), seed });
      for (const s of samples.filter((x) => x.ownS > 150)) expect(Math.abs(s.errorM)).toBeLessThan(12);
    }
  });

  test('in the pen: its wander is no start', () => {
    for (const seed of [1, 2, 3]) {
      const meddle = inTurn(byNetwork(-15), withoutEvents);
      const { startErrorS } = follow({ road: town, meddle, penS: 120, seed });
      expect(Math.abs(startErrorS ?? 99)).toBeLessThan(3);
    }
  });
});
