import { type CourseLine, eastAtM, northAtM, pointAtM } from '../../src/core/course/line.ts';
import { eastM, northM } from '../../src/core/geo/ruler.ts';
import { rms } from './stats.ts';

const EVERY_M = 50;
/** The nearest place of the file is looked for this far either way. */
const REACH_M = 60;
const STEP_M = 1;

/**
 * How far the course file itself misleads: the place on it that is nearest to a place on the road, less where that place
 * is. Nobody who has only the file can be better than that everywhere. Metres RMS; NaN without a file.
 */
export const courseFileErrorM = (road: CourseLine, given: CourseLine | null): number => {
  if (!given) return Number.NaN;
  const errors: number[] = [];
  for (let trueM = EVERY_M; trueM < road.officialM; trueM += EVERY_M) {
    const place = pointAtM(road, trueM);
    const [e, n] = [eastM(given.plane, place), northM(given.plane, place)];
    let best = { errorM: 0, apart: Number.POSITIVE_INFINITY };
    for (let off = -REACH_M; off <= REACH_M; off += STEP_M) {
      const apart = Math.hypot(eastAtM(given, trueM + off) - e, northAtM(given, trueM + off) - n);
      if (apart < best.apart) best = { errorM: off, apart };
    }
    errors.push(best.errorM);
  }
  return rms(errors);
};
