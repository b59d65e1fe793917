import type { PlanModel } from '../session/plan/planModel.ts';
import { createPrepareModel } from '../session/prepare/prepareModel.ts';
import { createReminders } from '../session/prepare/prepareReminders.ts';
import { simulateInWorker } from '../session/prepare/prepareSimulate.ts';
import { pageTime } from '../voice/device/pageTime.ts';
import type { Afterwards } from './afterwards.ts';
import type { Ground } from './ground.ts';

/** What is worked out around a plan: loaded with the first of the screens that show it. */
export const createPreparing = ({ keep, speaker, voice }: Ground, review: Afterwards, plan: PlanModel) => {
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
  return { prepare, reminders };
};
