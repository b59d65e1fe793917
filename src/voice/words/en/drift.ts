import type { Ahead } from '../../../core/cues/saying.ts';
import type { Sentence } from '../words.ts';
import { spanClips } from './times.ts';

/**
 * 'ahead by' 'two seconds', 'behind by' 'about' 'ten seconds', 'on plan'.
 *
 * Why these words: at 0 dB in babble and wind the recogniser took 'up' for 'down', or lost it, 20 times in 100, 'ahead'
 * for 'behind' 3 times; of 17 pairs only longer ones did better. And the number stands between two words that are
 * always there ('by … seconds'): said first, it was wrong 25 times in 100, here 6 times. `npm run bench:voice` shows both.
 */
export const driftClips = (ahead: Ahead): Sentence => {
  const about = ahead.sure ? [] : ['about'];
  if (ahead.side === 'even' || ahead.seconds === 0) return [...about, 'on plan'];
  return [ahead.side === 'up' ? 'ahead by' : 'behind by', ...about, ...spanClips(ahead.seconds)];
};
