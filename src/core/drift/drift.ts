import type { Progress } from '../estimate/progress.ts';
import type { RacePlan } from '../plan/racePlan.ts';
import type { Schedule } from '../plan/schedule.ts';
import { M_PER_KM } from '../units/units.ts';
import type { Keeping } from './keeping.ts';
import { chanceWithin, projectRest } from './projection.ts';

/** Estimate against schedule, at one instant. Ahead is positive, behind negative. */
export interface Drift {
  readonly aheadS: number;
  readonly aheadSdS: number;
  /** Own-clock time at the line if the runner goes on as now; null before there is anything to project from. */
  readonly projectedFinishS: number | null;
  readonly projectedFinishSdS: number;
  /** Mean pace from here to the line that still makes the goal; null when no distance or no time is left. */
  readonly neededPaceSPerKm: number | null;
  /** Probability of making the goal, 0..1. */
  readonly goalChance: number;
}

/** The two clocks of a race at one instant, seconds. */
export interface Clocks {
  /** Since the runner crossed the start line. */
  readonly ownS: number;
  /** On the clock that the goal is by: the own clock, or the gun's where the plan says so and the gun was heard. */
  readonly goalS: number;
}

/** Own and goal clock at an instant. */
export const clocksAt = (plan: RacePlan, startMs: number, gunMs: number | null, atMs: number): Clocks => ({
  ownS: (atMs - startMs) / 1000,
  goalS: (atMs - (plan.goalBy === 'gun' && gunMs !== null ? gunMs : startMs)) / 1000,
});

/** Seconds ahead of the schedule at one instant, and its standard deviation: a metre is worth the planned pace there. */
export const aheadAt = (
  schedule: Schedule,
  progress: Progress,
  goalClockS: number,
): { readonly aheadS: number; readonly aheadSdS: number } => ({
  aheadS: schedule.timeAtS(progress.distanceM) - goalClockS,
  aheadSdS: (progress.distanceSdM * schedule.paceAtSPerKm(progress.distanceM)) / M_PER_KM,
});

/** Estimate against schedule. */
export const driftAt = (
  schedule: Schedule,
  plan: RacePlan,
  progress: Progress,
  clocks: Clocks,
  keeping: Keeping,
): Drift => {
  const { aheadS, aheadSdS } = aheadAt(schedule, progress, clocks.goalS);
  const remainingM = schedule.distanceM - progress.distanceM;
  const remainingPlanS = schedule.timeAtS(schedule.distanceM) - schedule.timeAtS(progress.distanceM);
  const hasProjection = progress.distanceM > 0;
  const projection = projectRest(keeping, remainingPlanS, aheadSdS);
  const leftS = plan.goalS - clocks.goalS;
  return {
    aheadS,
    aheadSdS,
    projectedFinishS: hasProjection ? clocks.ownS + projection.restS : null,
    projectedFinishSdS: projection.sdS,
    neededPaceSPerKm: remainingM > 0 && leftS > 0 ? (leftS / remainingM) * M_PER_KM : null,
    goalChance: hasProjection ? chanceWithin(projection, leftS) : 0,
  };
};
