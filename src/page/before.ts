import { demoPlan } from '../demo/race.ts';
import { pastRunsOf } from '../session/course/coursePast.ts';
import { createPlanModel } from '../session/plan/planModel.ts';
import type { Afterwards } from './afterwards.ts';
import type { Ground } from './ground.ts';

/** The way to a race: the plan, and what is worked out around it. */
export const createBefore = (ground: Ground, review: Afterwards) => {
  const plan = createPlanModel(demoPlan, ground.keep);
  return {
    plan,
    preparing: () => import('./preparing.ts').then((m) => m.createPreparing(ground, review, plan)),
    pastRuns: pastRunsOf(ground.store),
  };
};

export type Before = ReturnType<typeof createBefore>;
