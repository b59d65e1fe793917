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
