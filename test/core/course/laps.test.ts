import { describe, expect, test } from 'vitest';
import { lapsIn, unrollLaps } from '../../../src/core/course/laps.ts';
import { eastAtM, type LinePoint, measureLine, northAtM } from '../../../src/core/course/line.ts';
import { planeAt, pointOn, wayM } from '../../../src/core/geo/ruler.ts';

const PLANE = planeAt({ latitudeDeg: 54, longitudeDeg: 7 });
const at = (east: number, north: number): LinePoint => ({ ...pointOn(PLANE, east, north), elevationM: null });

/** A ring of this circumference, a point every ten metres; `openM` of it left out at its end. */
const ring = (aroundM: number, openM = 0): LinePoint[] => {
  const r = aroundM / (2 * Math.PI);
  const count = Math.round((aroundM - openM) / 10);
  return Array.from({ length: count + 1 }, (_, i) => {
    const angle = ((aroundM - openM) * i) / count / r;
    return at(r * Math.cos(angle), r * Math.sin(angle));
  });
};
const lapsOf = (points: readonly LinePoint[], officialM: number): number =>
  lapsIn(points, wayM(points), officialM);

describe('how often a race goes round', () => {
  test('a whole number of times, or a half more, where the distance is near to that', () => {
    const lap = ring(1000);
    expect([1000, 2000, 3000, 2500, 10_000].map((m) => lapsOf(lap, m))).toEqual([1, 2, 3, 2.5, 10]);
    // A recording is off by a little, in every lap.
    expect([2030, 1970, 5080].map((m) => lapsOf(lap, m))).toEqual([2, 2, 5]);
    expect(lapsOf(ring(400), 5000)).toBe(12.5);
  });

  test('as often as it comes to, where it is neither', () => {
    expect(lapsOf(ring(1000), 2250)).toBeCloseTo(2.25, 1);
    expect(lapsOf(ring(1000), 1200)).toBeCloseTo(1.2, 1);
  });

  test('once where the line is a little short, is no lap, is a sketch, or would be run for ever', () => {
    expect(lapsOf(ring(1000), 1090)).toBe(1);
    expect(lapsOf(ring(1000, 200), 2000)).toBe(1);
    expect(lapsOf(ring(1000), 70_000)).toBe(1);
    const square = [at(0, 0), at(250, 0), at(250, 250), at(0, 250), at(0, 0)];
    expect(lapsOf(square, 2250)).toBe(1);
    expect(lapsOf([], 2000)).toBe(1);
  });
});

describe('a lap rolled out', () => {
  test('is as long as it is run', () => {
    const lap = ring(1000);
    const lapM = wayM(lap);
    for (const times of [2, 3, 2.5, 1.2])
      expect(Math.abs(wayM(unrollLaps(lap, lapM, times)) / (times * lapM) - 1)).toBeLessThan(0.003);
    expect(unrollLaps(lap, lapM, 1)).toBe(lap);
  });

  test('passes the same place at the same part of each lap, and ends where it began', () => {
    const line = measureLine(ring(1000), 3000);
    if (line === null) throw new Error('no line');
    expect(line.lapM).toBeCloseTo(1000, 6);
    const place = (m: number): readonly [number, number] => [eastAtM(line, m), northAtM(line, m)];
    const apartM = (a: number, b: number): number => {
      const [[ae, an], [be, bn]] = [place(a), place(b)];
      return Math.hypot(ae - be, an - bn);
    };
    for (const m of [100, 400, 750]) {
      expect(apartM(m, m + 1000)).toBeLessThan(3);
      expect(apartM(m, m + 2000)).toBeLessThan(3);
      // Half a lap on is across the ring.
      expect(apartM(m, m + 500)).toBeGreaterThan(300);
    }
    expect(apartM(0, 3000)).toBeLessThan(3);
    const half = measureLine(ring(1000), 2500);
    if (half === null) throw new Error('no line');
    const [start, across] = [0, 2500].map((m) =>
      Math.hypot(eastAtM(half, m) - eastAtM(half, 500), northAtM(half, m) - northAtM(half, 500)),
    );
    expect(start).toBeGreaterThan(300);
    expect(across).toBeLessThan(3);
  });
});
