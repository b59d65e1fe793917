import { presetAt } from '../plan/presets.ts';
import { decimalUpTo, type Message, message, plural } from '../units/message.ts';
import { type DistanceUnit, M_PER_KM, metresPer, pacePer } from '../units/units.ts';

/** Figures as a runner writes them. Only sentences, calendars and paper use these; everything else stays a number. */

const S_PER_MIN = 60;
const S_PER_H = 3600;
const MIN_PER_H = 60;
const MIN_PER_DAY = 1440;

const two = (n: number): string => String(n).padStart(2, '0');

/** A duration: `41:42`, `1:32:00`. Whole seconds, rounded to the nearest; a minus sign in front of a negative one. */
export const durationText = (durationS: number): string => {
  const whole = Math.round(Math.abs(durationS));
  const sign = durationS < 0 && whole > 0 ? '-' : '';
  const h = Math.floor(whole / S_PER_H);
  const min = Math.floor((whole % S_PER_H) / S_PER_MIN);
  const s = whole % S_PER_MIN;
  return h > 0 ? `${sign}${h}:${two(min)}:${two(s)}` : `${sign}${min}:${two(s)}`;
};

/** Estimates are not known to the second: from this length on they are said in whole minutes, below in tens of seconds. */
const ROUGH_FROM_S = 2400;

/** An estimated duration, without precision that it does not have: `1:39:00`, `21:20`. */
export const roughDurationText = (
  durationS: number,
  stepS = Math.abs(durationS) >= ROUGH_FROM_S ? S_PER_MIN : 10,
): string => durationText(stepS * Math.round(durationS / stepS));

/** A pace with its unit: `4:16 per km`, `6:52 per mile`. */
export const paceText = (paceSPerKm: number, unit: DistanceUnit): Message => {
  const pace = durationText(pacePer(unit, paceSPerKm));
  return unit === 'km' ? message('{pace} per km', { pace }) : message('{pace} per mile', { pace });
};

/** A place on the course: `10 km`, `10.5 km`, `6.56 miles`; at most `decimals` places, without idle zeros. */
export const distanceText = (
  distanceM: number,
  unit: DistanceUnit,
  decimals = unit === 'km' ? 1 : 2,
): Message => {
  const n = decimalUpTo(distanceM / metresPer(unit), decimals);
  return unit === 'km' ? message('{n} km', { n }) : plural(n.number, '{n} mile', '{n} miles', { n });
};

/** The name of a race distance as it stands inside a sentence, or its length in kilometres. */
export const raceText = (distanceM: number): Message => {
  switch (presetAt(distanceM)?.name) {
    case 'Half marathon':
      return message('half marathon');
    case 'Marathon':
      return message('marathon');
    case '10 miles':
      return distanceText(distanceM, 'mile', 0);
    default:
      return message('{n} km', { n: decimalUpTo(distanceM / M_PER_KM, 2) });
  }
};

/** A time of day from minutes after midnight: `07:05`. Any whole number of minutes; days before and after fold in. */
export const timeOfDayText = (minuteOfDay: number): string => {
  const m = ((Math.round(minuteOfDay) % MIN_PER_DAY) + MIN_PER_DAY) % MIN_PER_DAY;
  return `${two(Math.floor(m / MIN_PER_H))}:${two(m % MIN_PER_H)}`;
};
