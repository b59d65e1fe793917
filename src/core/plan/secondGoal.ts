import type { RacePlan } from './racePlan.ts';

/** The plan of the second goal: the same legs at that goal's pace; null where there is none. */
export const secondPlan = (plan: RacePlan): RacePlan | null =>
  plan.secondGoal === undefined ? null : { ...plan, goalS: plan.secondGoal.goalS };
