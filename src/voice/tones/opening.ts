import type { Saying } from '../../core/cues/saying.ts';
import type { Tone } from '../../core/cues/voicePort.ts';

/** The tone that opens a call, where its kind has one. */
export const toneOf = (saying: Saying): Tone | null => {
  switch (saying.kind) {
    case 'leg':
    case 'done':
      return saying.tone;
    case 'heart':
      return 'ease';
    case 'rep':
    case 'remaining':
      return 'marker';
    case 'pen':
    case 'reminder':
      return 'leg';
    case 'start':
    case 'settle':
    case 'push':
      return 'leg';
    case 'opening':
      return saying.what === 'hold' ? null : 'ease';
    case 'marker':
    case 'checkpoint':
      return 'marker';
    case 'ease':
    case 'quicken':
    case 'finish':
      return saying.kind;
    case 'signal':
      return saying.what === 'lineReversed' ? null : saying.what;
    case 'byClock':
      return 'lost';
    case 'due':
      return 'marker';
    case 'rival':
    case 'pacer':
    case 'noPacer':
    case 'notice':
    case 'station':
    case 'fuel':
    case 'answer':
      return null;
  }
};
