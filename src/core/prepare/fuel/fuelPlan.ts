import type { Schedule } from '../../plan/schedule.ts';
import type { Item, Offer } from '../../plan/supplies.ts';
import { type Message, message } from '../../units/message.ts';
import { M_PER_MILE } from '../../units/units.ts';
import type { CautionKey } from '../cautions.ts';
import { carbohydrateDuring } from './carbohydrate.ts';
import { nextWater, waterStations } from './water.ts';

/** How the runner wants to place gels. */
export type FuelChoice =
  | { readonly how: 'halfway' }
  /** At 10 miles; for races longer than that. */
  | { readonly how: 'tenMiles' }
  /** By grams of carbohydrate an hour over the whole race. */
  | { readonly how: 'rate'; readonly gPerHour: number };

export interface FuelWish {
  readonly distanceM: number;
  readonly schedule: Schedule;
  readonly stations: readonly { readonly atM: number; readonly offers: readonly Offer[] }[];
  readonly choice: FuelChoice;
  readonly item: Item;
  /** Carbohydrate in one of it, grams: from the packet. */
  readonly itemG: number;
}

/** One gel (or other item) to take. `item` and `atM` are what a race plan's `fuel` holds. */
export interface FuelStop {
  readonly item: Item;
  readonly atM: number;
  /** Planned own-clock time there, seconds. */
  readonly timeS: number;
  /** Where it would be without regard to water. */
  readonly wantedM: number;
  /** The water that follows; null where none does. */
  readonly waterAtM: number | null;
}

export interface FuelPlan {
  readonly stops: readonly FuelStop[];
  /** How many to carry from the start. */
  readonly carried: number;
  readonly carriedG: number;
  /** Over the planned duration, grams an hour: what the stops come to, not what was wished. */
  readonly gPerHour: number;
  readonly notes: readonly Message[];
  readonly cautions: readonly CautionKey[];
}

const S_PER_H = 3600;
/** A gel is begun this far before the water: about 40 s to open and swallow it (common practice, no source). */
export const BEFORE_WATER_M = 150;
/** Nothing in the last quarter of an hour: it would not act before the line (common practice, no source). */
const LAST_USEFUL_S = 900;
/** A shortfall against the chosen rate that is worth telling, g/h (common practice, no source). */
const LESS_G_PER_H = 5;
/** A longer wait for water than this is told (about a quarter of an hour of running; common practice, no source). */
const FAR_MOVE_M = 3000;

/** Never two within this time: what the gut takes up has a limit (common practice, no source). */
const LEAST_GAP_S = 900;

const wantedM = (wish: FuelWish, durationS: number): readonly number[] => {
  switch (wish.choice.how) {
    case 'halfway':
      return [wish.distanceM / 2];
    case 'tenMiles':
      return [10 * M_PER_MILE].filter((m) => m < wish.distanceM);
    case 'rate': {
      const everyS = (S_PER_H * wish.itemG) / wish.choice.gPerHour;
      const many = everyS > 0 ? Math.floor((durationS - LAST_USEFUL_S) / everyS) : 0;
      return Array.from({ length: Math.max(0, many) }, (_, n) => wish.schedule.distanceAtM((n + 1) * everyS));
    }
  }
};

const place = (wish: FuelWish, wants: readonly number[], durationS: number): readonly FuelStop[] => {
  const { schedule } = wish;
  const waters = waterStations(wish.stations);
  // A place that the runner chose counts even late in the race; one that the clock chose must still act.
  const chosenM = wish.choice.how === 'rate' ? 0 : (wants[0] ?? 0);
  const latestM = Math.max(chosenM, schedule.distanceAtM(durationS - LAST_USEFUL_S));
  const stops: FuelStop[] = [];
  for (const want of wants) {
    const before = stops.at(-1);
    const earliestM = before ? Math.max(want, schedule.distanceAtM(before.timeS + LEAST_GAP_S)) : want;
    if (earliestM > latestM) continue;
    const water = nextWater(waters, earliestM, latestM + BEFORE_WATER_M);
    const atM = water === null ? earliestM : Math.max(earliestM, water - BEFORE_WATER_M);
    stops.push({ item: wish.item, atM, timeS: schedule.timeAtS(atM), wantedM: want, waterAtM: water });
  }
  return stops;
};

const notesOf = (
  wish: FuelWish,
  stops: readonly FuelStop[],
  gPerHour: number,
  durationS: number,
): readonly Message[] => {
  const notes: Message[] = [];
  const { lower, upper } = carbohydrateDuring(durationS);
  if (upper === 0)
    notes.push(message('Under an hour nothing is needed on the way. A rinse of the mouth is enough.'));
  else if (wish.choice.how === 'rate' && (wish.choice.gPerHour < lower || wish.choice.gPerHour > upper))
    notes.push(
      message(
        'For a race of this length {lower} to {upper} g an hour is usual. More only if you have practised it.',
        { lower, upper },
      ),
    );
  if (wish.choice.how === 'rate' && gPerHour < wish.choice.gPerHour - LESS_G_PER_H)
    notes.push(
      message(
        'This comes to {g} g an hour over the whole race: the first one is not at the start, and none falls into the last quarter of an hour.',
        { g: Math.round(gPerHour) },
      ),
    );
  if (stops.some((s) => s.waterAtM === null))
    notes.push(message('No water follows one of these: carry some, or move it by hand.'));
  if (stops.some((s) => s.atM - s.wantedM > FAR_MOVE_M))
    notes.push(message('One of these waits long for water. Look whether a station is missing.'));
  if (wish.choice.how === 'tenMiles' && stops.length === 0)
    notes.push(message('This race ends before 10 miles.'));
  return notes;
};

const cautionsFor = (item: Item): readonly CautionKey[] => [
  'practised',
  'stomach',
  'thirst',
  'diabetes',
  'allergy',
  ...(item === 'caffeine gel' ? (['caffeine'] as const) : []),
  'general',
];

/** Gels placed by the runner's choice and moved to just before the next water. Metres, seconds, grams. */
export const planFuel = (wish: FuelWish): FuelPlan => {
  const durationS = wish.schedule.timeAtS(wish.distanceM);
  const stops = place(wish, wantedM(wish, durationS), durationS);
  const carriedG = stops.length * wish.itemG;
  const gPerHour = carriedG / (durationS / S_PER_H);
  return {
    stops,
    carried: stops.length,
    carriedG,
    gPerHour,
    notes: notesOf(wish, stops, gPerHour, durationS),
    cautions: cautionsFor(wish.item),
  };
};
