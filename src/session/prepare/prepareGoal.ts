import { climbM, slopeProfile } from '../../core/course/elevation.ts';
import type { CourseLine } from '../../core/course/line.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { scheduleOf } from '../../core/plan/schedule.ts';
import { hillRatio } from '../../core/prepare/goal/hills.ts';
import { type GoalMeaning, goalMeaning } from '../../core/prepare/goal/marks.ts';
import { type Prediction, predict } from '../../core/prepare/goal/predict.ts';
import { parseRaceResult, type RaceResult } from '../../core/prepare/goal/raceResult.ts';
import { type ReviseReason, reasonsToRevise } from '../../core/prepare/goal/revise.ts';
import { type TrainingNeed, trainingFor, trainingText } from '../../core/prepare/goal/training.ts';
import { judgeGoal, type Verdict } from '../../core/prepare/goal/verdict.ts';
import type { Message } from '../../core/units/message.ts';
import { M_PER_KM, metresPer } from '../../core/units/units.ts';
import { expectedOf } from '../../languages/refusal.ts';
import { t } from '../../languages/text.ts';
import { finishSecondsOf, numberOf } from '../plan/planTexts.ts';
import type { PrepareDraft, ResultDraft } from './prepareDraft.ts';

export interface GoalSheet {
  /** A sentence for each row of results that cannot be used; null where it can, or is empty. */
  readonly errors: readonly (string | null)[];
  /** How many results of the runner's own kept runs are counted. */
  readonly ownResults: number;
  readonly prediction: Prediction | null;
  readonly verdict: Verdict | null;
  readonly training: (TrainingNeed & { readonly text: Message }) | null;
  readonly meaning: GoalMeaning;
  readonly reasons: readonly ReviseReason[];
  /** Metres climbed on the course; null where no heights are known. */
  readonly climbM: number | null;
  /** How much longer an even effort takes here than on the flat. */
  readonly hillRatio: number;
}

const DAYS_PER_WEEK = 7;

/** Null: left empty. */
const rowOf = (row: ResultDraft, i: number, unitM: number): RaceResult | string | null => {
  if (row.time.trim() === '') return null;
  const distance = numberOf(row.distance);
  if (distance === null) return t('Write the distance as a number, such as 10 or 21.1.');
  const timeS = finishSecondsOf(row.time, distance * unitM);
  if (timeS === null) return t('Write the time as hours, minutes and seconds: 47:30 or 1:44:00.');
  const weeks = row.weeksAgo.trim() === '' ? null : numberOf(row.weeksAgo);
  if (weeks === null && row.weeksAgo.trim() !== '')
    return t('Write the weeks as a number, or leave them out.');
  const got = parseRaceResult(
    `results[${i}]`,
    distance * unitM,
    timeS,
    weeks === null ? null : weeks * DAYS_PER_WEEK,
  );
  return got.ok ? got.value : t('This needs {expected}.', { expected: expectedOf(got.error) });
};

/** Weekly distance in kilometres; null where it was not given or is no number. */
export const weeklyKmOf = (draft: PrepareDraft, unit: RacePlan['unit']): number | null => {
  const weekly = numberOf(draft.weekly);
  return weekly !== null && weekly > 0 ? (weekly * metresPer(unit)) / M_PER_KM : null;
};

/** A temperature that air can have. */
export const temperatureOf = (draft: PrepareDraft): number | null => {
  const t = numberOf(draft.temperatureC);
  return t !== null && Math.abs(t) <= 50 ? t : null;
};

/**
 * Everything about the goal: what the results say, and how the plan's goal stands to it.
 * @param own  results out of this runner's own kept runs, besides those written down
 */
export const goalSheetOf = (
  draft: PrepareDraft,
  plan: RacePlan,
  course: CourseLine | null,
  own: readonly RaceResult[] = [],
): GoalSheet => {
  const unitM = metresPer(plan.unit);
  const rows = draft.results.map((row, i) => rowOf(row, i, unitM));
  const written = rows.filter((r) => r !== null && typeof r !== 'string');
  const [first, ...others] = [...written, ...own];
  const weeklyKm = weeklyKmOf(draft, plan.unit);
  const results = first === undefined ? null : ([first, ...others] as const);
  const prediction = results === null ? null : predict(results, plan.distanceM, weeklyKm);
  const need =
    results === null || prediction === null ? null : trainingFor(plan.goalS, results, prediction, weeklyKm);
  const profile = course === null ? null : slopeProfile(course);
  const climb = profile === null ? null : climbM(profile);
  const schedule = scheduleOf(plan, course);
  return {
    ownResults: own.length,
    errors: rows.map((r) => (typeof r === 'string' ? r : null)),
    prediction,
    verdict: prediction === null ? null : judgeGoal(plan.goalS, prediction),
    training: need === null ? null : { ...need, text: trainingText(need) },
    meaning: goalMeaning(plan.distanceM, plan.goalS, schedule.timeAtS),
    reasons: reasonsToRevise({
      temperatureC: temperatureOf(draft),
      climbM: climb,
      distanceM: plan.distanceM,
    }),
    climbM: climb,
    hillRatio: hillRatio(course),
  };
};
