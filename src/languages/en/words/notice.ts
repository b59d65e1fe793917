import type { NoticeName } from '../../../core/cues/notice.ts';
import type { NoticeSaying } from '../../../core/cues/noticeSaying.ts';
import type { Sentence } from '../../../voice/words/words.ts';
import { driftClips } from './drift.ts';
import { placeClips } from './places.ts';

/** What happened, and what that means for the runner. */
const SAID: Record<NoticeName, readonly [happened: string, so: string | null]> = {
  resumed: ['running on', null],
  soundBack: ['sound back', null],
  notStored: ['not recording', 'calls go on'],
  storedAgain: ['recording again', null],
  clockSet: ['phone clock changed', 'your time holds'],
  elsewhere: ['open in another window', null],
  refused: ['position refused', 'going by the clock'],
  quiet: ['quiet', null],
  talking: ['speaking again', null],
};

export const noticeLong = (saying: NoticeSaying): readonly Sentence[] => {
  switch (saying.kind) {
    case 'byClock':
      return [['no position'], ['going by the clock'], ['press at each board']];
    case 'due':
      return [['by the plan', ...placeClips(saying.place), 'now']];
    case 'notice': {
      const [happened, so] = SAID[saying.what];
      return [
        [happened],
        ...(so === null ? [] : [[so]]),
        ...(saying.ahead ? [driftClips(saying.ahead)] : []),
      ];
    }
  }
};

export const noticeShort = (saying: NoticeSaying): readonly Sentence[] => {
  switch (saying.kind) {
    case 'byClock':
      return [['going by the clock']];
    case 'due':
      return noticeLong(saying);
    case 'notice':
      return [[SAID[saying.what][0]]];
  }
};
