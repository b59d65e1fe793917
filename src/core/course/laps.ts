import { legM } from '../geo/ruler.ts';
import type { LinePoint } from './line.ts';

/** A lap's ends lie this close together, or within this share of its length. */
const CLOSED_M = 80;
const CLOSED_SHARE = 0.02;
/** The official distance is this near to a whole number of laps. */
const WHOLE_SHARE = 0.04;
const MOST_LAPS = 60;

/** The line of one lap, for a race of several: run over again as often as the official distance holds it. */
export const unrollLaps = (
  points: readonly LinePoint[],
  recordedM: number,
  officialM: number,
): readonly LinePoint[] => {
  const first = points[0];
  const last = points.at(-1);
  if (!first || !last || !(recordedM > 0)) return points;
  const laps = Math.round(officialM / recordedM);
  if (laps < 2 || laps > MOST_LAPS) return points;
  const closed = legM(first, last) < Math.max(CLOSED_M, CLOSED_SHARE * recordedM);
  if (!closed || Math.abs(officialM / recordedM / laps - 1) > WHOLE_SHARE) return points;
  return Array.from({ length: laps }, (_, lap) => (lap === 0 ? points : points.slice(1))).flat();
};
