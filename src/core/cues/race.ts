import type { RacePlan } from '../plan/racePlan.ts';
import type { Schedule } from '../plan/schedule.ts';
import { metresPer } from '../units/units.ts';

/** A kilometre or mile board on the course. */
export interface Board {
  readonly atM: number;
  readonly count: number;
  /** A call of its own stands here that says as much: the board is passed in silence. */
  readonly taken: boolean;
}

/** What the rules know of the race before it begins. */
export interface Race {
  readonly plan: RacePlan;
  readonly schedule: Schedule;
  readonly boards: readonly Board[];
}

/** Nearer than this a board and another call are one place: about a dozen seconds of running. */
const SAME_PLACE_M = 50;

export const raceOf = (plan: RacePlan, schedule: Schedule): Race => {
  const unitM = metresPer(plan.unit);
  const others = [...plan.checkpointsM, plan.distanceM];
  if (plan.opening) others.push(plan.opening.untilM);
  if (plan.push) others.push(plan.push.fromM);
  const boards: Board[] = [];
  for (let count = 1; count * unitM < plan.distanceM; count++) {
    const atM = count * unitM;
    boards.push({ atM, count, taken: others.some((other) => Math.abs(other - atM) <= SAME_PLACE_M) });
  }
  return { plan, schedule, boards };
};
