import { describe, expect, test } from 'vitest';
import { counted, wilson } from './interval.ts';

describe("Wilson's interval", () => {
  test('holds the true share about 95 times in 100', () => {
    for (const [share, of] of [
      [0.05, 200],
      [0.02, 200],
      [0.5, 40],
    ] as const) {
      let held = 0;
      let chance = (1 - share) ** of;
      for (let hits = 0; hits <= of; hits++) {
        const [least, most] = wilson(hits, of);
        if (least <= share && share <= most) held += chance;
        chance *= ((of - hits) / (hits + 1)) * (share / (1 - share));
      }
      expect(held).toBeGreaterThan(0.92);
      expect(held).toBeLessThan(0.99);
    }
  });

  test('of nothing wrong still says how much may be', () => {
    const [least, most] = wilson(0, 200);
    expect(least).toBeCloseTo(0, 9);
    expect(most).toBeCloseTo(0.0188, 3);
    expect(counted(0, 200)).toBe('0.0 % (0.0 to 1.9)');
    expect(counted(0, 0)).toBe('–');
  });
});
