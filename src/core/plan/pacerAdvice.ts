import type { PacerHeading } from './pacer.ts';

/**
 * `with`: they are heading for your goal; `let go`: they are quicker than your goal; `go past`: they are slower;
 * `unsure`: too early to tell.
 */
export const ADVICE = ['with', 'let go', 'go past', 'unsure'] as const;
export type Advice = (typeof ADVICE)[number];

/** A pacer this near to the goal at the line is worth their company (common practice, no source). */
const NEAR_S = 20;
/** A verdict needs the difference to be this many standard deviations. */
const SURE_SD = 1.5;
/** Beyond this error no verdict at all, seconds. */
const TOO_VAGUE_SD_S = 75;

/** Whether to go with the pacer. `goalS` by the clock named in `goalBy`, as in the plan. */
export const adviceFor = (heading: PacerHeading, goalS: number, goalBy: 'own' | 'gun'): Advice => {
  const { s, sdS } = goalBy === 'own' ? heading.runnerOwn : heading.gun;
  const againstGoalS = s - goalS;
  const offS = Math.abs(againstGoalS);
  if (sdS > TOO_VAGUE_SD_S) return 'unsure';
  if (offS <= NEAR_S) return 'with';
  if (offS < SURE_SD * sdS) return 'unsure';
  return againstGoalS < 0 ? 'let go' : 'go past';
};
