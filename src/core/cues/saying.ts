import type { Item, Offer } from '../plan/supplies.ts';
import type { DistanceUnit } from '../units/units.ts';

/**
 * What a call means, in no language. All rounding happens where a Saying is made, so that the words cannot claim more
 * than is known. Whole seconds throughout; paces are whole seconds per `unit`.
 */
export type Saying =
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
  | { readonly kind: 'finish'; readonly timeS: number; readonly ahead: Ahead };

export interface Pace {
  readonly sPerUnit: number;
  readonly unit: DistanceUnit;
}

/** Drift as it may be said: `seconds` is rounded to a step that the uncertainty allows. */
export interface Ahead {
  readonly side: 'up' | 'down' | 'even';
  readonly seconds: number;
  /** False where the number is worth no more than 'about'. */
  readonly sure: boolean;
}

/** A place with a name of its own, else a distance in tenths of the unit. */
export type Place = { readonly name: 'halfway' } | { readonly tenths: number; readonly unit: DistanceUnit };
