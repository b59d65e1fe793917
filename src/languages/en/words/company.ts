import type { CompanySaying } from '../../../core/cues/companySaying.ts';
import type { Form } from '../../../core/cues/voicePort.ts';
import type { MorningStep } from '../../../core/plan/morning.ts';
import type { Advice } from '../../../core/plan/pacerAdvice.ts';
import type { Sentence } from '../../../voice/words/words.ts';
import { driftClips } from './drift.ts';
import { timeClips } from './times.ts';

const ADVICE: Readonly<Record<Advice, string>> = {
  with: 'go with them',
  'let go': 'let them go',
  'go past': 'go past them',
  unsure: 'too early to tell',
};

const REMINDER: Readonly<Record<MorningStep, string>> = {
  wake: 'time to get up',
  breakfast: 'breakfast now',
  leave: 'time to leave',
  lastDrink: 'last full drink',
  arrive: 'toilet first, then the bag',
  warmUp: 'warm up now',
  strides: 'strides now',
  layers: 'warm kit off, layers on',
  pen: 'go to the pen now',
  gun: 'open the run, the gun is near',
};

/** Calls about others and before the race, in English. */
export const companyWords = (saying: CompanySaying, form: Form): readonly Sentence[] => {
  switch (saying.kind) {
    case 'pacer':
      return form === 'short'
        ? [['pacer', ...timeClips(saying.ownS)], [ADVICE[saying.advice]]]
        : [
            ['pacer', ...timeClips(saying.ownS)],
            ...(saying.gunS === null ? [] : [['by the gun', ...timeClips(saying.gunS)]]),
            saying.flag.side === 'even'
              ? ['on their flag']
              : ['against the flag', ...driftClips(saying.flag)],
            [ADVICE[saying.advice]],
          ];
    case 'noPacer':
      return [['no pacer in the plan']];
    case 'rival':
      return [
        saying.ahead.side === 'even'
          ? ['level with your rival']
          : ['to your rival', ...driftClips(saying.ahead)],
      ];
    case 'reminder':
      return [[REMINDER[saying.what]]];
  }
};
