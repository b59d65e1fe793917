import type { Saying } from '../../../core/cues/saying.ts';
import type { Form } from '../../../core/cues/voicePort.ts';
import type { Offer } from '../../../core/plan/supplies.ts';
import type { Sentence, Words } from '../words.ts';
import { companyWords } from './company.ts';
import { driftClips } from './drift.ts';
import { noticeLong, noticeShort } from './notice.ts';
import { countedClips } from './numbers.ts';
import { paceClips, perUnit } from './paces.ts';
import { distanceClips, inMetresClips, placeClips, unitsClips } from './places.ts';
import { practiceWords } from './practice.ts';
import { timeClips } from './times.ts';

const seconds = (s: number): readonly string[] => countedClips(s, 'second', 'seconds');

/** 'water' 'and' 'gel'; the last two are joined by 'and', the others stand beside each other. */
const list = (offers: readonly Offer[]): readonly string[] =>
  offers.flatMap((offer, i) => (i > 0 && i === offers.length - 1 ? ['and', offer] : [offer]));

const long = (saying: Saying): readonly Sentence[] => {
  switch (saying.kind) {
    case 'start':
      return [['clock running'], ['goal', ...timeClips(saying.goalS)], paceClips(saying.pace)];
    case 'opening':
      return saying.what === 'hold'
        ? [
            ['opening'],
            ['hold', ...paceClips(saying.pace)],
            ['until', ...distanceClips(saying.untilM, saying.pace.unit)],
          ]
        : [['ease'], [...seconds(saying.byS), perUnit(saying.unit), 'above the opening']];
    case 'settle':
      return [['settle'], paceClips(saying.pace), driftClips(saying.ahead)];
    case 'marker':
      return 'what' in saying
        ? [['no board near']]
        : [
            unitsClips(saying.count, saying.unit),
            ['split', ...timeClips(saying.splitS)],
            driftClips(saying.ahead),
          ];
    case 'checkpoint':
      return [placeClips(saying.place), timeClips(saying.timeS), driftClips(saying.ahead)];
    case 'ease':
    case 'quicken':
      return [[saying.kind], [...seconds(saying.byS), perUnit(saying.unit)], driftClips(saying.ahead)];
    case 'station':
      return [[...list(saying.offers), ...inMetresClips(saying.inM)]];
    case 'fuel':
      return [[saying.item, ...inMetresClips(saying.inM)], ...(saying.withWater ? [['water follows']] : [])];
    case 'push':
      return [
        ['push now'],
        paceClips(saying.pace),
        [...distanceClips(saying.remainingM, saying.pace.unit), 'to go'],
        driftClips(saying.ahead),
      ];
    case 'signal':
      return saying.what === 'lost'
        ? [['signal lost'], ['going by your pace']]
        : [
            [saying.what === 'back' ? 'signal back' : 'course line turned round'],
            ...(saying.ahead ? [driftClips(saying.ahead)] : []),
          ];
    case 'answer':
      return [
        distanceClips(saying.distanceM, saying.unit),
        ...(saying.ahead ? [driftClips(saying.ahead)] : []),
        ...(saying.finishS === null ? [] : [['finish', ...timeClips(saying.finishS)]]),
      ];
    case 'finish':
      return [['finish'], timeClips(saying.timeS), driftClips(saying.ahead)];
    case 'notice':
    case 'byClock':
    case 'due':
      return noticeLong(saying);
    case 'leg':
    case 'rep':
    case 'remaining':
    case 'heart':
    case 'pen':
    case 'done':
      return practiceWords(saying, 'long');
    case 'pacer':
    case 'noPacer':
    case 'rival':
    case 'reminder':
      return companyWords(saying, 'long');
  }
};

/** What is left when there is little room: the thing itself and the one number that matters. */
const short = (saying: Saying): readonly Sentence[] => {
  switch (saying.kind) {
    case 'start':
      return [['clock running']];
    case 'opening':
      return saying.what === 'hold'
        ? [['opening'], ['hold', ...paceClips(saying.pace)]]
        : [['ease'], [...seconds(saying.byS), perUnit(saying.unit)]];
    case 'settle':
      return [['settle'], paceClips(saying.pace)];
    case 'marker':
      return 'what' in saying
        ? long(saying)
        : [['split', ...timeClips(saying.splitS)], driftClips(saying.ahead)];
    case 'checkpoint':
      return [placeClips(saying.place), driftClips(saying.ahead)];
    case 'ease':
    case 'quicken':
      return [[saying.kind], [...seconds(saying.byS), perUnit(saying.unit)]];
    case 'station':
      return [[...list(saying.offers), 'ahead']];
    case 'fuel':
      return [[saying.item, ...inMetresClips(saying.inM)]];
    case 'push':
      return [['push now'], paceClips(saying.pace)];
    case 'signal':
      return saying.what === 'lost'
        ? [['signal lost']]
        : [[saying.what === 'back' ? 'signal back' : 'course line turned round']];
    case 'answer':
      return saying.ahead ? [driftClips(saying.ahead)] : [distanceClips(saying.distanceM, saying.unit)];
    case 'finish':
      return [['finish'], timeClips(saying.timeS)];
    case 'notice':
    case 'byClock':
    case 'due':
      return noticeShort(saying);
    case 'leg':
    case 'rep':
    case 'remaining':
    case 'heart':
    case 'pen':
    case 'done':
      return practiceWords(saying, 'short');
    case 'pacer':
    case 'noPacer':
    case 'rival':
    case 'reminder':
      return companyWords(saying, 'short');
  }
};

const say = (saying: Saying, form: Form): readonly Sentence[] =>
  form === 'long' ? long(saying) : short(saying);

export const english: Words = { language: 'en', say };
