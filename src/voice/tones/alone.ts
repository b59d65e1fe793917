import type { Saying } from '../../core/cues/saying.ts';
import type { Tone } from '../../core/cues/voicePort.ts';
import { toneOf } from './opening.ts';

/**
 * The tone that is the whole of a call for those who want no words; null where words stay.
 *
 * Words stay for food and drink (what, and whether with water, cannot be heard from a tone, and the wrong one harms), for
 * what the runner asked for or pressed (they want the answer), for what the device has to tell, and for the one-off calls
 * that ask for something no tone means: that places go by the clock, that the course is run backwards, that the pen closes,
 * the reminders of the morning. The ceiling on heart rate is 'ease': that is what to do about it.
 */
export const aloneOf = (saying: Saying): Tone | null => {
  switch (saying.kind) {
    case 'opening':
      return saying.what === 'hold' ? 'leg' : 'ease';
    case 'marker':
      return 'what' in saying ? null : 'marker';
    case 'signal':
      return saying.what === 'lineReversed' ? null : saying.what;
    case 'start':
    case 'settle':
    case 'push':
    case 'leg':
    case 'done':
    case 'heart':
    case 'remaining':
    case 'checkpoint':
    case 'ease':
    case 'quicken':
    case 'due':
    case 'finish':
      return toneOf(saying);
    case 'notice':
      // Heard again after a gap: as good as the signal that is back.
      return saying.what === 'resumed' || saying.what === 'soundBack' ? 'back' : null;
    case 'rep':
    case 'rival':
    case 'station':
    case 'fuel':
    case 'byClock':
    case 'pen':
    case 'reminder':
    case 'pacer':
    case 'noPacer':
    case 'answer':
      return null;
  }
};
