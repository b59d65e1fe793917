import type { Ahead } from '../../../core/cues/saying.ts';
import type { DistanceUnit } from '../../../core/units/units.ts';
import { countIn, timeIn } from '../../../voice/words/clockWords.ts';
import { wordsOf } from '../../../voice/words/frame.ts';
import type { Sentence, Words } from '../../../voice/words/words.ts';
import { counted, number, numberWord, twoDigits } from './numbers.ts';
import { tables } from './phrases.ts';

const minutes = (m: number): Sentence => counted(m, 'un minuto', 'minuti');
const time = timeIn({
  hours: (h) => counted(h, 'un’ora', 'ore'),
  minutes,
  seconds: (s) => counted(s, 'un secondo', 'secondi'),
  minutesAndSeconds: (m, s) => [...number(m), ...twoDigits(s)],
  and: 'e',
});
const count = countIn(minutes, number);

const per = (unit: DistanceUnit): string => (unit === 'km' ? 'al chilometro' : 'al miglio');

/** 'sette' 'virgola quattro'. */
const decimal = (tenths: number): Sentence => [
  ...number(Math.floor(tenths / 10)),
  ...(tenths % 10 === 0 ? [] : [`virgola ${numberWord(tenths % 10)}`]),
];

/** 'un miglio', 'due' 'miglia': the plural is feminine, which the numbers do not show. */
const length = (tenths: number, unit: DistanceUnit): Sentence => {
  if (tenths === 10) return [unit === 'km' ? 'un chilometro' : 'un miglio'];
  return [...decimal(tenths), unit === 'km' ? 'chilometri' : 'miglia'];
};

const metres = (m: number): Sentence => [...number(m), 'metri'];

const MINUTES_FROM_S = 60;

const drift = ({ side, seconds, sure }: Ahead): Sentence => {
  const about = sure ? [] : ['circa'];
  if (side === 'even' || seconds === 0) return [...about, 'in tabella'];
  return seconds < MINUTES_FROM_S
    ? [side === 'up' ? 'vantaggio di' : 'ritardo di', ...about, ...count(seconds)]
    : [...about, ...count(seconds), side === 'up' ? 'di vantaggio' : 'di ritardo'];
};

export const words: Words = wordsOf({
  ...tables,
  language: 'it',
  number,
  time,
  minutes,
  pace: (s, unit) => [...time(s), per(unit)],
  length,
  place: (tenths, unit) => [unit === 'km' ? 'chilometro' : 'miglio', ...decimal(tenths)],
  until: () => 'fino al',
  metres,
  inMetres: (m) => ['tra', ...metres(m)],
  drift,
  change: (what, byS, unit) => [what === 'ease' ? 'rallenta di' : 'accelera di', ...count(byS), per(unit)],
});
