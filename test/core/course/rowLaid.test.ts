import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errsAlone } from '../../../src/core/course/evenSteps.ts';
import { GRID, knotEvidence } from '../../../src/core/course/knotEvidence.ts';
import { best, sweep } from '../../../src/core/course/knots.ts';
import { type LinePoint, measureLine } from '../../../src/core/course/line.ts';
import { pointRow } from '../../../src/core/course/pointRow.ts';
import { runsOf, shakeM } from '../../../src/core/course/runs.ts';
import { anyLaw, lawOf } from '../../../src/core/course/stepLaw.ts';
import { straighten } from '../../../src/core/course/straighten.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';
import { lineToldItsCorners } from '../../bench/cornersTold.ts';
import { courseFileErrorM } from '../../bench/courseFile.ts';
import { recordedPoints, roadOf } from '../../bench/courses.ts';
import { rms } from '../../bench/stats.ts';

const OFFICIAL_M = 21097.5;

/** Streets of so many metres, turning by 80 degrees to the left and right in turn, a point every stepM, shaken. */
const zigzag = (streetsM: readonly number[], stepM: number, sdM: number, seed: number) => {
  const chance = chanceOf(seed);
  const eastM: number[] = [];
  const northM: number[] = [];
  let [e, n, heading, leftM] = [0, 0, 0, 0];
  const put = () => {
    eastM.push(e + sdM * chance.normal());
    northM.push(n + sdM * chance.normal());
  };
  put();
  streetsM.forEach((streetM, k) => {
    let goneM = stepM - leftM;
    while (goneM <= streetM) {
      const [e0, n0] = [e, n];
      e += goneM * Math.sin(heading);
      n += goneM * Math.cos(heading);
      put();
      [e, n] = [e0, n0];
      goneM += stepM;
    }
    leftM = streetM - (goneM - stepM);
    e += streetM * Math.sin(heading);
    n += streetM * Math.cos(heading);
    heading += ((k % 2 === 0 ? 1 : -1) * 80 * Math.PI) / 180;
  });
  return { eastM: Float64Array.from(eastM), northM: Float64Array.from(northM) };
};

describe('a line of points at even steps', () => {
  it('is laid as well as by one who is told where the road turns', () => {
    const seeds = [1, 2, 3, 4, 5, 6];
    const each = seeds.map((seed) => {
      const road = roadOf('city', OFFICIAL_M, seed);
      const { points, vertex } = recordedPoints(road, seed + 50_000);
      return {
        laidM: courseFileErrorM(road, measureLine(points, OFFICIAL_M)),
        toldM: courseFileErrorM(road, lineToldItsCorners(road, points, vertex)),
      };
    });
    const laidM = rms(each.map((e) => e.laidM));
    expect(laidM).toBeLessThan(1.25 * rms(each.map((e) => e.toldM)));
    expect(laidM).toBeLessThan(3);
  });

  it('is laid as well where a point is missing here and there', () => {
    const road = roadOf('city', OFFICIAL_M, 4);
    const { points } = recordedPoints(road, 50_004);
    const some = points.filter((_, i) => i % 300 !== 150);
    expect(some.length).toBe(points.length - 4);
    expect(courseFileErrorM(road, measureLine(some, OFFICIAL_M))).toBeLessThan(4);
  });

  it('is laid the same way each time, without a step back, in the order of its points', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), fc.integer({ min: 8, max: 30 }), (seed, stepM) => {
        const chance = chanceOf(seed);
        const streets = Array.from({ length: 12 }, () => 80 + 300 * chance.uniform());
        const line = zigzag(streets, stepM, 1.5, seed);
        const once = straighten(line);
        expect(straighten(line)).toEqual(once);
        expect([...once.index].every((x, i) => i === 0 || x > (once.index[i - 1] as number))).toBe(true);
        expect(once.index[0]).toBe(0);
        expect(once.index.at(-1)).toBe(line.eastM.length - 1);
        expect([...once.eastM, ...once.northM].every(Number.isFinite)).toBe(true);
      }),
      { numRuns: 25 },
    );
  });

  it('keeps its heights where they were', () => {
    const road = roadOf('city', OFFICIAL_M, 2);
    const points = recordedPoints(road, 50_002).points.map(
      (p, i): LinePoint => ({ ...p, elevationM: i / 10 }),
    );
    const line = measureLine(points, OFFICIAL_M);
    const heights = [...(line?.elevationM ?? [])];
    expect(heights.every((h, i) => i === 0 || h >= (heights[i - 1] as number))).toBe(true);
    expect(heights.at(-1)).toBeCloseTo((points.length - 1) / 10, 6);
  });
});

