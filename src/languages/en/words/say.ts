import type { Saying } from '../../../core/cues/saying.ts';
import type { Form } from '../../../core/cues/voicePort.ts';
import type { Offer } from '../../../core/plan/supplies.ts';
import type { DistanceUnit } from '../../../core/units/units.ts';
import type { Sentence, Words } from '../../../voice/words/words.ts';
import { companyWords } from './company.ts';
import { driftClips } from './drift.ts';
import { noticeLong, noticeShort } from './notice.ts';
import { paceClips, perUnit } from './paces.ts';
import { distanceClips, inMetresClips, placeClips, tenthsClips } from './places.ts';
import { practiceWords } from './practice.ts';
import { countClips, timeClips } from './times.ts';

/** What to do: plainer than 'ease' and 'quicken', and wrong less often (9 against 12 in 100 at +5 dB). */
const VERB = { ease: 'slow down by', quicken: 'speed up by' } as const;

/** 'slow down by' 'six' 'per K'. */
const change = (verb: 'ease' | 'quicken', byS: number, unit: DistanceUnit): Sentence => [
  VERB[verb],
  ...countClips(byS),
  perUnit(unit),
];

/**
 * 'water' 'and' 'gel station'; the last two are joined by 'and', the others stand beside each other. A table is named as
 * one, and what is carried is 'your gel' (below), so that nobody reaches for a table that is not there.
 */
const stationClips = (offers: readonly Offer[]): readonly string[] =>
  offers.flatMap((offer, i) => {
    if (i < offers.length - 1) return [offer];
    return [...(i > 0 ? ['and'] : []), `${offer} station`];
  });

const long = (saying: Saying): readonly Sentence[] => {
  switch (saying.kind) {
    case 'start':
      return [['clock running'], ['goal', ...timeClips(saying.goalS)], ['hold', ...paceClips(saying.pace)]];
    case 'opening':
      return saying.what === 'hold'
        ? [
            ['opening'],
            ['hold', ...paceClips(saying.pace), 'until', ...distanceClips(saying.untilM, saying.pace.unit)],
          ]
        : [['too quick for the opening'], change('ease', saying.byS, saying.unit)];
    case 'settle':
      return [['settle at', ...paceClips(saying.pace)], driftClips(saying.ahead)];
    case 'marker':
      if ('what' in saying) return [['no board near']];
      return [
        tenthsClips(10 * saying.count, saying.unit),
        ['split', ...timeClips(saying.splitS)],
        driftClips(saying.ahead),
      ];
    case 'checkpoint':
      return [[...placeClips(saying.place), 'in', ...timeClips(saying.timeS)], driftClips(saying.ahead)];
    case 'ease':
    case 'quicken':
      return [change(saying.kind, saying.byS, saying.unit), driftClips(saying.ahead)];
    case 'station':
      return [[...stationClips(saying.offers), ...inMetresClips(saying.inM)]];
    case 'fuel':
      return [
        [`take your ${saying.item}`, ...inMetresClips(saying.inM)],
        ...(saying.withWater ? [['water follows']] : []),
      ];
    case 'push':
      return [
        ['push to', ...paceClips(saying.pace)],
        ['last', ...distanceClips(saying.remainingM, saying.pace.unit)],
        driftClips(saying.ahead),
      ];
    case 'signal':
      if (saying.what === 'lost') return [['signal lost'], ['going by your pace']];
      return [
        [saying.what === 'back' ? 'signal back' : 'course line turned round'],
        ...(saying.ahead ? [driftClips(saying.ahead)] : []),
      ];
    case 'answer':
      return [
        ['position', ...distanceClips(saying.distanceM, saying.unit)],
        ...(saying.ahead ? [driftClips(saying.ahead)] : []),
        ...(saying.finishS === null ? [] : [['heading for', ...timeClips(saying.finishS)]]),
      ];
    case 'finish':
      return [
        ['finished in', ...timeClips(saying.timeS)],
        driftClips(saying.ahead),
        ...(saying.ownS === undefined ? [] : [['own time', ...timeClips(saying.ownS)]]),
      ];
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
        : [['opening'], change('ease', saying.byS, saying.unit)];
    case 'settle':
      return [['settle at', ...paceClips(saying.pace)]];
    case 'marker':
      return 'what' in saying
        ? long(saying)
        : [['split', ...timeClips(saying.splitS)], driftClips(saying.ahead)];
    case 'checkpoint':
      return [placeClips(saying.place), driftClips(saying.ahead)];
    case 'ease':
    case 'quicken':
      return [change(saying.kind, saying.byS, saying.unit)];
    case 'station':
      return [[...stationClips(saying.offers), 'soon']];
    case 'fuel':
      return [[`take your ${saying.item}`, ...inMetresClips(saying.inM)]];
    case 'push':
      return [['push to', ...paceClips(saying.pace)]];
    case 'signal':
      return [[SIGNAL[saying.what]]];
    case 'answer':
      return saying.ahead
        ? [driftClips(saying.ahead)]
        : [['position', ...distanceClips(saying.distanceM, saying.unit)]];
    case 'finish':
      return [['finished in', ...timeClips(saying.timeS)]];
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

const SIGNAL = {
  lost: 'signal lost',
  back: 'signal back',
  lineReversed: 'course line turned round',
} as const;

const say = (saying: Saying, form: Form): readonly Sentence[] =>
  form === 'long' ? long(saying) : short(saying);

export const words: Words = { language: 'en', say };
