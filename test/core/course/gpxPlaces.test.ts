import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { passesOf, passesOfPoint } from '../../../src/core/course/gpxPlaces.ts';
import {
  type CourseLine,
  eastAtM,
  type LinePoint,
  measureLine,
  northAtM,
} from '../../../src/core/course/line.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';

const PLANE = planeAt({ latitudeDeg: 54, longitudeDeg: 7 });
const lineOf = (corners: readonly (readonly [number, number])[], officialM: number): CourseLine => {
  const points: LinePoint[] = corners.map(([e, n]) => ({ ...pointOn(PLANE, e, n), elevationM: null }));
  const line = measureLine(points, officialM, PLANE);
  if (line === null) throw new Error('no line');
  return line;
};
/** A kilometre north, a kilometre east. */
const corner = lineOf(
  [
    [0, 0],
    [0, 500],
    [0, 1000],
    [500, 1000],
    [1000, 1000],
  ],
  2000,
);
/** Two kilometres east, and the same road back. */
const outAndBack = lineOf(
  [
    [0, 0],
    [1000, 0],
    [2000, 0],
    [1000, 0],
    [0, 0],
  ],
  4000,
);

const rounded = (line: CourseLine, east: number, north: number): number[][] =>
  passesOf(line, east, north).map(({ alongM, asideM }) => [Math.round(alongM), Math.round(asideM)]);

describe('where a course passes a place', () => {
  test('is the nearest point of its legs, whichever way they lead', () => {
    expect(rounded(corner, 20, 300)).toEqual([[300, 20]]);
    expect(rounded(corner, 700, 980)).toEqual([[1700, 20]]);
    // Beyond an end, the end.
    expect(rounded(corner, -30, -40)).toEqual([[0, 50]]);
  });

  test('is both ways where the road is run out and back, and not where another street is much farther', () => {
    expect(
      rounded(outAndBack, 600, 10)
        .map(([along]) => along)
        .sort(),
    ).toEqual([3400, 600].sort());
    expect(rounded(corner, 10, 800)).toEqual([[800, 10]]);
  });

  test('at the turn is one pass: so near together they are the same', () => {
    expect(rounded(outAndBack, 1990, 0)).toHaveLength(1);
  });

  test('of a point on the ground is the same', () => {
    expect(passesOfPoint(corner, pointOn(PLANE, 20, 300))[0]?.alongM).toBeCloseTo(300, 1);
  });

  test('any point of the line itself is passed where it lies, nothing aside', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2000, noNaN: true }), (m) => {
        const [pass] = passesOf(corner, eastAtM(corner, m), northAtM(corner, m));
        expect(pass?.alongM).toBeCloseTo(m, 3);
        expect(pass?.asideM).toBeCloseTo(0, 3);
      }),
    );
  });
});