describe('knots', () => {
  const STREETS_M = [205, 163, 251, 122, 187, 240, 155, 210, 176, 133];
  const STEP_M = 16;
  const row = pointRow(zigzag(STREETS_M, STEP_M, 1, 3), STEP_M);
  const truth = STREETS_M.slice(0, -1).map((_, k) =>
    STREETS_M.slice(0, k + 1).reduce((sum, streetM) => sum + streetM, 0),
  );

  const found = () => {
    const evidence = knotEvidence(row, 1, 11);
    evidence.obey(anyLaw(STEP_M));
    // Each begins a step and a half aside of its corner; two that no street has must go.
    const begin = truth.map((m, k) => Math.round((GRID * m) / STEP_M) + (k % 2 === 0 ? 12 : -12));
    let knots: number[] = [0, ...begin, evidence.end, 30, 250].sort((a, b) => a - b);
    for (let i = 0; i < 12; i++) {
      knots = sweep(evidence, knots, { coarse: true, phase: i, choose: best, seeks: true });
      knots = sweep(evidence, knots, { coarse: false, phase: (i * GRID) / 2, choose: best, seeks: true });
    }
    return { evidence, knots };
  };

  it('are found where the streets turn, to a part of a step', () => {
    const { knots } = found();
    const atM = knots.slice(1, -1).map((x) => (x * STEP_M) / GRID);
    expect(atM).toHaveLength(truth.length);
    atM.forEach((x, k) => {
      expect(Math.abs(x - (truth[k] as number))).toBeLessThan(4);
    });
  });

  it('cost less than knots at other places, and more of them cost more', () => {
    const { evidence, knots } = found();
    const cost = evidence.cost(knots);
    const moved = knots.map((x, i) => (i === 3 ? x + GRID : x));
    const without = knots.filter((_, i) => i !== 3);
    const more = [...knots, ((knots[2] as number) + (knots[3] as number)) >> 1].sort((a, b) => a - b);
    for (const other of [moved, without, more]) expect(evidence.cost(other)).toBeGreaterThan(cost + 2);
  });

  it('tell how long a step is, and by how much streets stray from it', () => {
    const { evidence, knots } = found();
    const law = lawOf(evidence, knots, anyLaw(15));
    expect(law.stepM).toBeGreaterThan(15.5);
    expect(law.stepM).toBeLessThan(16.5);
    expect(law.sdM).toBeLessThan(3);
  });
});

describe('points of a recording', () => {
  it('err together, where those that a tool set err each for itself', () => {
    const chance = chanceOf(5);
    const streets = Array.from({ length: 12 }, () => 150 + 200 * chance.uniform());
    const set = zigzag(streets, 12, 1.5, 5);
    let [east, north] = [0, 0];
    // First-order Gauss-Markov errors, a third of them new at each point.
    const next = (x: number): number => 0.67 * x + 1.1 * chance.normal();
    const clean = zigzag(streets, 12, 0, 5);
    const recorded = {
      eastM: clean.eastM.map((e) => {
        east = next(east);
        return e + east;
      }),
      northM: clean.northM.map((n) => {
        north = next(north);
        return n + north;
      }),
    };
    const alone = (line: typeof set): boolean => {
      const shake = shakeM(line);
      return errsAlone(line, runsOf(line, shake, 12));
    };
    expect(alone(set)).toBe(true);
    expect(alone(recorded)).toBe(false);
  });
});
