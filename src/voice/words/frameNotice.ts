import type { NoticeSaying } from '../../core/cues/noticeSaying.ts';
import type { Form } from '../../core/cues/voicePort.ts';
import { placeOf } from './frameParts.ts';
import type { Tongue } from './tongue.ts';
import type { Sentence } from './words.ts';

/** Calls about the device, or by the clock alone. */
export const noticeWords = (tongue: Tongue, saying: NoticeSaying, form: Form): readonly Sentence[] => {
  const { phrases } = tongue;
  switch (saying.kind) {
    case 'byClock':
      return form === 'short'
        ? [[phrases.byClock]]
        : [[phrases.noPosition], [phrases.byClock], [phrases.pressAtBoards]];
    case 'due':
      return [[phrases.nowByPlan, ...placeOf(tongue, saying.place)]];
    case 'notice': {
      const [happened, so] = tongue.notices[saying.what];
      if (form === 'short') return [[happened]];
      return [
        [happened],
        ...(so === null ? [] : [[so]]),
        ...(saying.ahead ? [tongue.drift(saying.ahead)] : []),
      ];
    }
  }
};
