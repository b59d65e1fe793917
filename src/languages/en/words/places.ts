import type { Place } from '../../../core/cues/saying.ts';
import { type DistanceUnit, metresPer } from '../../../core/units/units.ts';
import { countedClips, numberClips, numberWords } from './numbers.ts';

const unitsClips = (n: number, unit: DistanceUnit): readonly string[] =>
  unit === 'km' ? countedClips(n, 'K', 'K') : countedClips(n, 'mile', 'miles');

/** Tenths of a unit: 'five K', or 'twenty-one' 'point one' 'K'. */
export const tenthsClips = (tenths: number, unit: DistanceUnit): readonly string[] => {
  const whole = Math.floor(tenths / 10);
  const tenth = tenths % 10;
  if (tenth === 0) return unitsClips(whole, unit);
  return [...numberClips(whole), `point ${numberWords(tenth)}`, unit === 'km' ? 'K' : 'miles'];
};

/** A length in metres, to the tenth of a unit. */
export const distanceClips = (distanceM: number, unit: DistanceUnit): readonly string[] =>
  tenthsClips(Math.round((distanceM * 10) / metresPer(unit)), unit);

/** 'halfway', 'at' 'five K'. */
export const placeClips = (place: Place): readonly string[] =>
  'name' in place ? ['halfway'] : ['at', ...tenthsClips(place.tenths, place.unit)];

/** How far ahead a thing is said, and to which step: a runner cannot tell 230 m from 250 m. */
const STEP_M = 50;
const FARTHEST_M = 950;

/** 'in two hundred metres', 'in two hundred and fifty metres'; 'now' where it is at hand. */
export const inMetresClips = (inM: number): readonly string[] => {
  const m = Math.min(FARTHEST_M, Math.round(inM / STEP_M) * STEP_M);
  if (m <= 0) return ['now'];
  if (m < 100) return ['in', 'fifty metres'];
  return [
    'in',
    ...numberClips(Math.floor(m / 100)),
    'hundred',
    m % 100 === 0 ? 'metres' : 'and fifty metres',
  ];
};
