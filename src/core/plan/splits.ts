import { metresPer } from '../units/units.ts';
import type { RacePlan } from './racePlan.ts';
import type { Schedule } from './schedule.ts';

/** One row of the plan's table. */
export interface Split {
  readonly atM: number;
  /** Planned own-clock time there. */
  readonly timeS: number;
  /** Planned time since the row before (or the start). */
  readonly splitS: number;
  /** Mean planned pace since the row before. */
  readonly paceSPerKm: number;
}

/** Planned rows at given places, ascending; places outside (0, distance] are left out, the finish is always last. */
export const splitsAt = (schedule: Schedule, placesM: readonly number[]): Split[] => {
  const inside = placesM.filter((m) => m > 0 && m < schedule.distanceM).sort((a, b) => a - b);
  let lastM = 0;
  let lastS = 0;
  return [...new Set(inside), schedule.distanceM].map((atM) => {
    const timeS = schedule.timeAtS(atM);
    const split = { atM, timeS, splitS: timeS - lastS, paceSPerKm: ((timeS - lastS) / (atM - lastM)) * 1000 };
    lastM = atM;
    lastS = timeS;
    return split;
  });
};

/** Boards of the plan's unit short of the finish: every kilometre or every mile. */
export const boardsM = (plan: Pick<RacePlan, 'distanceM' | 'unit'>): number[] => {
  const unitM = metresPer(plan.unit);
  return Array.from({ length: Math.ceil(plan.distanceM / unitM) - 1 }, (_, i) => (i + 1) * unitM);
};

export const boardSplits = (plan: Pick<RacePlan, 'distanceM' | 'unit'>, schedule: Schedule): Split[] =>
  splitsAt(schedule, boardsM(plan));

export const checkpointSplits = (plan: Pick<RacePlan, 'checkpointsM'>, schedule: Schedule): Split[] =>
  splitsAt(schedule, plan.checkpointsM);
