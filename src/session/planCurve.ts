import { type CourseLine, elevationAtM } from '../core/course/line.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import { type Schedule, scheduleOf } from '../core/plan/schedule.ts';
import { boardsM, type Split, splitsAt } from '../core/plan/splits.ts';

/** A row of the plan's table. */
export interface PlanRow extends Split {
  readonly what: 'board' | 'checkpoint' | 'finish';
}

/** The plan as a table and as a curve, for the screens to draw. */
export interface PlanSheet {
  readonly schedule: Schedule;
  readonly rows: readonly PlanRow[];
  /** Seconds in hand against running the whole way at the goal's mean pace. */
  readonly curve: readonly { readonly distanceM: number; readonly inHandS: number }[];
  /** Heights of the course, metres above its lowest point; empty where they are not known. */
  readonly ground: readonly { readonly distanceM: number; readonly heightM: number }[];
}

/** Enough for a smooth line on the widest screen. */
const POINTS = 240;
/** A checkpoint on a board is one row. */
const SAME_PLACE_M = 1;

export const planSheetOf = (plan: RacePlan, course: CourseLine | null): PlanSheet => {
  const schedule = scheduleOf(plan, course);
  const checkpoints = plan.checkpointsM;
  const isCheckpoint = (atM: number): boolean => checkpoints.some((c) => Math.abs(c - atM) < SAME_PLACE_M);
  const boards = boardsM(plan).filter((b) => !isCheckpoint(b));
  const rows = splitsAt(schedule, [...boards, ...checkpoints]).map(
    (split): PlanRow => ({
      ...split,
      what: split.atM >= plan.distanceM ? 'finish' : isCheckpoint(split.atM) ? 'checkpoint' : 'board',
    }),
  );
  const places = Array.from({ length: POINTS + 1 }, (_, i) => (i / POINTS) * plan.distanceM);
  const curve = places.map((distanceM) => ({
    distanceM,
    inHandS: (plan.goalS / plan.distanceM) * distanceM - schedule.timeAtS(distanceM),
  }));
  const heights = course === null ? [] : places.map((m) => elevationAtM(course, m) ?? Number.NaN);
  const lowest = Math.min(...heights);
  const ground =
    heights.length === 0 || heights.some(Number.isNaN)
      ? []
      : places.map((distanceM, i) => ({ distanceM, heightM: (heights[i] ?? lowest) - lowest }));
  return { schedule, rows, curve, ground };
};
