import type { Place } from '../../../core/cues/saying.ts';
import { type DistanceUnit, metresPer } from '../../../core/units/units.ts';
import { countedClips, numberClips, numberWords } from './numbers.ts';

/** A whole number of units: 'five K', 'one mile', 'ten miles'. */
export const unitsClips = (n: number, unit: DistanceUnit): readonly string[] =>
  unit === 'km' ? countedClips(n, 'K', 'K') : countedClips(n, 'mile', 'miles');

/** Tenths of a unit: 'five K', or 'twenty-one' 'point one K'. */
export const tenthsClips = (tenths: number, unit: DistanceUnit): readonly string[] => {
  const whole = Math.floor(tenths / 10);
  const tenth = tenths % 10;
  return tenth === 0
    ? unitsClips(whole, unit)
    : [...numberClips(whole), `point ${numberWords(tenth)} ${unit === 'km' ? 'K' : 'miles'}`];
};

/** A length in metres, to the tenth of a unit. */
export const distanceClips = (distanceM: number, unit: DistanceUnit): readonly string[] =>
  tenthsClips(Math.round((distanceM * 10) / metresPer(unit)), unit);

export const placeClips = (place: Place): readonly string[] =>
  'name' in place ? ['halfway'] : tenthsClips(place.tenths, place.unit);

/** From here on a way ahead is said in kilometres. */
const LONG_WAY_M = 1000;
const STEP_M = 50;

/** How far ahead something is: 'in two hundred metres', to 50 m; 'in' 'one' 'point two K' from a kilometre on; 'now'. */
export const inMetresClips = (inM: number): readonly string[] => {
  const m = Math.round(inM / STEP_M) * STEP_M;
  if (m <= 0) return ['now'];
  if (m >= LONG_WAY_M) return ['in', ...distanceClips(m, 'km')];
  return [
    'in',
    ...(m >= 100 ? [numberWords(m - (m % 100))] : []),
    m % 100 === 0 ? 'metres' : m < 100 ? 'fifty metres' : 'and fifty metres',
  ];
};
