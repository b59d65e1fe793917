import { type CourseLine, elevationAtM } from '../../core/course/line.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { rivalTimeAtS } from '../../core/plan/rival.ts';
import { type Schedule, scheduleOf } from '../../core/plan/schedule.ts';
import { secondPlan } from '../../core/plan/secondGoal.ts';
import { boardsM, type Split, splitsAt } from '../../core/plan/splits.ts';

/** A row of the plan's table. */
export interface PlanRow extends Split {
  readonly what: 'board' | 'checkpoint' | 'finish';
  /** The second goal's time here; null where there is none. */
  readonly secondS: number | null;
  /** The rival's time here less the plan's: above 0 the rival is behind. */
  readonly rivalGapS: number | null;
}

/** A closing time of the race against the plan. */
export interface CutOffRow {
  readonly atM: number;
  readonly timeS: number;
  /** What is left of it when the plan passes, on a clock that started with the gun; below 0 it is missed. */
  readonly leftS: number;
}

/** The plan as a table and as a curve, for the screens to draw. */
export interface PlanSheet {
  readonly schedule: Schedule;
  readonly rows: readonly PlanRow[];
  readonly cutOffs: readonly CutOffRow[];
  /** Seconds in hand against running the whole way at the goal's mean pace. */
  readonly curve: readonly { readonly distanceM: number; readonly inHandS: number }[];
  /** Heights of the course, metres above its lowest point; empty where they are not known. */
  readonly ground: readonly { readonly distanceM: number; readonly heightM: number }[];
}

/** Enough for a smooth line on the widest screen. */
const POINTS = 240;
/** A checkpoint on a board is one row. */
const SAME_PLACE_M = 1;

const rowsOf = (plan: RacePlan, schedule: Schedule, course: CourseLine | null): readonly PlanRow[] => {
  const checkpoints = plan.checkpointsM;
  const isCheckpoint = (atM: number): boolean => checkpoints.some((c) => Math.abs(c - atM) < SAME_PLACE_M);
  const boards = boardsM(plan).filter((b) => !isCheckpoint(b));
  const second = secondPlan(plan);
  const secondSchedule = second === null ? null : scheduleOf(second, course);
  const { rival } = plan;
  return splitsAt(schedule, [...boards, ...checkpoints]).map((split) => ({
    ...split,
    what: split.atM >= plan.distanceM ? 'finish' : isCheckpoint(split.atM) ? 'checkpoint' : 'board',
    secondS: secondSchedule === null ? null : secondSchedule.timeAtS(split.atM),
    rivalGapS: rival === undefined ? null : rivalTimeAtS(rival, split.atM) - split.timeS,
  }));
};

export const planSheetOf = (plan: RacePlan, course: CourseLine | null): PlanSheet => {
  const schedule = scheduleOf(plan, course);
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
  const cutOffs = (plan.cutOffs ?? []).map(({ atM, timeS }) => ({
    atM,
    timeS,
    leftS: timeS - schedule.timeAtS(atM),
  }));
  return { schedule, rows: rowsOf(plan, schedule, course), cutOffs, curve, ground };
};
