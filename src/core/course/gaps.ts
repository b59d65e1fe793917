import { at, type Polyline } from './runs.ts';

/** A stretch that the recording left out: a recorder paused, or parts of a file that do not meet. */
export interface Gap {
  /** Official metres. */
  readonly fromM: number;
  readonly toM: number;
}

/** A leg this long, and this many usual legs, is no straight street: a line drawn with few points has many of them. */
const GAP_M = 250;
const GAP_LEGS = 12;
/** The way between the ends of a gap is the straight line or more, up to this many times as far. */
const LEAST_TIMES = 0.9;
const MOST_TIMES = 3;
/** The detour, as a share of the straight line. */
export const DETOUR_SHARE = 0.3;

/** The long legs of a line, by the point at which each begins. */
export const gapsIn = ({ eastM, northM }: Polyline): readonly number[] => {
  const legs = Array.from({ length: eastM.length - 1 }, (_, i) =>
    Math.hypot(at(eastM, i + 1) - at(eastM, i), at(northM, i + 1) - at(northM, i)),
  );
  const usualM = legs.toSorted((a, b) => a - b)[legs.length >> 1] ?? 0;
  const leastM = Math.max(GAP_M, GAP_LEGS * usualM);
  return legs.flatMap((leg, i) => (leg > leastM ? [i] : []));
};

/**
 * Whether the gaps explain what the line's length lacks; not where the rest of the line is off by itself.
 * @param sumM running length at each vertex, as recorded
 * @param gaps the vertices where they begin
 */
export const gapsExplain = (sumM: Float64Array, gaps: readonly number[], officialM: number): boolean => {
  const straightM = gaps.reduce((sum, i) => sum + at(sumM, i + 1) - at(sumM, i), 0);
  // A line's shake makes the rest too long by a little.
  const wayM = officialM - (at(sumM, sumM.length - 1) - straightM);
  return gaps.length > 0 && wayM > LEAST_TIMES * straightM && wayM < MOST_TIMES * straightM;
};
