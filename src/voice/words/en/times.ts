import { counted, numberWords } from './numbers.ts';

const S_PER_MINUTE = 60;
const S_PER_HOUR = 3600;

/** Two digits after minutes: 'oh five', 'twelve'. */
const seconds = (s: number): string => (s < 10 ? `oh ${numberWords(s)}` : numberWords(s));

/**
 * A time as clips, whole seconds from 0 to 9:59:59. Each shape says by a word of its own what it is ('minutes', 'and …
 * seconds'), so that 1:44:00 and 1:00:44 differ by more than their order.
 */
export const timeClips = (timeS: number): readonly string[] => {
  const h = Math.floor(timeS / S_PER_HOUR);
  const m = Math.floor((timeS % S_PER_HOUR) / S_PER_MINUTE);
  const s = timeS % S_PER_MINUTE;
  const hours = h > 0 ? [counted(h, 'hour', 'hours')] : [];
  if (m === 0 && s === 0) return h > 0 ? hours : ['zero seconds'];
  if (m === 0) return [...hours, ...(h > 0 ? ['and'] : []), numberWords(s), s === 1 ? 'second' : 'seconds'];
  if (s === 0) return [...hours, numberWords(m), m === 1 ? 'minute' : 'minutes'];
  return [...hours, numberWords(m), seconds(s)];
};
