import { climbM, slopeProfile } from '../../core/course/elevation.ts';
import { passesOf } from '../../core/course/gpxPlaces.ts';
import { type CourseLine, eastAtM, elevationAtM, northAtM } from '../../core/course/line.ts';

export interface MapPoint {
  readonly eastM: number;
  readonly northM: number;
}

/** The line and its profile, for a screen to draw. */
export interface CourseView {
  readonly line: readonly MapPoint[];
  readonly bounds: {
    readonly west: number;
    readonly east: number;
    readonly south: number;
    readonly north: number;
  };
  /** Heights along the course; empty where none are known. */
  readonly heights: readonly { readonly atM: number; readonly heightM: number }[];
  readonly climbM: number | null;
  readonly at: (distanceM: number) => MapPoint;
  /** Direction of running at a place, radians from east, counter-clockwise. */
  readonly headingAt: (distanceM: number) => number;
  /** Where the course passes a place of the map, nearest first, metres along. */
  readonly alongAt: (eastM: number, northM: number) => readonly number[];
}

/** Enough for the widest screen. */
const PROFILE_POINTS = 300;
/** Directions are taken over this length, so that a kink does not turn an arrow. */
const HEADING_OVER_M = 60;

export const courseViewOf = (line: CourseLine): CourseView => {
  const points = Array.from(line.eastM, (eastM, i) => ({ eastM, northM: line.northM[i] as number }));
  const profile = slopeProfile(line);
  const at = (m: number): MapPoint => ({ eastM: eastAtM(line, m), northM: northAtM(line, m) });
  const clamp = (m: number): number => Math.min(line.officialM, Math.max(0, m));
  const heights = Array.from({ length: PROFILE_POINTS + 1 }, (_, i) => {
    const atM = (i / PROFILE_POINTS) * line.officialM;
    return { atM, heightM: elevationAtM(line, atM) ?? Number.NaN };
  });
  return {
    line: points,
    bounds: {
      west: Math.min(...points.map((p) => p.eastM)),
      east: Math.max(...points.map((p) => p.eastM)),
      south: Math.min(...points.map((p) => p.northM)),
      north: Math.max(...points.map((p) => p.northM)),
    },
    heights: heights.some((h) => Number.isNaN(h.heightM)) ? [] : heights,
    climbM: profile === null ? null : climbM(profile),
    at,
    headingAt: (m) => {
      const from = at(clamp(m - HEADING_OVER_M / 2));
      const to = at(clamp(m + HEADING_OVER_M / 2));
      return Math.atan2(to.northM - from.northM, to.eastM - from.eastM);
    },
    alongAt: (eastM, northM) => passesOf(line, eastM, northM).map((p) => p.alongM),
  };
};
