import { legM } from '../geo/ruler.ts';
import type { LinePoint } from './line.ts';

/** Points closer than this to the one before say nothing new and would make a direction out of rounding. */
const MIN_LEG_M = 0.05;
/** Beyond this many points the line is thinned to legs of at least THIN_LEG_M: a road is not known more finely. */
const MANY_POINTS = 8000;
const THIN_LEG_M = 5;

/** Points this far out and back, and this many usual legs, are a spike and not a turn-round at a cone. */
const SPIKE_M = 40;
const SPIKE_LEGS = 5;
/** Receivers that are thrown aside stay there for a point, or for a few. */
const SPIKE_POINTS = 4;

const thinned = (points: readonly LinePoint[]): LinePoint[] => {
  const minLegM = points.length > MANY_POINTS ? THIN_LEG_M : MIN_LEG_M;
  const kept: LinePoint[] = [];
  const last = points.at(-1);
  for (const p of points) {
    const before = kept.at(-1);
    if (before && legM(before, p) < minLegM) {
      // The end of the line stays where it is: it takes the place of a near neighbour.
      if (p === last && kept.length > 1) kept[kept.length - 1] = p;
      continue;
    }
    kept.push(p);
  }
  return kept;
};

/** How many points after i are thrown aside: both ways there are long legs, and the ends lie close together. */
const thrownAfter = (points: readonly LinePoint[], i: number, leastM: number): number => {
  const a = points[i] as LinePoint;
  const first = points[i + 1];
  if (!first || legM(a, first) <= leastM) return 0;
  for (let n = 1; n <= SPIKE_POINTS; n++) {
    const back = points[i + n + 1];
    if (!back) return 0;
    const outM = Math.min(legM(a, first), legM(points[i + n] as LinePoint, back));
    if (outM > leastM && legM(a, back) < outM / 2) return n;
  }
  return 0;
};

/** Takes out what a recorder adds by itself: repeats, and points thrown far aside and back again. */
export const tidy = (points: readonly LinePoint[]): LinePoint[] => {
  const once = thinned(points);
  const legs = once.slice(1).map((p, i) => legM(once[i] as LinePoint, p));
  const usualM = legs.toSorted((a, b) => a - b)[legs.length >> 1] ?? 0;
  const leastM = Math.max(SPIKE_M, SPIKE_LEGS * usualM);
  const kept: LinePoint[] = [];
  for (let i = 0; i < once.length; i++) {
    kept.push(once[i] as LinePoint);
    i += thrownAfter(once, i, leastM);
  }
  return kept;
};
