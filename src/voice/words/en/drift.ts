import type { Ahead } from '../../../core/cues/saying.ts';
import type { Sentence } from '../words.ts';
import { countedClips, numberWords } from './numbers.ts';

const S_PER_MINUTE = 60;

/** 'two seconds up', 'about ten seconds down', 'one minute twenty seconds up', 'on plan'. */
export const driftClips = (ahead: Ahead): Sentence => {
  const about = ahead.sure ? [] : ['about'];
  if (ahead.side === 'even' || ahead.seconds === 0) return [...about, 'on plan'];
  const minutes = Math.floor(ahead.seconds / S_PER_MINUTE);
  const s = ahead.seconds % S_PER_MINUTE;
  const whole = minutes > 0 ? [numberWords(minutes), minutes === 1 ? 'minute' : 'minutes'] : [];
  return s === 0
    ? [...about, ...whole, ahead.side]
    : [...about, ...whole, ...countedClips(s, `second ${ahead.side}`, `seconds ${ahead.side}`)];
};
