import type { LearnModel } from '../session/ear/learnModel.ts';
import type { PlanModel } from '../session/plan/planModel.ts';
import type { PrepareModel } from '../session/prepare/prepareModel.ts';
import type { Reminders } from '../session/prepare/prepareReminders.ts';
import { laterWith } from './parts/later.tsx';
import { loadedOnce } from './parts/loadedOnce.ts';

/** What the screens of the days before a race show. */
export interface PrepareModels {
  readonly prepare: PrepareModel;
  readonly reminders: Reminders;
}

/** The screens of the days before a race. Their figures come with them: no race needs those either. All share one model. */
export const prepareScreens = (plan: PlanModel, load: () => Promise<PrepareModels>) => {
  const models = loadedOnce(load);
  const shown = ({ prepare }: PrepareModels) => ({ model: prepare, plan });
  return {
    GoalScreen: laterWith(() => import('./goal/goal.tsx').then((m) => m.GoalScreen), models, shown),
    FuelScreen: laterWith(() => import('./fuel/fuel.tsx').then((m) => m.FuelScreen), models, shown),
    DayScreen: laterWith(
      () => import('./day/day.tsx').then((m) => m.DayScreen),
      models,
      ({ prepare, reminders }) => ({ model: prepare, plan, reminders }),
    ),
    PaperScreen: laterWith(() => import('./paper/paper.tsx').then((m) => m.PaperScreen), models, shown),
    WhatIfScreen: laterWith(() => import('./whatIf/whatIf.tsx').then((m) => m.WhatIfScreen), models, shown),
  };
};

/** The tones, with the quiz about them. */
export const learnScreen = (load: () => Promise<LearnModel>) =>
  laterWith(
    () => import('./learn/learn.tsx').then((m) => m.LearnScreen),
    loadedOnce(load),
    (model) => ({ model }),
  );
