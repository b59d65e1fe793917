import type { RaceDayWish } from '../../../src/core/prepare/day/raceDayWish.ts';
import type { TaperWish } from '../../../src/core/prepare/day/taper.ts';

/** The morning of a half marathon in 1:44:00. */
export const HALF_MORNING: RaceDayWish = {
  startMinute: 570,
  penClosesMin: 10,
  travelMin: 40,
  temperatureC: 11,
  durationS: 6240,
  massKg: 68,
};

/** The days before it, for somebody who runs four times a week. */
export const HALF_TAPER: TaperWish = {
  raceWeekday: 6,
  weeklyKm: 50,
  runDays: [1, 3, 5, 6],
  longRunDay: 6,
  goalPaceSPerKm: 295.77,
  raceDistanceM: 21_097.5,
  unit: 'km',
};
