import { countedClips, numberClips, twoDigits } from './numbers.ts';

const S_PER_MINUTE = 60;
const S_PER_HOUR = 3600;

const secondsClips = (s: number): readonly string[] => countedClips(s, 'second', 'seconds');

export const minutesClips = (m: number): readonly string[] => countedClips(m, 'minute', 'minutes');

/**
 * A time as clips, whole seconds from 0 to 9:59:59. Each shape says by a word of its own what it is ('minutes', 'and …
 * seconds'), so that 1:44:00 and 1:00:44 differ by more than their order.
 */
export const timeClips = (timeS: number): readonly string[] => {
  const h = Math.floor(timeS / S_PER_HOUR);
  const m = Math.floor((timeS % S_PER_HOUR) / S_PER_MINUTE);
  const s = timeS % S_PER_MINUTE;
  const hours = h > 0 ? countedClips(h, 'hour', 'hours') : [];
  if (m > 0) return [...hours, ...(s > 0 ? [...numberClips(m), twoDigits(s)] : minutesClips(m))];
  if (s === 0 && h > 0) return hours;
  return [...hours, ...(h > 0 ? ['and'] : []), ...secondsClips(s)];
};

/** A number of seconds as a runner counts them, up to 99 minutes: 'four', 'one minute' 'twenty', 'two' 'minutes'. */
export const countClips = (spanS: number): readonly string[] => {
  const m = Math.floor(spanS / S_PER_MINUTE);
  const s = spanS % S_PER_MINUTE;
  return [...(m > 0 ? minutesClips(m) : []), ...(s > 0 || m === 0 ? numberClips(s) : [])];
};
