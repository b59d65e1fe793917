import { describe, expect, test } from 'vitest';
import type { CourseLine, LinePoint } from '../../../src/core/course/line.ts';
import { pointOn } from '../../../src/core/geo/ruler.ts';
import { follow } from './follow.ts';
import { measured, pointsOf, redrawn, town } from './roads.ts';

const SEEDS = [1, 2];
/** The town's line as somebody gives it whose official distance is another one. */
const officially = (factor: number): CourseLine => measured(pointsOf(town), town.officialM * factor);
/** The way goes on behind the finish, straight, as many metres. */
const walkedOn = (points: LinePoint[], metres: number): LinePoint[] => [
  ...points,
  ...Array.from({ length: Math.floor(metres / 12) }, (_, i) => ({
    ...pointOn(town.plane, 2500, 1000 + 12 * (i + 1)),
    elevationM: null,
  })),
];

describe('a line whose length is not the official distance', () => {
  test.each<[string, CourseLine, number]>([
    ['ends 200 m before the finish', redrawn(town, (p) => p.slice(0, -17)), 30],
    ['runs on for 300 m behind it', redrawn(town, (p) => walkedOn(p, 300)), 30],
  ])('because it %s: the receiver tells whose metres count', (_, given, worstM) => {
    for (const seed of SEEDS) {
      const { samples, inside } = follow({ road: town, given, seed });
      const late = samples.filter((s) => s.ownS > 700);
      for (const s of late) expect(Math.abs(s.errorM)).toBeLessThan(worstM);
      expect(inside).toBeGreaterThan(0.9);
    }
  });

  test('a number that is wrong by 4 %: nobody can tell whose fault it is, and the doubt is said', () => {
    const given = officially(1.04);
    for (const seed of SEEDS) {
      const { samples } = follow({ road: town, given, seed });
      for (const s of samples.filter((x) => x.ownS > 800)) expect(s.sdM).toBeGreaterThan(20);
    }
  });

  test('because of its recorder’s noise: it is scaled as ever, and as sure', () => {
    const noisy = redrawn(town, (points) =>
      points.map((p, i) => ({ ...p, latitudeDeg: p.latitudeDeg + (i % 2 ? 1 : -1) * 0.000009 })),
    );
    for (const seed of SEEDS) {
      const { rmsM, samples } = follow({ road: town, given: noisy, seed });
      expect(rmsM).toBeLessThan(5);
      for (const s of samples) expect(s.sdM).toBeLessThan(15);
    }
  });

  test('of five points: it is let go, and the receiver alone counts the way', () => {
    const given = redrawn(town, (p) =>
      p.filter((_, i) => i % Math.ceil(p.length / 4) === 0 || i === p.length - 1),
    );
    for (const seed of SEEDS) {
      const { state, samples } = follow({ road: town, given, seed });
      expect(state.belief.kind).toBe('free');
      for (const s of samples.filter((x) => x.ownS > 800))
        expect(Math.abs(s.errorM)).toBeLessThan(2.5 * s.sdM);
    }
  });
});
