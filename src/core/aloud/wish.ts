import type { Saying } from '../cues/saying.ts';

/** Something that is to be said at a time of the plan. Seconds from the start; before it they are negative. */
export interface Wish {
  /** When it would best begin. */
  readonly atS: number;
  /** It may begin this early and this late; both are `atS` where the call belongs to a moment. */
  readonly fromS: number;
  readonly untilS: number;
  /** What is said if it begins at that time: a distance ahead shrinks as it comes nearer. */
  readonly saying: (atS: number) => Saying;
  /** The long form is left for the short one where there is no room for it. */
  readonly longest: 'long' | 'short';
  /** Whoever has the higher number goes first. */
  readonly importance: number;
  /** The place on the course; null where there is none. */
  readonly atM: number | null;
}

/** What goes before what, in a voice that goes by the clock alone. */
export const IMPORTANCE = { start: 90, mark: 80, turn: 70, fuel: 60, board: 50, station: 40 } as const;

/** A wish that belongs to a moment. */
export const atMoment = (
  atS: number,
  saying: Saying,
  importance: number,
  atM: number | null,
  longest: Wish['longest'] = 'long',
): Wish => ({ atS, fromS: atS, untilS: atS, saying: () => saying, longest, importance, atM });
