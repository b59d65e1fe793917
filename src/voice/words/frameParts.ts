import type { Place } from '../../core/cues/saying.ts';
import type { Offer } from '../../core/plan/supplies.ts';
import { type DistanceUnit, metresPer } from '../../core/units/units.ts';
import type { Tongue } from './tongue.ts';
import type { Sentence } from './words.ts';

/** How far away a thing is said, and to which step: a runner cannot tell 230 m from 250 m. */
const STEP_M = 50;
const FARTHEST_M = 950;

/** Metres as they are said: 0 for what is at hand. */
export const saidMetres = (m: number): number => Math.min(FARTHEST_M, Math.round(m / STEP_M) * STEP_M);

export const tenthsOf = (distanceM: number, unit: DistanceUnit): number =>
  Math.round((distanceM * 10) / metresPer(unit));

export const placeOf = (tongue: Tongue, place: Place): Sentence =>
  'name' in place ? [tongue.phrases.halfway] : tongue.place(place.tenths, place.unit);

export const awayOf = (tongue: Tongue, inM: number): Sentence => {
  const m = saidMetres(inM);
  return m <= 0 ? [tongue.phrases.now] : tongue.inMetres(m);
};

/** 'water' 'and' 'gel'; the last two are joined by 'and', the others stand beside each other. */
export const listOf = (tongue: Tongue, offers: readonly Offer[]): Sentence =>
  offers.flatMap((offer, i) => [
    ...(i > 0 && i === offers.length - 1 ? [tongue.and] : []),
    tongue.offers[offer],
  ]);
