import type { RacePlan } from '../plan/racePlan.ts';
import type { Schedule } from '../plan/schedule.ts';
import { boardsM } from '../plan/splits.ts';

/** A kilometre or mile board on the course. */
export interface Board {
  /** Where it stands. */
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
  /** Boards and checkpoints, each place once; not the finish, which the runner sees. */
  readonly placesM: readonly number[];
  readonly stations: RacePlan['stations'];
  readonly fuel: RacePlan['fuel'];
  /** Planned own time at the line. */
  readonly totalS: number;
  /** No course line: where the runner is rests on fixes and presses alone. */
  readonly byPresses: boolean;
}

/** Nearer than this a board and another call are one place: about a dozen seconds of running. */
const SAME_PLACE_M = 50;

const isSamePlace = (aM: number, bM: number): boolean => Math.abs(aM - bM) <= SAME_PLACE_M;

/** A board that says this within a metre is meant. */
const SAYS_M = 1;

/** Where a board stands on the day: where it says, unless the plan knows better; null where nobody knows. */
const standsAtM = (plan: RacePlan, saysM: number): number | null => {
  const wrong = plan.wrongBoards?.find((b) => Math.abs(b.saysM - saysM) < SAYS_M);
  return wrong === undefined ? saysM : wrong.standsAtM;
};

const ascending = <T extends { readonly atM: number }>(places: readonly T[]): T[] =>
  [...places].sort((a, b) => a.atM - b.atM);

export const raceOf = (plan: RacePlan, schedule: Schedule, hasLine: boolean): Race => {
  const others = [...plan.checkpointsM, plan.distanceM];
  if (plan.opening) others.push(plan.opening.untilM);
  if (plan.push) others.push(plan.push.fromM);
  const boards = boardsM(plan)
    .flatMap((saysM, i) => {
      const atM = standsAtM(plan, saysM);
      return atM === null ? [] : [{ atM, count: i + 1, taken: others.some((m) => isSamePlace(m, atM)) }];
    })
    .sort((a, b) => a.atM - b.atM);
  return {
    plan,
    schedule,
    boards,
    placesM: [...plan.checkpointsM, ...boards.map((b) => b.atM)]
      .filter((m) => m < plan.distanceM - SAME_PLACE_M)
      .sort((a, b) => a - b)
      .filter((m, i, all) => i === 0 || m - (all[i - 1] ?? 0) > 1),
    stations: ascending(plan.stations.filter((s) => s.offers.length > 0)),
    fuel: ascending(plan.fuel),
    totalS: schedule.timeAtS(plan.distanceM),
    byPresses: !hasLine,
  };
};

/** Goal pace: what the whole race asks for, without opening and push. Seconds per kilometre. */
export const goalPaceSPerKm = ({ plan }: Race): number => (plan.goalS / plan.distanceM) * 1000;
