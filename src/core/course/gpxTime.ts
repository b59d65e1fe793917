/** xsd:dateTime, lenient in the places where recorders are: a space for the T, no seconds, no zone (then UTC, as GPX asks). */
const ISO =
  /^\s*(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d)(?:[.,](\d{1,9}))?)?\s*(?:(Z|z)|([+-])(\d\d):?(\d\d)?)?\s*$/;

const MS_PER_DAY = 86_400_000;
const DAYS_IN_MONTH = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Days from 1970-01-01 in the proleptic Gregorian calendar: years counted from March, so that the leap day is the last
 * of its year; 400 years are 146 097 days.
 */
const daysSinceEpoch = (year: number, month: number, day: number): number => {
  const y = month > 2 ? year : year - 1;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  return (
    era * 146_097 +
    yearOfEra * 365 +
    Math.floor(yearOfEra / 4) -
    Math.floor(yearOfEra / 100) +
    dayOfYear -
    719_468
  );
};

/** Milliseconds of the Unix epoch of a GPX time, or null where it is none. A leap second counts as the one after. */
export const gpxTimeMs = (text: string): number | null => {
  const m = ISO.exec(text);
  if (!m) return null;
  const n = (i: number): number => Number(m[i] ?? 0);
  const [year, month, day, hour, minute, second] = [n(1), n(2), n(3), n(4), n(5), n(6)];
  if (day < 1 || day > (DAYS_IN_MONTH[month - 1] ?? 0) || hour > 24 || minute > 59 || second > 60)
    return null;
  const zoneMin = (m[9] === '-' ? -1 : 1) * (n(10) * 60 + n(11));
  const ms = Math.round(Number(`0.${m[7] ?? 0}`) * 1000);
  return (
    daysSinceEpoch(year, month, day) * MS_PER_DAY + ((hour * 60 + minute - zoneMin) * 60 + second) * 1000 + ms
  );
};
