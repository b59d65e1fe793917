import type { Tone } from '../../core/cues/voicePort.ts';
import { type Message, message } from '../../core/units/message.ts';

interface ToneTexts {
  readonly name: Message;
  readonly means: Message;
  /** What its drawing shows, for those who do not see it. */
  readonly looks: Message;
}

export const TONE_TEXTS: Readonly<Record<Tone, ToneTexts>> = {
  countdown: {
    name: message('Countdown||tone'),
    means: message('Three seconds to go. The long note is the moment: a leg of practice begins or ends.'),
    looks: message('Three short ticks a second apart, then one long higher note.'),
  },
  leg: {
    name: message('New part||tone'),
    means: message('A part of the race begins: the start, your steady pace, the push. In practice a leg.'),
    looks: message('Short, short, then long and higher.'),
  },
  ease: {
    name: message('Ease||tone'),
    means: message('Too quick, or your heart rate is above its ceiling: run easier.'),
    looks: message('Two slow notes, both sinking.'),
  },
  quicken: {
    name: message('Quicken||tone'),
    means: message('Too slow for the plan: run quicker, if you can.'),
    looks: message('Four quick notes that climb.'),
  },
  marker: {
    name: message('Mark||tone'),
    means: message('A board or a checkpoint, now. In practice: halfway, or nearly there.'),
    looks: message('One knock.'),
  },
  lost: {
    name: message('Signal lost||tone'),
    means: message('No position. Soundline goes on by your pace.'),
    looks: message('Three notes, each lower and longer than the one before.'),
  },
  back: {
    name: message('Signal back||tone'),
    means: message('The position, or the sound, is there again.'),
    looks: message('One long note, then three quick ones, higher.'),
  },
  finish: {
    name: message('Finish||tone'),
    means: message('You are through, and the run is over.'),
    looks: message('Long, short, short, long, long: it ends high.'),
  },
};
