import type { CourseLine } from '../core/course/line.ts';
import { eastM, northM } from '../core/geo/ruler.ts';
import type { RunInput } from '../core/run/settings.ts';

/** Pen, warm-up and a receiver's faults stay within this of a course; another town does not. */
const NEAR_M = 3000;

/** Whether a recording was made where the course is: most of its fixes lie in the course's rectangle or near it. */
export const isNear = (course: CourseLine, inputs: readonly RunInput[]): boolean => {
  const span = (values: Float64Array): readonly [number, number] => {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const v of values) [low, high] = [Math.min(low, v), Math.max(high, v)];
    return [low - NEAR_M, high + NEAR_M];
  };
  const [west, east] = span(course.eastM);
  const [south, north] = span(course.northM);
  const fixes = inputs.flatMap((i) => (i.type === 'fix' ? [i.fix] : []));
  const near = fixes.filter((f) => {
    const [e, n] = [eastM(course.plane, f), northM(course.plane, f)];
    return e >= west && e <= east && n >= south && n <= north;
  });
  return near.length * 2 >= fixes.length;
};
