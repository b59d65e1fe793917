import { crossingMs } from '../crossing.ts';
import type { Moment } from '../moment.ts';

/**
 * Places that are announced before they come: about a minute ahead at the runner's speed, so that there is time to move
 * over, but near enough to be seen soon.
 */
const WARNING_S = 60;
const NEAREST_M = 200;
const FARTHEST_M = 300;
/** Nearer than this the place announces itself. */
const AT_HAND_M = 60;

/** How long before a place it is announced, metres. */
const leadM = ({ progress }: Moment): number =>
  Math.min(FARTHEST_M, Math.max(NEAREST_M, WARNING_S * progress.speedMps));

/** How far a place is, metres, if it is to be announced; null while it is still far. */
export const inMetres = (moment: Moment, atM: number): number | null => {
  const inM = atM - moment.progress.distanceM;
  return inM > leadM(moment) ? null : inM;
};

/** Too near, or behind: it is not announced any more. */
export const isAtHand = (inM: number): boolean => inM < AT_HAND_M;

/** When a place will be at hand. */
export const atHandMs = (moment: Moment, atM: number): number => crossingMs(moment, atM - AT_HAND_M);
