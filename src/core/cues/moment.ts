import type { Departure } from '../drift/departure.ts';
import type { Drift } from '../drift/drift.ts';
import type { Keeping } from '../drift/keeping.ts';
import type { Progress } from '../estimate/progress.ts';
import type { Race } from './race.ts';

/** What a rule sees: the race at one instant after the start. */
export interface Moment {
  readonly race: Race;
  readonly nowMs: number;
  readonly startMs: number;
  /** Zero of the clock that the goal is by: the start, or the gun. */
  readonly goalZeroMs: number;
  readonly progress: Progress;
  readonly aheadS: number;
  readonly aheadSdS: number;
  readonly keeping: Keeping;
  readonly departure: Departure;
  /** The last press that found a board, and which; null before. */
  readonly press: { readonly atMs: number; readonly boardM: number } | null;
  /** Seconds since a fix came in, usable or not; Infinity when there was none. */
  readonly sinceArrivalS: number;
  /** How far apart fixes come in, seconds. */
  readonly usualGapS: number;
  /** Everything about drift; worked out when a rule asks for it. */
  readonly drift: () => Drift;
}

/** How long without a usable fix a number rests on reckoning alone. */
const RECKONED_AFTER_S = 10;

export const isReckoned = ({ progress }: Moment): boolean => progress.sinceFixS > RECKONED_AFTER_S;

/** A speed this old is still seen, not reckoned; with a slow receiver, half as old again as its gaps. */
const SEEN_S = 4;
const SEEN_GAPS = 1.5;

/** The speed now rests on fixes of this moment: it tells something about the runner. */
export const isSeen = ({ progress, usualGapS }: Moment): boolean =>
  progress.sinceFixS <= Math.max(SEEN_S, SEEN_GAPS * usualGapS);
