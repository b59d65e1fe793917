import { describe, expect, test } from 'vitest';
import {
  coneFromSteps,
  hasEvenSteps,
  lengthFromSteps,
  type Pass,
} from '../../../src/core/course/evenSteps.ts';
import { medianLegM, runsOf, shakeM } from '../../../src/core/course/runs.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';
import { alongErrorM, polyline, recorded, streets } from './streets.ts';

const SHAKE_M = 1.5;
const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
/** Points at even steps, from a count on. */
const row = (firstCount: number, points: number, firstM: number, stepM = 15): Pass => ({
  count: Array.from({ length: points }, (_, i) => firstCount + i),
  alongM: Array.from({ length: points }, (_, i) => firstM + stepM * i),
});

describe('the way round a corner by even steps', () => {
  // Ten points up to 6 m before the corner, the next one 9 m after it: one step of 15 m round the corner.
  const [before, after] = [row(0, 10, -141), row(10, 10, 9)];

  test('agrees with a corner that lies where the streets cross', () => {
    expect(lengthFromSteps([[before, after]], 0, 0, SHAKE_M, 2)?.addM).toBeCloseTo(0, 9);
  });

  test('takes back part of what a corner laid 3 m too far out has too much', () => {
    const told = lengthFromSteps([[before, after]], 1.5, -1.5, SHAKE_M, 2);
    // 4 · 1.5² · (1/10 + 1/10) + 0.3² = 1.89 m² against 2 m²: 2 / 3.89 of 3 m.
    expect(told?.addM).toBeCloseTo((-3 * 2) / 3.89, 9);
    expect(told?.doubtM2).toBeCloseTo(1 / (1 / 2 + 1 / 1.89), 9);
  });

  test('two passes tell it better than one', () => {
    const one = lengthFromSteps([[before, after]], 1.5, -1.5, SHAKE_M, 2);
    const two = lengthFromSteps(
      [
        [before, after],
        [before, after],
      ],
      1.5,
      -1.5,
      SHAKE_M,
      2,
    );
    expect(two?.doubtM2).toBeLessThan(one?.doubtM2 ?? 0);
  });

  test('a point that is missing at the corner is two steps, and a corner far off is not believed', () => {
    expect(lengthFromSteps([[before, row(11, 10, 24)]], 0, 0, SHAKE_M, 2)?.addM).toBeCloseTo(0, 9);
    expect(lengthFromSteps([[before, row(10, 10, 24)]], 0, 0, SHAKE_M, 2)).toBeNull();
  });

  test('tells nothing where points are few or stand unevenly', () => {
    const uneven: Pass = { count: [0, 1, 2, 3, 4], alongM: [-100, -70, -62, -20, -6] };
    expect(lengthFromSteps([[row(0, 3, -36), after]], 0, 0, SHAKE_M, 2)).toBeNull();
    expect(lengthFromSteps([[uneven, after]], 0, 0, SHAKE_M, 2)).toBeNull();
    expect(lengthFromSteps([], 0, 0, SHAKE_M, 2)).toBeNull();
  });

  test('the cone halves the step that went out and back', () => {
    // Out to 6 m before the cone, and back from 9 m - 6 m ... the step of 15 m: 6 m out, 9 m home.
    const out = row(0, 10, -141);
    const back: Pass = { count: row(-19, 10, 0).count, alongM: row(0, 10, -144).alongM };
    expect(coneFromSteps(out, back, SHAKE_M)?.alongM).toBeCloseTo(0, 9);
  });
});

describe('on lines', () => {
  const runsAre = (step: () => number, seed: number): boolean => {
    const line = polyline(recorded(streets(6000, seed), SHAKE_M, chanceOf(seed), step));
    return hasEvenSteps(line, runsOf(line, shakeM(line), medianLegM(line)), SHAKE_M);
  };

  test.each(SEEDS)('even steps are seen, and uneven ones are not taken for even, course %i', (seed) => {
    const chance = chanceOf(seed + 50);
    expect(runsAre(() => 15, seed)).toBe(true);
    expect(runsAre(() => 6 + 18 * chance.uniform(), seed)).toBe(false);
  });

  test('the line is known better for them', () => {
    const errors = (uneven: boolean): number[] =>
      SEEDS.map((seed) => {
        const chance = chanceOf(seed + 50);
        const corners = streets(8000, seed);
        const step = uneven ? () => 10 + 10 * chance.uniform() : () => 15;
        return alongErrorM(recorded(corners, SHAKE_M, chanceOf(seed), step), corners);
      });
    const mean = (xs: readonly number[]): number => xs.reduce((a, x) => a + x, 0) / xs.length;
    expect(mean(errors(false))).toBeLessThan(0.9 * mean(errors(true)));
  });
});
