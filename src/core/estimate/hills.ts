import { effortRatio } from '../course/effort.ts';
import { slopeProfile } from '../course/elevation.ts';
import type { CourseLine } from '../course/line.ts';

/**
 * What the road's slopes do to a runner's speed: by how much even effort is quicker on each piece of it than on the
 * level, as a share (the ease), summed up. How much of it this runner shows is learned (courseState.ts).
 */
export interface Hills {
  readonly stepM: number;
  /** The sum over the pieces before, each times its length, m: differences of it are means over any stretch. */
  readonly gainedM: Float64Array;
}

/** Null where the course has no heights: it is then taken as flat. */
export const hillsAlong = (line: CourseLine): Hills | null => {
  const profile = slopeProfile(line);
  if (profile === null) return null;
  const { stepM, slopes } = profile;
  const gainedM = new Float64Array(slopes.length + 1);
  for (const [i, slope] of slopes.entries())
    gainedM[i + 1] = (gainedM[i] as number) + stepM * (1 / effortRatio(slope) - 1);
  return { stepM, gainedM };
};

/** Beyond the ends the first or the last piece goes on. */
const gainedAtM = ({ stepM, gainedM }: Hills, distanceM: number): number => {
  const i = Math.min(gainedM.length - 2, Math.max(0, Math.floor(distanceM / stepM)));
  const from = gainedM[i] as number;
  return from + (distanceM / stepM - i) * ((gainedM[i + 1] as number) - from);
};

/** Slopes are taken over no less than this, about a piece of their grid: no steps at its joints. */
const LEAST_STRETCH_M = 25;

/** Mean ease of a stretch: -0.1 is a tenth slower than on the level; 0 where no heights are known. */
export const easeOver = (hills: Hills | null, fromM: number, toM: number): number => {
  if (hills === null) return 0;
  const spareM = Math.max(0, (LEAST_STRETCH_M - (toM - fromM)) / 2);
  const [a, b] = [fromM - spareM, toM + spareM];
  return (gainedAtM(hills, b) - gainedAtM(hills, a)) / (b - a);
};

export const easeAt = (hills: Hills | null, distanceM: number): number =>
  easeOver(hills, distanceM, distanceM);

/** A course line and its hills. */
export interface Road {
  readonly line: CourseLine;
  readonly hills: Hills | null;
}
