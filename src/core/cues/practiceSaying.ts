import type { Effort, LegKind } from '../plan/practicePlan.ts';
import type { DistanceUnit } from '../units/units.ts';
import type { Ahead, Pace } from './saying.ts';

/** How far something is or goes: whole seconds up to 9:59:59, or metres up to 100 units. */
export type Length = { readonly timeS: number } | { readonly distanceM: number; readonly unit: DistanceUnit };

/** What a call of a practice session means, in no language; ranges as in saying.ts. */
export type PracticeSaying =
  /** A leg begins: what it is, how long, what it asks. */
  | {
      readonly kind: 'leg';
      readonly what: LegKind;
      readonly rep: { readonly count: number; readonly of: number } | null;
      readonly length: Length | 'press';
      readonly target: Pace | Effort | null;
      /** What sounds first: the countdown to its begin, or where there was none (the start, a press) a tone. */
      readonly tone: 'countdown' | 'leg';
    }
  /** The result of a leg that asked for something; a pace where distance was known. */
  | {
      readonly kind: 'rep';
      readonly count: number | null;
      readonly pace: Pace | null;
      readonly ahead: Ahead | null;
    }
  /** On the way through a leg: half of it, or so much left. */
  | {
      readonly kind: 'remaining';
      readonly left: Length | 'half' | 'press';
      readonly ahead: Ahead | null;
    }
  /** Above the ceiling on heart rate, beats a minute from 60 to 250. */
  | { readonly kind: 'heart'; readonly bpm: number; readonly mostBpm: number }
  /** Whole minutes, 0 to 60, to the closing of the pen. */
  | { readonly kind: 'pen'; readonly inMin: number }
  /** The session is over. */
  | {
      readonly kind: 'done';
      readonly tone: 'countdown' | 'finish';
      readonly timeS: number;
      readonly distance: { readonly tenths: number; readonly unit: DistanceUnit } | null;
    };
