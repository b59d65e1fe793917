import type { CourseLine } from '../../course/line.ts';
import type { RacePlan } from '../../plan/racePlan.ts';
import { scheduleOf } from '../../plan/schedule.ts';

/** A plan cut into equal stretches, for running it many times. */
export interface Road {
  readonly distanceM: number;
  readonly stretchM: number;
  /** Planned time for each stretch, seconds. */
  readonly planS: Float64Array;
  /** Planned time at the end of each stretch. */
  readonly planAtS: Float64Array;
  /** What a stretch costs against the level at the same effort: planned time over mean time without opening and push. */
  readonly hill: Float64Array;
  /** Water stations in each stretch. */
  readonly waters: Uint8Array;
  /** The goal by the runner's own clock, seconds. */
  readonly goalOwnS: number;
}

/** Short against everything that the model knows (openings of a kilometre or two, wander over a kilometre). */
const STRETCH_M = 250;

/** `lineAfterGunS`: how long after the gun this runner crosses the line; counts only where the goal is by the gun. */
export const roadOf = (plan: RacePlan, course: CourseLine | null, lineAfterGunS: number): Road => {
  const count = Math.max(1, Math.round(plan.distanceM / STRETCH_M));
  const stretchM = plan.distanceM / count;
  const schedule = scheduleOf(plan, course);
  const even = scheduleOf({ ...plan, opening: null, push: null }, course);
  const meanS = even.timeAtS(plan.distanceM) / count;
  const planAtS = Float64Array.from({ length: count }, (_, i) => schedule.timeAtS((i + 1) * stretchM));
  const waters = new Uint8Array(count);
  for (const s of plan.stations) {
    const i = Math.min(count - 1, Math.floor(s.atM / stretchM));
    if (s.offers.includes('water')) waters[i] = (waters[i] ?? 0) + 1;
  }
  return {
    distanceM: plan.distanceM,
    stretchM,
    planS: planAtS.map((s, i) => s - (planAtS[i - 1] ?? 0)),
    planAtS,
    hill: planAtS.map((_, i) => (even.timeAtS((i + 1) * stretchM) - even.timeAtS(i * stretchM)) / meanS),
    waters,
    goalOwnS: plan.goalS - (plan.goalBy === 'gun' ? lineAfterGunS : 0),
  };
};
