import type { Saying } from '../../core/cues/saying.ts';
import type { Form } from '../../core/cues/voicePort.ts';
import { companyWords } from './frameCompany.ts';
import { noticeWords } from './frameNotice.ts';
import { awayOf, listOf, placeOf, tenthsOf } from './frameParts.ts';
import { practiceWords } from './framePractice.ts';
import type { Tongue } from './tongue.ts';
import type { Sentence, Words } from './words.ts';

const long = (tongue: Tongue, saying: Saying): readonly Sentence[] => {
  const { phrases, time, pace, place, drift, change } = tongue;
  switch (saying.kind) {
    case 'start':
      return [
        [phrases.clockRunning],
        [phrases.goal, ...time(saying.goalS)],
        [phrases.hold, ...pace(saying.pace.sPerUnit, saying.pace.unit)],
      ];
    case 'opening':
      if (saying.what === 'tooQuick') return [[phrases.tooQuick], change('ease', saying.byS, saying.unit)];
      return [
        [phrases.opening],
        [
          ...[phrases.hold, ...pace(saying.pace.sPerUnit, saying.pace.unit), tongue.until(saying.pace.unit)],
          ...place(tenthsOf(saying.untilM, saying.pace.unit), saying.pace.unit),
        ],
      ];
    case 'settle':
      return [[phrases.settleAt, ...pace(saying.pace.sPerUnit, saying.pace.unit)], drift(saying.ahead)];
    case 'marker':
      if ('what' in saying) return [[phrases.noBoard]];
      return [
        place(10 * saying.count, saying.unit),
        [phrases.split, ...time(saying.splitS)],
        drift(saying.ahead),
      ];
    case 'checkpoint':
      return [
        [...placeOf(tongue, saying.place), phrases.reachedIn, ...time(saying.timeS)],
        drift(saying.ahead),
      ];
    case 'ease':
    case 'quicken':
      return [change(saying.kind, saying.byS, saying.unit), drift(saying.ahead)];
    case 'station':
      return [[...listOf(tongue, saying.offers), ...awayOf(tongue, saying.inM)]];
    case 'fuel':
      return [
        [tongue.items[saying.item], ...awayOf(tongue, saying.inM)],
        ...(saying.withWater ? [[phrases.waterFollows]] : []),
      ];
    case 'push':
      return [
        [phrases.pushTo, ...pace(saying.pace.sPerUnit, saying.pace.unit)],
        [phrases.left, ...tongue.length(tenthsOf(saying.remainingM, saying.pace.unit), saying.pace.unit)],
        drift(saying.ahead),
      ];
    case 'signal':
      if (saying.what === 'lost') return [[phrases.signalLost], [phrases.byPace]];
      return [
        [saying.what === 'back' ? phrases.signalBack : phrases.lineReversed],
        ...(saying.ahead ? [drift(saying.ahead)] : []),
      ];
    case 'answer':
      return [
        place(tenthsOf(saying.distanceM, saying.unit), saying.unit),
        ...(saying.ahead ? [drift(saying.ahead)] : []),
        ...(saying.finishS === null ? [] : [[phrases.headingFor, ...time(saying.finishS)]]),
      ];
    case 'finish':
      return [
        [phrases.finishedIn, ...time(saying.timeS)],
        drift(saying.ahead),
        ...(saying.ownS === undefined ? [] : [[phrases.ownTime, ...time(saying.ownS)]]),
      ];
    case 'notice':
    case 'byClock':
    case 'due':
      return noticeWords(tongue, saying, 'long');
    case 'leg':
    case 'rep':
    case 'remaining':
    case 'heart':
    case 'pen':
    case 'done':
      return practiceWords(tongue, saying, 'long');
    case 'pacer':
    case 'noPacer':
    case 'rival':
    case 'reminder':
      return companyWords(tongue, saying, 'long');
  }
};

/** What is left when there is little room: the thing itself and the one number that matters. */
const short = (tongue: Tongue, saying: Saying): readonly Sentence[] => {
  const { phrases, time, pace, drift, change } = tongue;
  switch (saying.kind) {
    case 'start':
    case 'settle':
    case 'push':
    case 'finish':
    case 'ease':
    case 'quicken':
    case 'fuel':
    case 'signal':
      return long(tongue, saying).slice(0, 1);
    case 'opening':
      return [
        [phrases.opening],
        saying.what === 'hold'
          ? [phrases.hold, ...pace(saying.pace.sPerUnit, saying.pace.unit)]
          : change('ease', saying.byS, saying.unit),
      ];
    case 'marker':
      return 'what' in saying
        ? long(tongue, saying)
        : [[phrases.split, ...time(saying.splitS)], drift(saying.ahead)];
    case 'checkpoint':
      return [placeOf(tongue, saying.place), drift(saying.ahead)];
    case 'station':
      return [[...listOf(tongue, saying.offers), phrases.soon]];
    case 'answer':
      return saying.ahead ? [drift(saying.ahead)] : long(tongue, saying).slice(0, 1);
    case 'notice':
    case 'byClock':
    case 'due':
      return noticeWords(tongue, saying, 'short');
    case 'leg':
    case 'rep':
    case 'remaining':
    case 'heart':
    case 'pen':
    case 'done':
      return practiceWords(tongue, saying, 'short');
    case 'pacer':
    case 'noPacer':
    case 'rival':
    case 'reminder':
      return companyWords(tongue, saying, 'short');
  }
};

/** The sentences of a language, in the order that the languages of western Europe share. */
export const wordsOf = (tongue: Tongue): Words => ({
  language: tongue.language,
  say: (saying: Saying, form: Form) => (form === 'long' ? long(tongue, saying) : short(tongue, saying)),
});
