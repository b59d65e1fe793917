import { legM, wayM } from '../geo/ruler.ts';
import type { LinePoint } from './line.ts';

/** As many points as a plan file holds; a road is not known more finely than a point every 5 m. */
const MOST_POINTS = 15_000;
const THIN_FROM = 8000;
const LEAST_LEG_M = 5;

/** A recording with no more points than a plan file holds: the ends stay, points too near to the one before go. */
export const thinned = (points: readonly LinePoint[]): readonly LinePoint[] => {
  if (points.length <= THIN_FROM) return points;
  const leastM = Math.max(LEAST_LEG_M, wayM(points) / (MOST_POINTS - 2));
  const kept: LinePoint[] = [];
  for (const p of points) {
    const before = kept.at(-1);
    if (!before || legM(before, p) >= leastM) kept.push(p);
  }
  const last = points.at(-1);
  if (last && kept.at(-1) !== last) kept.push(last);
  return kept;
};
