import { decimal, decimalUpTo } from '../core/units/message.ts';
import { type DistanceUnit, metresPer, pacePer } from '../core/units/units.ts';

import { screenLanguage, shownNumber } from '../languages/text.ts';

const two = (n: number): string => String(n).padStart(2, '0');

/** 3725 s as `1:02:05`, 185 s as `3:05`. Whole seconds, rounded down as race clocks are. */
export const clock = (seconds: number): string => {
  const whole = Math.floor(Math.max(0, seconds));
  const h = Math.floor(whole / 3600);
  const m = Math.floor((whole % 3600) / 60);
  return h > 0 ? `${h}:${two(m)}:${two(whole % 60)}` : `${m}:${two(whole % 60)}`;
};

/** Seconds rounded to the nearest, for what is planned or measured as a length of time. */
export const span = (seconds: number): string => clock(Math.round(seconds));

/** Pace as `4:56`, per the given unit; a dash when standing. */
export const pace = (paceSPerKm: number, unit: DistanceUnit): string =>
  Number.isFinite(paceSPerKm) ? span(pacePer(unit, paceSPerKm)) : '–';

/** Distance in the unit with the given decimals: `5.00`, or `5,00` where that is the way to write it. */
export const distance = (metres: number, unit: DistanceUnit, decimals = 2): string =>
  shownNumber(decimal(metres / metresPer(unit), decimals));

/** As `distance`, without idle zeros: `5`, `21.1`. */
export const shortDistance = (metres: number, unit: DistanceUnit, decimals = 2): string =>
  shownNumber(decimalUpTo(metres / metresPer(unit), decimals));

/** 1 January 2024 was a Monday. */
const A_MONDAY_MS = Date.UTC(2024, 0, 1);
const MS_PER_DAY = 86_400_000;

/** A day of the week in the language of the screens; 0 is Monday. */
export const weekdayName = (weekday: number, length: 'short' | 'long'): string =>
  new Intl.DateTimeFormat(screenLanguage.value, { weekday: length, timeZone: 'UTC' }).format(
    A_MONDAY_MS + weekday * MS_PER_DAY,
  );

export const unitName = (unit: DistanceUnit): string => (unit === 'km' ? 'km' : 'mi');

export type Side = 'up' | 'down' | 'even';

/** How a drift is shown: which side of the water line, and the figure without a sign. */
export interface Sounded {
  readonly side: Side;
  readonly figure: string;
}

export const sounded = (aheadS: number): Sounded => {
  const whole = Math.round(Math.abs(aheadS));
  const figure = whole < 100 ? String(whole) : span(whole);
  return { side: whole === 0 ? 'even' : aheadS > 0 ? 'up' : 'down', figure };
};
