import type { Saying } from '../../../src/core/cues/saying.ts';
import type { Form } from '../../../src/core/cues/voicePort.ts';
import type { Words } from '../../../src/voice/words/words.ts';
import { plainWords } from './grammar.ts';

/** The same call with another sign, another number of seconds, or to quicken instead of to ease. */
const twistsOf = (saying: Saying): readonly Saying[] => {
  const twists: Saying[] = [];
  if ('ahead' in saying && saying.ahead !== null && saying.ahead.side !== 'even') {
    const side = saying.ahead.side === 'up' ? 'down' : 'up';
    twists.push({ ...saying, ahead: { ...saying.ahead, side } } as Saying);
    twists.push({ ...saying, ahead: { ...saying.ahead, seconds: saying.ahead.seconds + 1 } } as Saying);
  }
  if (saying.kind === 'ease' || saying.kind === 'quicken') {
    twists.push({ ...saying, kind: saying.kind === 'ease' ? 'quicken' : 'ease' });
    twists.push({ ...saying, byS: saying.byS + 1 });
  }
  return twists;
};

/**
 * Which words of a call turn its meaning when they are misheard: the clips that change when the sign, the seconds or the
 * verb change. One flag a word.
 */
export const criticalWords = (words: Words, saying: Saying, form: Form): readonly boolean[] => {
  const clips = words.say(saying, form).flat();
  const twisted = twistsOf(saying).map((twist) => words.say(twist, form).flat());
  return clips.flatMap((clip, i) => {
    const critical = twisted.some((others) => others[i] !== clip);
    return plainWords(clip).map(() => critical);
  });
};
