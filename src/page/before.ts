import { demoPlan } from '../demo/race.ts';
import { pastRunsOf } from '../session/course/coursePast.ts';
import { createPlanModel } from '../session/plan/planModel.ts';
import { createPrepareModel } from '../session/prepare/prepareModel.ts';
import { createReminders } from '../session/prepare/prepareReminders.ts';
import { simulateInWorker } from '../session/prepare/prepareSimulate.ts';
import { pageTime } from '../voice/device/pageTime.ts';
import type { Afterwards } from './afterwards.ts';
import type { Ground } from './ground.ts';

/** The way to a race: the plan, and what is worked out around it. */
export const createBefore = ({ keep, store, speaker, voice }: Ground, review: Afterwards) => {
  const plan = createPlanModel(demoPlan, keep);
  const prepare = createPrepareModel({
    plan,
    keep,
    now: () => new Date(),
    newId: () => crypto.randomUUID(),
    simulate: simulateInWorker(),
    own: review.own,
  });
  const reminders = createReminders({
    day: prepare.day,
    ear: speaker,
    wake: speaker.wake,
    voice,
    time: pageTime,
    wallMs: Date.now,
  });
  return { plan, prepare, reminders, pastRuns: pastRunsOf(store) };
};

export type Before = ReturnType<typeof createBefore>;
