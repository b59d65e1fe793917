/** Dates as a calendar on the wall has them: no time zone, no clock. Gregorian. */
export interface CivilDate {
  readonly year: number;
  /** 1 to 12. */
  readonly month: number;
  /** 1 to 31. */
  readonly day: number;
}

/** A time of day on a date, by the clocks of the place. `minuteOfDay` 0 to 1439. */
export interface CivilTime {
  readonly date: CivilDate;
  readonly minuteOfDay: number;
}

/** 0 = Monday to 6 = Sunday. */
export type Weekday = 0 | 1 | 2 | 3 | 4 | 5 | 6;

const MIN_PER_DAY = 1440;
const DAYS_PER_400_YEARS = 146_097;
/** Days from 1 March of the year 0 to 1 January 1970. */
const EPOCH_SHIFT = 719_468;

/** Days since 1 January 1970. Years counted from March, so that a leap day is the last of its year (Hinnant 2013). */
export const dayNumber = ({ year, month, day }: CivilDate): number => {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_PER_400_YEARS + dayOfEra - EPOCH_SHIFT;
};

/** The inverse of `dayNumber`. */
export const dateOfDay = (days: number): CivilDate => {
  const z = days + EPOCH_SHIFT;
  const era = Math.floor(z / DAYS_PER_400_YEARS);
  const dayOfEra = z - era * DAYS_PER_400_YEARS;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1,
  };
};

export const addDays = (date: CivilDate, days: number): CivilDate => dateOfDay(dayNumber(date) + days);

/** 1 January 1970 was a Thursday. */
export const weekdayOf = (date: CivilDate): Weekday => ((((dayNumber(date) + 3) % 7) + 7) % 7) as Weekday;

/** Whole minutes after (or before) midnight of a date, folded to the day that they fall on. */
export const civilTime = (date: CivilDate, minutes: number): CivilTime => {
  const days = Math.floor(minutes / MIN_PER_DAY);
  return { date: addDays(date, days), minuteOfDay: minutes - days * MIN_PER_DAY };
};

/** Whether the figures name a day that exists. */
export const isCivilDate = (date: CivilDate): boolean => {
  const parts = [date.year, date.month, date.day];
  if (!parts.every(Number.isInteger) || date.year < 1 || date.year > 9999) return false;
  const back = dateOfDay(dayNumber(date));
  return back.year === date.year && back.month === date.month && back.day === date.day;
};
