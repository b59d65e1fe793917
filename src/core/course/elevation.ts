import { type CourseLine, elevationAtM } from './line.ts';

/** The course as slopes on an even grid: `slopes[i]` holds from i to i + 1 times `stepM`. */
export interface SlopeProfile {
  readonly stepM: number;
  readonly slopes: Float64Array;
}

/** Finer than any hill that a runner feels, coarse enough that a marathon is under 2000 steps. */
const GRID_M = 25;
/**
 * Heights of a phone are wrong by metres from point to point and come rounded to a metre; a height model has the house
 * or the sea wall beside the road in it. One metre of error over 25 m would be a hill of 4 %. A Gaussian of this
 * standard deviation leaves hills of 300 m and more as they are and takes 1 m of shake down to 0.3 % of slope.
 */
const SMOOTH_SD_M = 75;
/** Steeper than any road race; what is left beyond it is a fault of the recording. */
const MAX_SLOPE = 0.3;

/** Gaussian mean over the grid. The ends are mirrored through the end point, so that a slope runs on beyond them. */
const smoothed = (heights: Float64Array, stepM: number): Float64Array => {
  const reach = Math.min(Math.ceil((3 * SMOOTH_SD_M) / stepM), heights.length - 1);
  const weights = Float64Array.from({ length: reach + 1 }, (_, k) =>
    Math.exp(-0.5 * ((k * stepM) / SMOOTH_SD_M) ** 2),
  );
  const last = heights.length - 1;
  const at = (i: number): number => heights[i] as number;
  const beyond = (i: number): number => {
    if (i < 0) return 2 * at(0) - at(-i);
    if (i > last) return 2 * at(last) - at(2 * last - i);
    return at(i);
  };
  return heights.map((_, i) => {
    let sum = 0;
    let weight = 0;
    for (let k = -reach; k <= reach; k++) {
      const w = weights[Math.abs(k)] as number;
      sum += w * beyond(i + k);
      weight += w;
    }
    return sum / weight;
  });
};

/** Smoothed slopes (rise over run) along a course; null where the course has no heights. */
export const slopeProfile = (course: CourseLine): SlopeProfile | null => {
  if (!course.elevationM) return null;
  const steps = Math.max(1, Math.ceil(course.officialM / GRID_M));
  const stepM = course.officialM / steps;
  const raw = Float64Array.from({ length: steps + 1 }, (_, i) => elevationAtM(course, i * stepM) ?? 0);
  const heights = smoothed(raw, stepM);
  const slopes = Float64Array.from({ length: steps }, (_, i) => {
    const slope = ((heights[i + 1] as number) - (heights[i] as number)) / stepM;
    return Math.min(MAX_SLOPE, Math.max(-MAX_SLOPE, slope));
  });
  return { stepM, slopes };
};

/** Metres climbed by the smoothed profile. */
export const climbM = (profile: SlopeProfile): number =>
  profile.slopes.reduce((sum, slope) => sum + Math.max(0, slope) * profile.stepM, 0);
