import { describe, expect, test } from 'vitest';
import { measureLine } from '../../../src/core/course/line.ts';
import { roadRunAgain } from '../../../src/core/course/road.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';
import { alongErrorM, type Corner, lengthOf, linePointsOf, polyline, recorded, streets } from './streets.ts';

const SHAKE_M = 1.5;
const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];
const rms = (xs: readonly number[]): number => Math.sqrt(xs.reduce((a, x) => a + x * x, 0) / xs.length);

const outAndBack = (seed: number): Corner[] => {
  const out = streets(4000, seed);
  return [...out, ...out.slice(0, -1).reverse()];
};
/** An irregular ring of nine corners, run four times. */
const laps = (seed: number, count = 4): Corner[] => {
  const chance = chanceOf(seed);
  const ring = Array.from({ length: 9 }, (_, i): Corner => {
    const [angle, r] = [(2 * Math.PI * i) / 9, 250 + 120 * chance.uniform()];
    return [r * Math.cos(angle), r * Math.sin(angle)];
  });
  const first = ring[0] as Corner;
  return Array.from({ length: count }, () => [...ring])
    .flat()
    .concat([first]);
};
const record = (corners: readonly Corner[], seed: number) => recorded(corners, SHAKE_M, chanceOf(seed + 100));

describe('a road that is run more than once', () => {
  test.each(SEEDS)('is seen out and back, course %i', (seed) => {
    const road = roadRunAgain(polyline(record(outAndBack(seed), seed)), SHAKE_M);
    expect(road?.passes.map((p) => p.backward)).toEqual([false, true]);
  });

  test.each(SEEDS)('is seen in four laps, course %i', (seed) => {
    const road = roadRunAgain(polyline(record(laps(seed), seed)), SHAKE_M);
    expect(road?.passes.map((p) => p.backward)).toEqual([false, false, false, false]);
  });

  test.each(SEEDS)('is not seen in streets that are run once, course %i', (seed) => {
    expect(roadRunAgain(polyline(record(streets(8000, seed), seed)), SHAKE_M)).toBeNull();
  });

  test('is not seen where the way back is another street', () => {
    const out: Corner[] = [
      [0, 0],
      [2000, 0],
      [2000, 15],
      [0, 15],
    ];
    expect(roadRunAgain(polyline(record(out, 1)), SHAKE_M)).toBeNull();
  });

  test('a lap that was rolled out is one recording, not several', () => {
    const points = record(laps(3, 1), 3);
    const twice = [...points, ...points.slice(1)];
    const road = roadRunAgain(polyline(twice), SHAKE_M);
    expect(road?.merged.eastM.length).toBeLessThanOrEqual(points.length + 1);
  });
});

describe('what it is worth', () => {
  test('the cone stands at half the distance, the ends of laps at their part of it', () => {
    const there = outAndBack(5);
    const cone = measureLine(linePointsOf(record(there, 5)), 8000);
    expect(cone?.knownM.map((d) => Math.round(d))).toEqual([4000, 8000]);
    const ring = laps(5);
    const lap = measureLine(linePointsOf(record(ring, 5)), 8000);
    expect(lap?.knownM.map((d) => Math.round(d))).toEqual([2000, 4000, 6000, 8000]);
  });

  test('an out-and-back line is known better than streets of the same length that are run once', () => {
    const once = rms(
      SEEDS.map((seed) => alongErrorM(record(streets(8000, seed), seed), streets(8000, seed))),
    );
    const back = rms(SEEDS.map((seed) => alongErrorM(record(outAndBack(seed), seed), outAndBack(seed))));
    expect(back).toBeLessThan(0.85 * once);
    expect(back).toBeLessThan(2);
  });

  test('a ring run four times is known to a metre and a half', () => {
    expect(rms(SEEDS.map((seed) => alongErrorM(record(laps(seed), seed), laps(seed))))).toBeLessThan(1.5);
  });

  test('distances go up from start to finish, whatever was merged', () => {
    for (const seed of SEEDS)
      for (const corners of [outAndBack(seed), laps(seed)]) {
        const line = measureLine(linePointsOf(record(corners, seed)), lengthOf(corners));
        const along = Array.from(line?.alongM ?? []);
        expect(along.length).toBeGreaterThan(100);
        expect(along.slice(1).every((d, i) => d > (along[i] as number))).toBe(true);
        expect(along.at(-1)).toBe(lengthOf(corners));
      }
  });
});
