import type { Drift } from '../drift/drift.ts';
import type { Progress } from '../estimate/progress.ts';
import type { Race } from './race.ts';

/** What a rule sees: the race at one instant after the start. */
export interface Moment {
  readonly race: Race;
  readonly nowMs: number;
  readonly startMs: number;
  /** Instant of zero on the clock that the goal is by: the start, or the gun. */
  readonly goalZeroMs: number;
  readonly progress: Progress;
  /** Worked out when a rule asks for it. */
  readonly drift: () => Drift;
}
