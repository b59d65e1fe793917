import type { DistanceUnit } from '../units/units.ts';
import type { Item, Offer } from './supplies.ts';

/** What the runner means to do (plan file version 1, `kind: "race"`), parsed: every number is finite and consistent. */
export interface RacePlan {
  readonly version: 1;
  readonly kind: 'race';
  readonly name: string;
  readonly distanceM: number;
  /** Goal time in seconds. */
  readonly goalS: number;
  /** Which clock the goal is by: the runner's own (from the start line) or the gun's. */
  readonly goalBy: 'own' | 'gun';
  readonly unit: DistanceUnit;
  /** Even pace, or even effort on hills where the course has elevation. Absent in a plan file: even effort. */
  readonly pacing: 'pace' | 'effort';
  readonly opening: { readonly untilM: number; readonly quickerSPerKm: number } | null;
  /** What becomes of the seconds that the opening wins: in hand to the line, or given back evenly after it. Absent: kept. */
  readonly openingWins?: 'kept' | 'spent';
  readonly push: { readonly fromM: number; readonly quickerSPerKm: number } | null;
  /** Ascending, each in (0, distanceM). */
  readonly checkpointsM: readonly number[];
  readonly stations: readonly { readonly atM: number; readonly offers: readonly Offer[] }[];
  readonly fuel: readonly { readonly item: Item; readonly atM: number }[];
  /** Another goal to keep an eye on: the one to fall back on, or the one for a very good day. */
  readonly secondGoal?: SecondGoal;
  /** The pacer whose flag counts for this runner. */
  readonly pacer?: Pacer;
  /** Whoever the runner wants to hear the gap to. */
  readonly rival?: Rival;
  /** When the race closes a place, by the gun. Ascending. */
  readonly cutOffs?: readonly { readonly atM: number; readonly timeS: number }[];
  /** Where no signal is to be expected. */
  readonly tunnels?: readonly { readonly fromM: number; readonly toM: number }[];
  /** Kilometre or mile boards that do not stand where they say. */
  readonly wrongBoards?: readonly WrongBoard[];
}

export interface SecondGoal {
  readonly kind: 'safe' | 'dream';
  /** By the same clock as the goal, seconds. */
  readonly goalS: number;
}

/** A pacer with a flag, as the race announces them. */
export interface Pacer {
  /** The time on the flag, seconds. */
  readonly flagS: number;
  /** The clock that they run by: most by the gun (common practice, no source; ask them in the pen). */
  readonly by: 'gun' | 'own';
}

export interface Rival {
  readonly name: string;
  /** Times on the clock of this plan's goal, ascending in both; the last one is the finish. Even pace between them. */
  readonly splits: readonly { readonly atM: number; readonly timeS: number }[];
}

export interface WrongBoard {
  /** What the board says, metres. */
  readonly saysM: number;
  /** Where it stands; null: nobody knows, it counts for nothing. */
  readonly standsAtM: number | null;
}
