import { type DistanceUnit, metresPer, pacePer } from '../core/units/units.ts';

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

/** Distance in the unit with the given decimals: `5.00`. */
export const distance = (metres: number, unit: DistanceUnit, decimals = 2): string =>
  (metres / metresPer(unit)).toFixed(decimals);

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
