import type { DistanceUnit } from '../units/units.ts';
import type { PracticeCourse } from './practiceCourse.ts';
import type { Item } from './supplies.ts';

/**
 * What a stretch of a session is for. 'work' is what is repeated or held (a threshold leg, an interval); 'stride' a short
 * quick run that is no effort; 'opening' and 'goal pace' are the race's own, practised.
 */
export const LEG_KINDS = [
  'warm-up',
  'work',
  'recovery',
  'easy',
  'stride',
  'opening',
  'goal pace',
  'cool-down',
] as const;
export type LegKind = (typeof LEG_KINDS)[number];

/** Efforts in words, as runners use them among themselves. */
export const EFFORTS = ['easy', 'steady', 'comfortably hard', 'hard', 'quick and loose'] as const;
export type Effort = (typeof EFFORTS)[number];

/** Where a leg ends. */
export type Extent =
  | { readonly by: 'time'; readonly timeS: number }
  | { readonly by: 'distance'; readonly distanceM: number }
  /** When the runner presses. */
  | { readonly by: 'press' };

/** What is asked of a leg. */
export type Target =
  | { readonly by: 'pace'; readonly paceSPerKm: number }
  | { readonly by: 'effort'; readonly effort: Effort }
  | { readonly by: 'free' };

/** Something to take on the way, so many seconds or metres into the leg. */
export interface Taking {
  readonly item: Item | 'water';
  readonly at: { readonly timeS: number } | { readonly distanceM: number };
}

/** A stretch with one target. */
export interface Leg {
  readonly kind: LegKind;
  readonly extent: Extent;
  readonly target: Target;
  /** Seconds to find the pace in: what is won or lost in them does not count. */
  readonly rampS: number;
  /** Which of how many; null for a leg that stands alone. */
  readonly rep: { readonly count: number; readonly of: number } | null;
  /** Heart rate not to be passed, beats a minute; null where none is asked. */
  readonly heartMostBpm: number | null;
  readonly take: readonly Taking[];
}

/** A practice session (plan file version 1, `kind: "practice"`), parsed and laid out: repeats are written out. */
export interface PracticePlan {
  readonly version: 1;
  readonly kind: 'practice';
  readonly name: string;
  readonly unit: DistanceUnit;
  /** Indoors there are no fixes: by time alone, or by a foot pod where there is one. */
  readonly place: 'road' | 'indoors';
  /** Epoch ms at which the pen of a race closes: the warm-up counts down to it; null where there is none. */
  readonly penClosesMs: number | null;
  /** The way that the session is run on, wholly or in part; absent: any. */
  readonly course?: PracticeCourse;
  /** At least one. */
  readonly legs: readonly Leg[];
}
