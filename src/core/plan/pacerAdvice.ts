import type { Estimated } from './pacer.ts';

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

/** Heading less goal, seconds, with its standard deviation. */
export const adviceFor = (againstGoalS: number, sdS: number): Advice => {
  const offS = Math.abs(againstGoalS);
  if (sdS > TOO_VAGUE_SD_S) return 'unsure';
  if (offS <= NEAR_S) return 'with';
  if (offS < SURE_SD * sdS) return 'unsure';
  return againstGoalS < 0 ? 'let go' : 'go past';
};

/** Whether a pacer is off their flag by more than the error covers. */
export const isOffFlag = ({ s, sdS }: Estimated): boolean => Math.round(Math.abs(s)) >= SURE_SD * sdS;
