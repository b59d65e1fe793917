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
  readonly push: { readonly fromM: number; readonly quickerSPerKm: number } | null;
  /** Ascending, each in (0, distanceM). */
  readonly checkpointsM: readonly number[];
  readonly stations: readonly { readonly atM: number; readonly offers: readonly Offer[] }[];
  readonly fuel: readonly { readonly item: Item; readonly atM: number }[];
}
