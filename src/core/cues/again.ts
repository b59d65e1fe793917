import type { Cue } from './cue.ts';
import type { Moment } from './moment.ts';
import { answerCue } from './rules/answer.ts';
import { fuelAgain } from './rules/fuel.ts';
import { paceAgain } from './rules/pace.ts';
import { type SignalWatch, signalAgain } from './rules/signal.ts';
import { stationAgain } from './rules/station.ts';

/** A cue that has waited, as it is true now; null where it is not true any more. */
export const again = (cue: Cue, moment: Moment, signal: SignalWatch): Cue | null => {
  switch (cue.topic) {
    case 'answer':
      return cue.saying.kind === 'answer' ? { ...answerCue(moment), expiresMs: cue.expiresMs } : cue;
    case 'station':
      return stationAgain(cue, moment);
    case 'fuel':
      return fuelAgain(cue, moment);
    case 'ease':
    case 'quicken':
    case 'tooQuick':
      return paceAgain(cue, moment, moment.departure);
    case 'signal':
    case 'signalBack':
      return signalAgain(cue, moment, signal);
    default:
      return cue;
  }
};
