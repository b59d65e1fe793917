import { type Item, SUPPLY_NAMES } from '../../plan/supplies.ts';
import { message } from '../../units/message.ts';
import { type Cue, type Found, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import type { Race } from '../race.ts';
import { atHandMs, inMetres, isAtHand } from './ahead.ts';

/**
 * Fuel ahead. What: the runner's own item and how far; 'with water' where a station comes close behind it. Why now: a
 * minute before, to get it out. More important than a station: it is forgotten at the cost of the last kilometres. True
 * until the place is there. Short: without the water.
 */
export interface FuelWatch {
  readonly next: number;
}

/** Water this near (metres before and behind the item's place) goes with it. */
const WATER_BEFORE_M = 20;
const WATER_BEHIND_M = 300;

export const beginFuel: FuelWatch = { next: 0 };

export const hasWater = ({ stations }: Race, atM: number): boolean =>
  stations.some(
    (s) => s.atM >= atM - WATER_BEFORE_M && s.atM <= atM + WATER_BEHIND_M && s.offers.includes('water'),
  );

const cueAt = (moment: Moment, atM: number, item: Item, inM: number): Cue => ({
  topic: 'fuel',
  saying: { kind: 'fuel', item, inM: Math.round(inM), withWater: hasWater(moment.race, atM) },
  importance: IMPORTANCE.fuel,
  manner: 'routine',
  dueMs: moment.nowMs,
  expiresMs: atHandMs(moment, atM),
  onlyShort: false,
  spare: false,
  atM,
  aheadS: null,
  aheadSdS: null,
  distanceM: moment.progress.distanceM,
  why: message('{item} in {distance} m', { item: SUPPLY_NAMES[item], distance: Math.round(inM) }),
});

export const lookForFuel = (watch: FuelWatch, moment: Moment): Found<FuelWatch> | null => {
  const item = moment.race.fuel[watch.next];
  if (item === undefined) return null;
  const inM = inMetres(moment, item.atM);
  if (inM === null) return null;
  return {
    watch: { next: watch.next + 1 },
    cue: isAtHand(inM) ? null : cueAt(moment, item.atM, item.item, inM),
  };
};

/** The same cue some seconds later: the place has come nearer. */
export const fuelAgain = (cue: Cue, moment: Moment): Cue | null => {
  if (cue.saying.kind !== 'fuel' || cue.atM === null) return null;
  const inM = cue.atM - moment.progress.distanceM;
  return isAtHand(inM) ? null : cueAt(moment, cue.atM, cue.saying.item, inM);
};
