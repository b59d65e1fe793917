import { type Message, message } from '../../units/message.ts';
import { memory, PRACTICE, read, type Source, type SourcedRange } from '../source.ts';

const S_PER_H = 3600;
const MIN_PER_H = 60;

/** Efforts under this need no carbohydrate on the way (Burke et al. 2011: about an hour, small amounts or a rinse). */
const SHORT_EFFORT_S = S_PER_H;
/** Beyond this the upper limit rises (Burke et al. 2011, Jeukendrup 2014: up to 90 g/h beyond 2.5 h). */
const LONG_EFFORT_S = 2.5 * S_PER_H;
/** The position stands split the days before at this length. */
const LOADING_FROM_S = 90 * MIN_PER_H;

/** Grams of carbohydrate an hour on the way, not scaled by body mass. Zero to zero where none is needed. */
export const carbohydrateDuring = (durationS: number): SourcedRange => {
  const source = read(message('Burke et al. 2011; Jeukendrup 2014'));
  if (durationS < SHORT_EFFORT_S) return { lower: 0, upper: 0, source };
  return { lower: 30, upper: durationS > LONG_EFFORT_S ? 90 : 60, source };
};

/** An amount by body mass, and in grams for this runner where the mass is known. */
export interface MassRange {
  readonly gPerKg: SourcedRange;
  /** Grams for this runner; null where the mass was not given. */
  readonly grams: { readonly lower: number; readonly upper: number } | null;
}

export interface Loading {
  /** Carbohydrate for each 24 hours. */
  readonly perDay: MassRange;
  /** How long before the race it starts, hours. */
  readonly hours: { readonly fewest: number; readonly most: number };
}

const forMass = (gPerKg: SourcedRange, massKg: number | null): MassRange => ({
  gPerKg,
  grams:
    massKg === null
      ? null
      : { lower: Math.round(gPerKg.lower * massKg), upper: Math.round(gPerKg.upper * massKg) },
});

/**
 * Carbohydrate in the days before, on top of nothing: this is the day's whole. Null under an hour: eat as usual.
 * Short (60 to 90 min): 7-12 g/kg in the 24 h before; longer: 10-12 g/kg a day for 1.5 to 2 days.
 */
export const loadingFor = (durationS: number, massKg: number | null): Loading | null => {
  if (durationS < SHORT_EFFORT_S) return null;
  if (durationS <= LOADING_FROM_S)
    return {
      perDay: forMass(
        { lower: 7, upper: 12, source: memory(message('Thomas et al. 2016, joint position statement')) },
        massKg,
      ),
      hours: { fewest: 24, most: 24 },
    };
  const source = read(
    message('joint position statement 2016, as quoted by a secondary page; the statement itself not seen'),
  );
  return { perDay: forMass({ lower: 10, upper: 12, source }, massKg), hours: { fewest: 36, most: 48 } };
};

/** The meal before: its time before the gun, and its carbohydrate. */
export interface Breakfast {
  readonly minutesBefore: { readonly fewest: number; readonly most: number };
  readonly carbohydrate: MassRange;
  readonly text: Message;
  readonly sources: readonly Source[];
}

/** Two to three hours before the gun, inside the 1 to 4 hours of Wallis & Podlogar 2022. */
export const BREAKFAST_MIN_BEFORE = { fewest: 120, most: 180, usual: 150 } as const;

/** 1-4 g/kg in the 1-4 h before efforts over an hour; under an hour the same meal may be small. */
export const breakfastFor = (durationS: number, massKg: number | null): Breakfast => ({
  minutesBefore: { fewest: BREAKFAST_MIN_BEFORE.fewest, most: BREAKFAST_MIN_BEFORE.most },
  carbohydrate: forMass(
    {
      lower: 1,
      upper: durationS < SHORT_EFFORT_S ? 2 : 4,
      source: read(message('Wallis and Podlogar 2022: 1 to 4 g/kg in the 1 to 4 hours before')),
    },
    massKg,
  ),
  text: message(
    'The breakfast that you know from long runs: bread, oats, rice or the like, little fat and fibre. Nearer the gun, the lower figure.',
  ),
  sources: [
    read(message('Wallis and Podlogar 2022')),
    {
      ...PRACTICE,
      text: message('two to three hours before, and the choice of food: common practice, no source'),
    },
  ],
});
