import type { Offer } from '../../plan/supplies.ts';
import { type Message, message } from '../../units/message.ts';

/** Where there is water, ascending, metres. Sports drink is not water to follow a gel with: sugar on sugar. */
export const waterStations = (
  stations: readonly { readonly atM: number; readonly offers: readonly Offer[] }[],
): readonly number[] =>
  stations
    .filter((s) => s.offers.includes('water'))
    .map((s) => s.atM)
    .sort((a, b) => a - b);

/** The first water at or after a place and no later than the latest one that makes sense; null if there is none. */
export const nextWater = (waterM: readonly number[], fromM: number, latestM: number): number | null =>
  waterM.find((m) => m >= fromM && m <= latestM) ?? null;

/** A station as the runner should use it. */
export interface Drink {
  readonly atM: number;
  readonly text: Message;
}

/** What to do at each water station: sips, by thirst. `gelBeforeM`: places of gels that this water follows. */
export const drinksAt = (
  stations: readonly { readonly atM: number; readonly offers: readonly Offer[] }[],
  stops: readonly { readonly waterAtM: number | null }[],
): readonly Drink[] =>
  waterStations(stations).map((atM) => ({
    atM,
    text: stops.some((s) => s.waterAtM === atM)
      ? message('Two or three sips after the gel.')
      : message('A sip or two if you are thirsty; else run on.'),
  }));
