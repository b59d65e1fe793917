import type { CourseLine } from '../../core/course/line.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { scheduleOf } from '../../core/plan/schedule.ts';
import {
  type Breakfast,
  breakfastFor,
  carbohydrateDuring,
  type Loading,
  loadingFor,
} from '../../core/prepare/fuel/carbohydrate.ts';
import { type FuelChoice, type FuelPlan, planFuel } from '../../core/prepare/fuel/fuelPlan.ts';
import { type Drink, drinksAt } from '../../core/prepare/fuel/water.ts';
import type { SourcedRange } from '../../core/prepare/source.ts';
import { t } from '../../languages/text.ts';
import { numberOf } from '../plan/planTexts.ts';
import type { PrepareDraft } from './prepareDraft.ts';

export interface FuelSheet {
  readonly durationS: number;
  readonly during: SourcedRange;
  /** Null where a figure cannot be read; `error` says which. */
  readonly fuel: FuelPlan | null;
  readonly error: string | null;
  readonly drinks: readonly Drink[];
  readonly breakfast: Breakfast;
  readonly loading: Loading | null;
}

/** Grams an hour that a form may ask for; over the upper limit of any source. */
const MOST_G_PER_HOUR = 120;
const MOST_ITEM_G = 100;

/** Body mass, kilograms; null where it was not given or is none. */
export const massOf = (draft: PrepareDraft): number | null => {
  const kg = numberOf(draft.massKg);
  return kg !== null && kg >= 25 && kg <= 250 ? kg : null;
};

const choiceOf = (draft: PrepareDraft): FuelChoice | string => {
  if (draft.fuelHow !== 'rate') return { how: draft.fuelHow };
  const gPerHour = numberOf(draft.gPerHour);
  return gPerHour !== null && gPerHour > 0 && gPerHour <= MOST_G_PER_HOUR
    ? { how: 'rate', gPerHour }
    : t('Write grams an hour as a number, 1 to {n}.', { n: MOST_G_PER_HOUR });
};

export const fuelSheetOf = (draft: PrepareDraft, plan: RacePlan, course: CourseLine | null): FuelSheet => {
  const schedule = scheduleOf(plan, course);
  const durationS = schedule.timeAtS(plan.distanceM);
  const choice = choiceOf(draft);
  const itemG = numberOf(draft.itemG);
  const badItem =
    itemG !== null && itemG > 0 && itemG <= MOST_ITEM_G
      ? null
      : t('Write the carbohydrate of one as grams, 1 to {n}: it stands on the packet.', { n: MOST_ITEM_G });
  const error = typeof choice === 'string' ? choice : badItem;
  const { distanceM, stations } = plan;
  const fuel =
    typeof choice === 'string' || badItem !== null || itemG === null
      ? null
      : planFuel({ distanceM, schedule, stations, choice, item: draft.item, itemG });
  const massKg = massOf(draft);
  return {
    durationS,
    during: carbohydrateDuring(durationS),
    fuel,
    error,
    drinks: drinksAt(stations, fuel?.stops ?? []),
    breakfast: breakfastFor(durationS, massKg),
    loading: loadingFor(durationS, massKg),
  };
};
