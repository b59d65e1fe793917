import { effortRatio } from '../../course/effort.ts';
import { slopeProfile } from '../../course/elevation.ts';
import type { CourseLine } from '../../course/line.ts';

/** How much longer an even effort takes on this course than on the flat, as a ratio; 1 where no heights are known. */
export const hillRatio = (course: CourseLine | null): number => {
  const profile = course === null ? null : slopeProfile(course);
  if (profile === null) return 1;
  return profile.slopes.reduce((sum, slope) => sum + effortRatio(slope), 0) / profile.slopes.length;
};
