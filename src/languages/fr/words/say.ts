import type { Ahead } from '../../../core/cues/saying.ts';
import type { DistanceUnit } from '../../../core/units/units.ts';
import { countIn, timeIn } from '../../../voice/words/clockWords.ts';
import { wordsOf } from '../../../voice/words/frame.ts';
import type { Sentence, Words } from '../../../voice/words/words.ts';
import { before, beforeFeminine, number, numberWord } from './numbers.ts';
import { tables } from './phrases.ts';

const minutes = (m: number): Sentence => (m === 1 ? ['une minute'] : [...beforeFeminine(m), 'minutes']);
const time = timeIn({
  // 'deux heures' is one word to the ear: the last sound of the number is heard only there.
  hours: (h) => [h === 1 ? 'une heure' : `${numberWord(h)} heures`],
  minutes,
  seconds: (s) => (s < 2 ? [s === 0 ? 'zéro seconde' : 'une seconde'] : [...beforeFeminine(s), 'secondes']),
  // Minutes are named: 'quatre' 'vingt' would be heard as eighty.
  minutesAndSeconds: (m, s) => [...minutes(m), ...number(s)],
  and: 'et',
});
const count = countIn(minutes, number);

const per = (unit: DistanceUnit): string => (unit === 'km' ? 'au kilo' : 'au mile');

/** 'sept' 'virgule quatre'. */
const decimal = (tenths: number): Sentence => [
  ...number(Math.floor(tenths / 10)),
  ...(tenths % 10 === 0 ? [] : [`virgule ${numberWord(tenths % 10)}`]),
];

/** Below two a French noun is singular: 'un' 'virgule cinq' 'kilomètre'. */
const length = (tenths: number, unit: DistanceUnit): Sentence => {
  const noun = unit === 'km' ? 'kilomètre' : 'mile';
  const shown = tenths < 20 ? noun : `${noun}s`;
  return tenths % 10 === 0 ? [...before(tenths / 10), shown] : [...decimal(tenths), shown];
};

/** 50 to 950 in steps of 50; 'cent' has an s where nothing follows it. */
const metresNumber = (m: number): Sentence => {
  const hundreds = Math.floor(m / 100);
  const fifty = m % 100 === 0 ? [] : ['cinquante'];
  if (hundreds === 0) return fifty;
  if (hundreds === 1) return ['cent', ...fifty];
  return [`${numberWord(hundreds)} cent${fifty.length === 0 ? 's' : ''}`, ...fifty];
};
const metres = (m: number): Sentence => [...metresNumber(m), 'mètres'];

const MINUTES_FROM_S = 60;

const drift = ({ side, seconds, sure }: Ahead): Sentence => {
  const about = sure ? [] : ['à peu près'];
  if (side === 'even' || seconds === 0) return [...about, 'dans les temps'];
  return seconds < MINUTES_FROM_S
    ? [side === 'up' ? 'avance' : 'retard', ...about, ...count(seconds)]
    : [...about, ...count(seconds), side === 'up' ? 'd’avance' : 'de retard'];
};

const VERB = { ease: 'ralentis', quicken: 'accélère' } as const;

/** 'ralentis de' 'six' 'au kilo'; before 'une', de loses its vowel. */
const change = (what: 'ease' | 'quicken', byS: number, unit: DistanceUnit): Sentence => {
  if (byS === 1) return [`${VERB[what]} d’une seconde`, per(unit)];
  const [first = '', ...rest] = count(byS);
  return first === 'une minute'
    ? [`${VERB[what]} d’une minute`, ...rest, per(unit)]
    : [`${VERB[what]} de`, first, ...rest, per(unit)];
};

export const words: Words = wordsOf({
  ...tables,
  language: 'fr',
  number,
  time,
  minutes,
  pace: (s, unit) => [...time(s), per(unit)],
  length,
  place: (tenths, unit) => [unit === 'km' ? 'kilomètre' : 'mile', ...decimal(tenths)],
  until: () => 'jusqu’au',
  metres,
  inMetres: (m) => ['dans', ...metres(m)],
  drift,
  change,
});
