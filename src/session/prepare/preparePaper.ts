import type { CourseLine } from '../../core/course/line.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { scheduleOf } from '../../core/plan/schedule.ts';
import { secondPlan } from '../../core/plan/secondGoal.ts';
import { planRaceSheet, type RaceSheet } from '../../core/prepare/paper/raceSheet.ts';
import { planWristBand, type WristBand } from '../../core/prepare/paper/wristBand.ts';
import type { DaySheet } from './prepareDay.ts';

export interface PaperSheet {
  readonly band: WristBand;
  readonly sheet: RaceSheet;
  /** `2027-05-09`, or empty. */
  readonly dateText: string;
}

export const raceOfPaper = (plan: RacePlan, course: CourseLine | null, day: DaySheet): PaperSheet => {
  const schedule = scheduleOf(plan, course);
  const second = secondPlan(plan);
  const two = (n: number): string => String(n).padStart(2, '0');
  return {
    band: planWristBand(plan, schedule, plan.unit, second === null ? null : scheduleOf(second, course)),
    sheet: planRaceSheet(plan, schedule, plan.unit, day.items),
    dateText: day.date === null ? '' : `${day.date.year}-${two(day.date.month)}-${two(day.date.day)}`,
  };
};
