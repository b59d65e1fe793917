import { message } from '../units/message.ts';
import type { Pacer, Rival, SecondGoal, WrongBoard } from './racePlan.ts';
import { fields, listOf, numberThat, oneOf, orElse, type Read, textUpTo } from './shape.ts';
import { ITEMS, type Item, OFFERS, type Offer } from './supplies.ts';

/** Longer than any race on a road; keeps tables and arrays of a hostile file small. */
const MAX_DISTANCE_M = 1_000_000;
const MAX_GOAL_S = 30 * 24 * 3600;
const MAX_ITEMS = 500;
const MAX_NAME_CHARS = 200;

/** Shorter than a stride there is nothing to plan, and arithmetic runs out of digits. */
const MIN_DISTANCE_M = 1;

const distance = numberThat(
  message('a number of metres from {from} to {to}', { from: MIN_DISTANCE_M, to: MAX_DISTANCE_M }),
  (n) => n >= MIN_DISTANCE_M && n <= MAX_DISTANCE_M,
);
const place = numberThat('metres from the start, 0 or more', (n) => n >= 0);
const paceStep = numberThat('a number of seconds per kilometre', (n) => Math.abs(n) <= 3600);

/** A plan file field by field, before the fields are held against each other. */
export interface PlanFields {
  readonly name: string | null;
  readonly distanceM: number;
  readonly goalS: number;
  readonly goalBy: 'own' | 'gun';
  readonly unit: 'km' | 'mile';
  readonly pacing: 'effort' | 'pace';
  readonly opening: { readonly untilM: number; readonly quickerSPerKm: number } | null;
  readonly push: { readonly fromM: number; readonly quickerSPerKm: number } | null;
  readonly checkpointsM: readonly number[] | null;
  readonly stations: readonly { readonly atM: number; readonly offers: readonly Offer[] }[];
  readonly fuel: readonly { readonly item: Item; readonly atM: number }[];
  readonly openingWins: 'kept' | 'spent' | null;
  readonly secondGoal: SecondGoal | null;
  readonly pacer: Pacer | null;
  readonly rival: Rival | null;
  readonly cutOffs: readonly { readonly atM: number; readonly timeS: number }[] | null;
  readonly tunnels: readonly { readonly fromM: number; readonly toM: number }[] | null;
  readonly wrongBoards: readonly WrongBoard[] | null;
}

const duration = numberThat(
  message('a number of seconds above 0 and at most {n}', { n: MAX_GOAL_S }),
  (n) => n > 0 && n <= MAX_GOAL_S,
);
const timesAt = listOf(fields({ atM: distance, timeS: duration }), MAX_ITEMS);

const offers: Read<readonly Offer[]> = listOf(oneOf(OFFERS), OFFERS.length);

/** Reads the fields of `kind: "race"`. A station that does not say what it offers has water, as every road race's has. */
export const planFields: Read<PlanFields> = fields<PlanFields>({
  name: orElse(textUpTo(MAX_NAME_CHARS), null),
  distanceM: distance,
  goalS: duration,
  goalBy: orElse(oneOf(['own', 'gun']), 'own'),
  unit: orElse(oneOf(['km', 'mile']), 'km'),
  pacing: orElse(oneOf(['effort', 'pace']), 'effort'),
  opening: orElse(fields({ untilM: place, quickerSPerKm: paceStep }), null),
  push: orElse(fields({ fromM: place, quickerSPerKm: paceStep }), null),
  checkpointsM: orElse(listOf(distance, MAX_ITEMS), null),
  stations: orElse(listOf(fields({ atM: place, offers: orElse(offers, ['water']) }), MAX_ITEMS), []),
  fuel: orElse(listOf(fields({ item: oneOf(ITEMS), atM: place }), MAX_ITEMS), []),
  openingWins: orElse(oneOf<'kept' | 'spent'>(['kept', 'spent']), null),
  secondGoal: orElse(fields<SecondGoal>({ kind: oneOf(['safe', 'dream']), goalS: duration }), null),
  pacer: orElse(fields<Pacer>({ flagS: duration, by: orElse(oneOf(['gun', 'own']), 'gun') }), null),
  rival: orElse(fields({ name: orElse(textUpTo(MAX_NAME_CHARS), 'Rival'), splits: timesAt }), null),
  cutOffs: orElse(timesAt, null),
  tunnels: orElse(listOf(fields({ fromM: place, toM: place }), MAX_ITEMS), null),
  wrongBoards: orElse(listOf(fields({ saysM: distance, standsAtM: orElse(place, null) }), MAX_ITEMS), null),
});
