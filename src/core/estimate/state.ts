import type { CourseLine } from '../course/line.ts';
import type { Plane } from '../geo/ruler.ts';
import type { Arrivals } from './arrivals.ts';
import type { Stand } from './backInPen.ts';
import type { Contender } from './contenders.ts';
import type { FreeTrack } from './freeTracker.ts';
import type { Odometer } from './odometer.ts';
import type { PlaneFix } from './planeFix.ts';
import type { PodScale } from './podScale.ts';
import type { PodState } from './podSpeed.ts';
import type { Reading } from './reading.ts';
import type { ReceiverPrior } from './receiver.ts';

/** What the estimate may know beforehand: the course and its boards, never the plan's paces. */
export interface EstimatorSetup {
  readonly course: CourseLine | null;
  readonly officialM: number;
  /** Where kilometre or mile boards stand, ascending. */
  readonly boardsM: readonly number[];
  /** What is known of this phone's receiver; absent: what is usual. */
  readonly receiver?: ReceiverPrior;
  /** What was learned of the foot pod in earlier runs; absent: what is usual. */
  readonly pod?: PodScale;
}

/** The last press at a board and what became of it; boardM is null where no board made sense. */
export interface Press {
  readonly atMs: number;
  readonly boardM: number | null;
}

/** The belief about where the runner is: before the start only what the pen shows. */
export type Belief =
  | { readonly kind: 'pen'; readonly fixes: readonly PlaneFix[] }
  | {
      readonly kind: 'course';
      readonly contenders: readonly Contender[];
      /** The line the other way round, where the start did not rule it out: part of a course may be run both ways. */
      readonly otherWay?: CourseLine | null;
      /** Absent where another estimate without the line runs beside this one already. */
      readonly odometer?: Odometer | null;
    }
  | { readonly kind: 'free'; readonly track: FreeTrack };

export interface EstimatorState {
  readonly gunMs: number | null;
  /** Own clock 0: given by the `start` event or found; null before. Found starts are set in arrears. */
  readonly startMs: number | null;
  /** The runner has pressed on start: nothing that is found stands above that. */
  readonly startGiven: boolean;
  /** Where the runner has stayed of late. */
  readonly stand: Stand;
  readonly stopMs: number | null;
  readonly lastPress: Press | null;
  /** Fixes that could not be used. */
  readonly skipped: number;
  readonly fixes: number;
  /** The line turned out to be recorded against the direction of the race and was turned round. */
  readonly lineReversed: boolean;
  readonly plane: Plane | null;
  readonly arrivals: Arrivals;
  readonly reading: Reading;
  readonly belief: Belief;
  readonly stride: Stride;
  /** Null where no foot pod was heard. */
  readonly pod: PodState | null;
  /** When the last fix that was used was taken; null before the first. */
  readonly lastUsedMs: number | null;
}

/** What is known of the runner's step. */
export interface Stride {
  /** Metres a step; null while not learned. */
  readonly lengthM: number | null;
  readonly seen: number;
}
