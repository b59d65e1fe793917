import type { Sentence } from './words.ts';

const S_PER_MINUTE = 60;
const S_PER_HOUR = 3600;

/** How a language says the parts of a time. */
export interface ClockWords {
  readonly hours: (h: number) => Sentence;
  readonly minutes: (m: number) => Sentence;
  readonly seconds: (s: number) => Sentence;
  /** Minutes and seconds, both at least one: 'four' 'fifty-six', or 'quatre minutes' 'cinquante-six'. */
  readonly minutesAndSeconds: (m: number, s: number) => Sentence;
  /** Between hours and seconds when there are no minutes. */
  readonly and: string;
}

/**
 * A time as clips, whole seconds from 0 to 9:59:59. Each shape says by a word of its own what it is, so that 1:44:00 and
 * 1:00:44 differ by more than their order.
 */
export const timeIn =
  (clock: ClockWords) =>
  (timeS: number): Sentence => {
    const h = Math.floor(timeS / S_PER_HOUR);
    const m = Math.floor((timeS % S_PER_HOUR) / S_PER_MINUTE);
    const s = timeS % S_PER_MINUTE;
    const hours = h > 0 ? clock.hours(h) : [];
    if (m > 0) return [...hours, ...(s > 0 ? clock.minutesAndSeconds(m, s) : clock.minutes(m))];
    if (h > 0 && s === 0) return hours;
    return [...hours, ...(h > 0 ? [clock.and] : []), ...clock.seconds(s)];
  };

/** A number of seconds as a runner counts them: 'four', 'one minute' 'twenty', 'two' 'minutes'. */
export const countIn =
  (minutes: ClockWords['minutes'], number: (n: number) => Sentence) =>
  (spanS: number): Sentence => {
    const m = Math.floor(spanS / S_PER_MINUTE);
    const s = spanS % S_PER_MINUTE;
    return [...(m > 0 ? minutes(m) : []), ...(s > 0 || m === 0 ? number(s) : [])];
  };
