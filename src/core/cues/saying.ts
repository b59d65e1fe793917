import type { Item, Offer } from '../plan/supplies.ts';
import type { DistanceUnit } from '../units/units.ts';
import type { CompanySaying } from './companySaying.ts';
import type { NoticeSaying } from './noticeSaying.ts';
import type { PracticeSaying } from './practiceSaying.ts';

/**
 * What a call means, in no language. All rounding happens where a Saying is made, so that the words cannot claim more
 * than is known.
 *
 * Ranges, all whole numbers: times 0 to 35 999 s (9:59:59); paces 60 to 3599 s per unit; `byS` 1 to 100 s per unit;
 * `count` 1 to 100; `inM` 60 to 300 m; distances 0 to 100 units in metres; splits 0 to 3600 s.
 */
export type Saying =
  | PracticeSaying
  | CompanySaying
  | NoticeSaying
  | { readonly kind: 'start'; readonly goalS: number; readonly pace: Pace }
  | { readonly kind: 'opening'; readonly what: 'hold'; readonly pace: Pace; readonly untilM: number }
  /** Too quick even for the opening; seconds per unit above the opening's pace. */
  | { readonly kind: 'opening'; readonly what: 'tooQuick'; readonly byS: number; readonly unit: DistanceUnit }
  | { readonly kind: 'settle'; readonly pace: Pace; readonly ahead: Ahead }
  | {
      readonly kind: 'marker';
      readonly count: number;
      readonly unit: DistanceUnit;
      readonly splitS: number;
      readonly ahead: Ahead;
    }
  /** No board made sense for the press. */
  | { readonly kind: 'marker'; readonly what: 'noBoard' }
  | { readonly kind: 'checkpoint'; readonly place: Place; readonly timeS: number; readonly ahead: Ahead }
  /** Running too quick: ease by so many seconds per unit. */
  | { readonly kind: 'ease'; readonly byS: number; readonly unit: DistanceUnit; readonly ahead: Ahead }
  | { readonly kind: 'quicken'; readonly byS: number; readonly unit: DistanceUnit; readonly ahead: Ahead }
  | { readonly kind: 'station'; readonly offers: readonly Offer[]; readonly inM: number }
  | { readonly kind: 'fuel'; readonly item: Item; readonly inM: number; readonly withWater: boolean }
  | { readonly kind: 'push'; readonly pace: Pace; readonly remainingM: number; readonly ahead: Ahead }
  | { readonly kind: 'signal'; readonly what: 'lost' | 'back' | 'lineReversed'; readonly ahead: Ahead | null }
  | {
      readonly kind: 'answer';
      readonly distanceM: number;
      readonly unit: DistanceUnit;
      readonly ahead: Ahead | null;
      readonly finishS: number | null;
    }
  /** timeS on the clock that the goal is by; ownS besides where that is the gun's and the own time differs. */
  | { readonly kind: 'finish'; readonly timeS: number; readonly ahead: Ahead; readonly ownS?: number };

export interface Pace {
  readonly sPerUnit: number;
  readonly unit: DistanceUnit;
}

/**
 * Drift as it may be said, rounded to a step that the uncertainty allows: 0 when even, else 1 to 600 seconds, or from
 * there whole minutes up to 5940 (99 minutes).
 */
export interface Ahead {
  readonly side: 'up' | 'down' | 'even';
  readonly seconds: number;
  /** False where the number is worth no more than 'about'. */
  readonly sure: boolean;
}

/** A place with a name of its own, else a distance in tenths of the unit, 1 to 1000 of them. */
export type Place = { readonly name: 'halfway' } | { readonly tenths: number; readonly unit: DistanceUnit };
