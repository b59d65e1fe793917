import { describe, expect, it } from 'vitest';
import { type LinePoint, measureLine } from '../../../src/core/course/line.ts';
import type { PlaneFix } from '../../../src/core/estimate/planeFix.ts';
import { linesFromStart } from '../../../src/core/estimate/startLine.ts';
import { startPlace } from '../../../src/core/estimate/startPlace.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';

const PLANE = planeAt({ latitudeDeg: 53.9, longitudeDeg: 5.4 });
const OFFICIAL_M = 4000;
/** A road to the east that bends north half-way: turned round it begins elsewhere. */
const POINTS = Array.from({ length: 201 }, (_, i): LinePoint => {
  const m = 20 * i;
  return { ...pointOn(PLANE, Math.min(m, 2000), Math.max(0, m - 2000)), elevationM: null };
});

const START_MS = 200_000;
/** Fixes of two minutes before the start, each second, so far past the line's first point. */
const penOf = (pastM: (beforeS: number) => number): PlaneFix[] =>
  Array.from({ length: 121 }, (_, i): PlaneFix => {
    const beforeS = 120 - i;
    return {
      timeMs: START_MS - 1000 * beforeS,
      eastM: pastM(beforeS),
      northM: 1,
      speedMps: null,
      extraSdM: 0,
    };
  });

const begins = (pastM: (beforeS: number) => number): 'at the line' | 'where they stand' => {
  const line = measureLine(POINTS, OFFICIAL_M, PLANE);
  if (!line) throw new Error('a line without length');
  const [first] = linesFromStart(line, startPlace(penOf(pastM), START_MS));
  return first?.line === line ? 'at the line' : 'where they stand';
};

describe('the course begins', () => {
  it('where the runner has stood all the time, when that is well past its first point', () => {
    expect(begins(() => 40)).toBe('where they stand');
    expect(begins(() => 5)).toBe('at the line');
  });

  it('at its first point, when a receiver throws who stands there 25 m ahead in the last half minute', () => {
    expect(begins((beforeS) => (beforeS < 25 ? 25 : 2))).toBe('at the line');
  });
});
