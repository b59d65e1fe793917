import type { RacePlan } from '../plan/racePlan.ts';
import type { Schedule } from '../plan/schedule.ts';
import { boardsM } from '../plan/splits.ts';

/** A kilometre or mile board on the course. */
export interface Board {
  readonly atM: number;
  readonly count: number;
  /** A call of its own stands here that says as much: the board is passed in silence. */
  readonly taken: boolean;
}

/** What the rules know of the race before it begins. Places ascend. */
export interface Race {
  readonly plan: RacePlan;
  readonly schedule: Schedule;
  readonly boards: readonly Board[];
  readonly stations: RacePlan['stations'];
  readonly fuel: RacePlan['fuel'];
  /** Planned own time at the line. */
  readonly totalS: number;
  /** No course line: where the runner is rests on fixes and presses alone. */
  readonly byPresses: boolean;
}

/** Nearer than this a board and another call are one place: about a dozen seconds of running. */
const SAME_PLACE_M = 50;

const ascending = <T extends { readonly atM: number }>(places: readonly T[]): T[] =>
  [...places].sort((a, b) => a.atM - b.atM);

export const raceOf = (plan: RacePlan, schedule: Schedule, hasLine: boolean): Race => {
  const others = [...plan.checkpointsM, plan.distanceM];
  if (plan.opening) others.push(plan.opening.untilM);
  if (plan.push) others.push(plan.push.fromM);
  return {
    plan,
    schedule,
    boards: boardsM(plan).map((atM, i) => ({
      atM,
      count: i + 1,
      taken: others.some((other) => Math.abs(other - atM) <= SAME_PLACE_M),
    })),
    stations: ascending(plan.stations.filter((s) => s.offers.length > 0)),
    fuel: ascending(plan.fuel),
    totalS: schedule.timeAtS(plan.distanceM),
    byPresses: !hasLine,
  };
};

/** Goal pace: what the whole race asks for, without opening and push. Seconds per kilometre. */
export const goalPaceSPerKm = ({ plan }: Race): number => (plan.goalS / plan.distanceM) * 1000;
