import { type DoorError, err, ok, type Result } from '../../units/result.ts';

/** What decides the clock of a race day. */
export interface RaceDayWish {
  /** Minute of the day at which the gun goes, 0 to 1439, by the clocks of the place. */
  readonly startMinute: number;
  /** The pen closes this many minutes before the gun; 0 where nothing closes. */
  readonly penClosesMin: number;
  /** Door to race village, minutes. */
  readonly travelMin: number;
  readonly temperatureC: number | null;
  /** Planned duration of the race, seconds. */
  readonly durationS: number;
  /** Body mass, kilograms; null where it was not given. */
  readonly massKg: number | null;
}

/** Each figure that must lie in a range, in minutes, degrees or kilograms. The pen's limit keeps breakfast 2-3 h before the gun. */
export const RACE_DAY_LIMITS = {
  startMinute: { least: 0, most: 1439, expected: 'a minute of the day, 0 to 1439' },
  penClosesMin: { least: 0, most: 90, expected: 'minutes before the gun, 0 to 90' },
  travelMin: { least: 0, most: 600, expected: 'minutes of travel, 0 to 600' },
  temperatureC: { least: -40, most: 50, expected: 'degrees Celsius, -40 to 50' },
  durationS: { least: 300, most: 200_000, expected: 'a race of 5 minutes to 55 hours, in seconds' },
  massKg: { least: 25, most: 250, expected: 'kilograms, 25 to 250' },
} as const;

const MAY_BE_UNKNOWN: readonly string[] = ['temperatureC', 'massKg'];

/** The runner's entries made safe: whole minutes inside the limits, or the first field that is not. */
export const parseRaceDayWish = (wish: RaceDayWish): Result<RaceDayWish, DoorError> => {
  for (const field of Object.keys(RACE_DAY_LIMITS) as (keyof typeof RACE_DAY_LIMITS)[]) {
    const found = wish[field];
    const { least, most, expected } = RACE_DAY_LIMITS[field];
    if (found === null && MAY_BE_UNKNOWN.includes(field)) continue;
    if (found === null || !(found >= least && found <= most))
      return err({ place: field, expected, found: String(found) });
  }
  return ok({
    ...wish,
    startMinute: Math.floor(wish.startMinute),
    penClosesMin: Math.ceil(wish.penClosesMin),
    travelMin: Math.ceil(wish.travelMin),
  });
};
