import type { CompanySaying } from '../../core/cues/companySaying.ts';
import type { Form } from '../../core/cues/voicePort.ts';
import type { Tongue } from './tongue.ts';
import type { Sentence } from './words.ts';

/** Calls about others and before the race. */
export const companyWords = (tongue: Tongue, saying: CompanySaying, form: Form): readonly Sentence[] => {
  const { phrases, time, drift } = tongue;
  switch (saying.kind) {
    case 'pacer': {
      const heading = [phrases.pacer, ...time(saying.ownS)];
      const advice = [tongue.advice[saying.advice]];
      if (form === 'short') return [heading, advice];
      return [
        heading,
        ...(saying.gunS === null ? [] : [[phrases.byTheGun, ...time(saying.gunS)]]),
        saying.flag.side === 'even' ? [phrases.onTheirFlag] : [phrases.againstFlag, ...drift(saying.flag)],
        advice,
      ];
    }
    case 'noPacer':
      return [[phrases.noPacer]];
    case 'rival':
      return [
        saying.ahead.side === 'even' ? [phrases.levelWithRival] : [phrases.toRival, ...drift(saying.ahead)],
      ];
    case 'reminder':
      return [[tongue.reminders[saying.what]]];
  }
};
