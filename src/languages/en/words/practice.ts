import type { Length, PracticeSaying } from '../../../core/cues/practiceSaying.ts';
import type { Form } from '../../../core/cues/voicePort.ts';
import type { LegKind } from '../../../core/plan/practicePlan.ts';
import type { Sentence } from '../../../voice/words/words.ts';
import { driftClips } from './drift.ts';
import { digitClips, numberClips } from './numbers.ts';
import { paceClips } from './paces.ts';
import { distanceClips, inMetresClips, tenthsClips } from './places.ts';
import { minutesClips, timeClips } from './times.ts';

const NAMES: Readonly<Record<LegKind, string>> = {
  'warm-up': 'warm-up',
  work: 'hold',
  recovery: 'recovery',
  easy: 'easy running',
  stride: 'stride',
  opening: 'opening',
  'goal pace': 'goal pace',
  'cool-down': 'cool-down',
};

/** Below a kilometre in metres to 50, else in tenths of the unit. */
const metresClips = (length: Extract<Length, { distanceM: number }>): readonly string[] =>
  length.distanceM < 975
    ? inMetresClips(Math.max(50, length.distanceM)).slice(1)
    : distanceClips(length.distanceM, length.unit);

const lengthClips = (length: Length): readonly string[] =>
  'timeS' in length ? timeClips(length.timeS) : metresClips(length);

const extentClips = (length: Length | 'press'): Sentence =>
  length === 'press' ? ['until you press'] : lengthClips(length);

const repClips = (count: number): readonly string[] => ['rep', ...numberClips(count)];

type Of<K extends PracticeSaying['kind']> = PracticeSaying & { kind: K };

const legName = ({ what, rep }: Of<'leg'>): Sentence =>
  rep === null ? [NAMES[what]] : [...repClips(rep.count), 'of', ...numberClips(rep.of)];

const targetOf = ({ target }: Of<'leg'>): readonly Sentence[] =>
  target === null ? [] : [typeof target === 'string' ? [target] : paceClips(target)];

const leg = (saying: Of<'leg'>, form: Form): readonly Sentence[] => {
  const target = targetOf(saying);
  // In a hurry, what to do: the target where there is one, else how long.
  if (form === 'short')
    return [legName(saying), ...(target.length > 0 ? target : [extentClips(saying.length)])];
  return [legName(saying), extentClips(saying.length), ...target];
};

const rep = ({ count, pace, ahead }: Of<'rep'>, form: Form): readonly Sentence[] => {
  const name = count === null ? ['leg done'] : repClips(count);
  const paced = pace === null ? [] : [paceClips(pace)];
  return [name, ...paced, ...(ahead === null || form === 'short' ? [] : [driftClips(ahead)])];
};

const remaining = ({ left, ahead }: Of<'remaining'>, form: Form): readonly Sentence[] => {
  const what: Sentence =
    left === 'half' ? ['halfway'] : left === 'press' ? ['until you press'] : [...lengthClips(left), 'left'];
  return [what, ...(ahead === null || form === 'short' ? [] : [driftClips(ahead)])];
};

const heart = ({ bpm, mostBpm }: Of<'heart'>, form: Form): readonly Sentence[] =>
  form === 'short'
    ? [['heart rate', ...digitClips(bpm)]]
    : [['ease'], ['heart rate', ...digitClips(bpm)], ['ceiling', ...digitClips(mostBpm)]];

const pen = ({ inMin }: Of<'pen'>): readonly Sentence[] =>
  inMin <= 0 ? [['go to the pen now']] : [['pen closes', 'in', ...minutesClips(inMin)]];

const done = ({ timeS, distance }: Of<'done'>, form: Form): readonly Sentence[] => [
  ['session done'],
  ...(form === 'short' ? [] : [timeClips(timeS)]),
  ...(form === 'short' || distance === null ? [] : [tenthsClips(distance.tenths, distance.unit)]),
];

/** The calls of a practice session, in English. */
export const practiceWords = (saying: PracticeSaying, form: Form): readonly Sentence[] => {
  switch (saying.kind) {
    case 'leg':
      return leg(saying, form);
    case 'rep':
      return rep(saying, form);
    case 'remaining':
      return remaining(saying, form);
    case 'heart':
      return heart(saying, form);
    case 'pen':
      return pen(saying);
    case 'done':
      return done(saying, form);
  }
};
