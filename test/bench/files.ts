import { measureLine } from '../../src/core/course/line.ts';
import { lineToldItsCorners } from './cornersTold.ts';
import { courseFileErrorM } from './courseFile.ts';
import { recordedPoints, roadOf, SHAPES } from './courses.ts';
import { median, rms } from './stats.ts';
import { fixed, printTable } from './table.ts';

const OFFICIAL_M = 21097.5;

/** How far a course file misleads as it is laid, and as it would mislead one who knew where all its corners are. */
export const printFiles = (seeds: readonly number[]): void => {
  const rows = SHAPES.map((shape) => {
    const each = seeds.map((seed) => {
      const road = roadOf(shape, OFFICIAL_M, seed);
      const { points, vertex } = recordedPoints(road, seed + 50_000);
      const told = shape === 'city' ? lineToldItsCorners(road, points, vertex) : null;
      return {
        laidM: courseFileErrorM(road, measureLine(points, OFFICIAL_M)),
        toldM: courseFileErrorM(road, told),
      };
    });
    const [laid, told] = [each.map((e) => e.laidM), each.map((e) => e.toldM)];
    return [shape, fixed(rms(laid), 2), fixed(median(laid), 2), fixed(rms(told), 2), fixed(median(told), 2)];
  });
  printTable(
    `What a course file can tell (half marathon, ${seeds.length} roads a row; every second point, 1.5 m of shake)`,
    [
      'course',
      'as laid, m RMS',
      'median of roads',
      'least squares told every corner, m RMS',
      'median of roads',
    ],
    rows,
  );
};
