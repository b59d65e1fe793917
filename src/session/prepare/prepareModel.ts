import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { RaceResult } from '../../core/prepare/goal/raceResult.ts';
import type { WhatIfWish } from '../../core/prepare/whatIf/whatIf.ts';
import { getKept, type Keep, tryKeep } from '../phone/pageKeep.ts';
import type { PlanModel } from '../plan/planModel.ts';
import { type DaySheet, dayCalendar, daySheetOf } from './prepareDay.ts';
import { blankPrepare, type PrepareDraft, prepareOf } from './prepareDraft.ts';
import { type FuelSheet, fuelSheetOf } from './prepareFuel.ts';
import { type GoalSheet, goalSheetOf } from './prepareGoal.ts';
import type { PaperSheet } from './preparePaper.ts';
import { raceOfPaper } from './preparePaper.ts';
import {
  createWhatIf,
  type OwnSpread,
  type Simulate,
  type WhatIfModel,
  whatIfWishOf,
} from './prepareWhatIf.ts';

/** Everything before the race: from a result to a day by the clock. */
export interface PrepareModel {
  readonly draft: Signal<PrepareDraft>;
  readonly set: (change: Partial<PrepareDraft>) => void;
  readonly goal: ReadonlySignal<GoalSheet>;
  readonly fuel: ReadonlySignal<FuelSheet>;
  readonly day: ReadonlySignal<DaySheet>;
  readonly paper: ReadonlySignal<PaperSheet>;
  readonly wish: ReadonlySignal<WhatIfWish>;
  readonly whatIf: WhatIfModel;
  /** How many of the runner's own kept races say how they run. */
  readonly ownRuns: ReadonlySignal<number>;
  /** The calendar file; null without a date. */
  readonly calendar: () => string | null;
}

export interface PrepareParts {
  readonly plan: PlanModel;
  readonly keep: Keep;
  readonly now: () => Date;
  readonly newId: () => string;
  readonly simulate: Simulate;
  /** What the runner's own kept runs say; null where they say nothing, or may not. */
  readonly own?: ReadonlySignal<
    (OwnSpread & { readonly results: readonly RaceResult[]; readonly races: number }) | null
  >;
}

const KEY = 'soundline.prepare';

const kept = (keep: Keep): unknown => {
  try {
    return JSON.parse(getKept(keep, KEY) ?? 'null');
  } catch {
    return null;
  }
};

export const createPrepareModel = ({ plan, keep, now, newId, simulate, own }: PrepareParts): PrepareModel => {
  const draft = signal(prepareOf(kept(keep), blankPrepare(newId())));
  effect(() => {
    const text = JSON.stringify(draft.value);
    tryKeep(() => keep.setItem(KEY, text));
  });
  const today = (): { year: number; month: number; day: number } => {
    const date = now();
    return { year: date.getFullYear(), month: date.getMonth() + 1, day: date.getDate() };
  };
  const goal = computed(() =>
    goalSheetOf(draft.value, plan.plan.value, plan.course.value, own?.value?.results),
  );
  const day = computed(() => daySheetOf(draft.value, plan.plan.value, plan.course.value, today()));
  return {
    draft,
    set: (change) => {
      draft.value = { ...draft.value, ...change };
    },
    goal,
    fuel: computed(() => fuelSheetOf(draft.value, plan.plan.value, plan.course.value)),
    day,
    paper: computed(() => raceOfPaper(plan.plan.value, plan.course.value, day.value)),
    wish: computed(() =>
      whatIfWishOf(draft.value, goal.value, plan.plan.value, plan.course.value, own?.value ?? undefined),
    ),
    whatIf: createWhatIf(simulate),
    ownRuns: computed(() => own?.value?.races ?? 0),
    calendar: () => dayCalendar(day.value, draft.value.calendarId, now().getTime()),
  };
};
