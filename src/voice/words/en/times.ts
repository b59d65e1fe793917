import { countedClips, numberClips, twoDigits } from './numbers.ts';

const S_PER_MINUTE = 60;
const S_PER_HOUR = 3600;

/** Joins cost understanding, so what is said most is whole; one pack holds no more. */
const isWholeSeconds = (s: number): boolean => s <= 10 || s === 15 || s === 20 || s === 30;
const isWholeHours = (h: number): boolean => h <= 3;

/** 'two seconds', 'twenty-three' 'seconds'. */
export const secondsClips = (s: number): readonly string[] =>
  countedClips(s, 'second', 'seconds', isWholeSeconds);

export const minutesClips = (m: number): readonly string[] =>
  countedClips(m, 'minute', 'minutes', () => false);

/**
 * A time as clips, whole seconds from 0 to 9:59:59. Each shape says by a word of its own what it is ('minutes', 'and …
 * seconds'), so that 1:44:00 and 1:00:44 differ by more than their order.
 */
export const timeClips = (timeS: number): readonly string[] => {
  const h = Math.floor(timeS / S_PER_HOUR);
  const m = Math.floor((timeS % S_PER_HOUR) / S_PER_MINUTE);
  const s = timeS % S_PER_MINUTE;
  const hours = h > 0 ? countedClips(h, 'hour', 'hours', isWholeHours) : [];
  if (m > 0) return [...hours, ...(s > 0 ? [...numberClips(m), twoDigits(s)] : minutesClips(m))];
  if (s === 0 && h > 0) return hours;
  return [...hours, ...(h > 0 ? ['and'] : []), ...secondsClips(s)];
};

/** A length of time up to 99 minutes, as it is counted: 'four seconds', 'one' 'minute' 'twenty seconds'. */
export const spanClips = (spanS: number): readonly string[] => {
  const m = Math.floor(spanS / S_PER_MINUTE);
  const s = spanS % S_PER_MINUTE;
  if (m === 0) return secondsClips(s);
  return [...minutesClips(m), ...(s > 0 ? secondsClips(s) : [])];
};
