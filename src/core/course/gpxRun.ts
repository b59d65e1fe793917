import { legM } from '../geo/ruler.ts';
import type { GpxPoint } from './gpxTypes.ts';

/** Running, as the crow flies, over some seconds: in a pen one stands, behind the finish one walks. */
const WINDOW_MS = 12_000;
const RUNNING_MPS = 1.9;

/** The first point from which the next seconds are run, looking along the given order. */
const runsFrom = (points: readonly GpxPoint[]): number => {
  let to = 0;
  for (const [from, p] of points.entries()) {
    while (to < points.length && Math.abs(timeOf(points[to]) - timeOf(p)) < WINDOW_MS) to++;
    const end = points[to];
    if (!end) return 0;
    const seconds = Math.abs(timeOf(end) - timeOf(p)) / 1000;
    if (legM(p, end) > RUNNING_MPS * seconds) return from;
  }
  return 0;
};

const timeOf = (p: GpxPoint | undefined): number => p?.timeMs ?? 0;

/**
 * The part of a recording that was run: without the wait before it and the walk after it. The same where points have no
 * times, or nothing was run.
 */
export const runPart = (points: readonly GpxPoint[]): readonly GpxPoint[] => {
  if (points.some((p) => p.timeMs === null)) return points;
  const from = runsFrom(points);
  const after = runsFrom(points.toReversed());
  return points.slice(from, points.length - after);
};

/** How far the ends of parts lie from the starts of the next, all told, m. */
const jumpsM = (parts: readonly (readonly GpxPoint[])[]): number =>
  parts.reduce((sum, part, i) => {
    const [end, start] = [parts[i - 1]?.at(-1), part[0]];
    return end && start ? sum + legM(end, start) : sum;
  }, 0);
const MOST_PARTS = 12;

/** Each next part the one that begins nearest to where the last one ended. */
const chainedFrom = (parts: readonly (readonly GpxPoint[])[], first: number): (readonly GpxPoint[])[] => {
  const left = parts.filter((_, i) => i !== first);
  const chain = [parts[first] ?? []];
  while (left.length > 0) {
    const end = chain.at(-1)?.at(-1);
    const apart = left.map((part) => (end && part[0] ? legM(end, part[0]) : Number.POSITIVE_INFINITY));
    chain.push(...left.splice(apart.indexOf(Math.min(...apart)), 1));
  }
  return chain;
};

/** The parts of a course in the order in which they follow each other on the ground; as given where that is as good. */
export const inOrder = (parts: readonly (readonly GpxPoint[])[]): readonly (readonly GpxPoint[])[] => {
  if (parts.length < 2 || parts.length > MOST_PARTS || parts.some((p) => p.length === 0)) return parts;
  return parts
    .map((_, first) => chainedFrom(parts, first))
    .reduce((best, chain) => (jumpsM(chain) < jumpsM(best) / 2 ? chain : best), parts);
};
