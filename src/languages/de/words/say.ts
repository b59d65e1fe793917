import type { Ahead } from '../../../core/cues/saying.ts';
import type { DistanceUnit } from '../../../core/units/units.ts';
import { countIn, timeIn } from '../../../voice/words/clockWords.ts';
import { wordsOf } from '../../../voice/words/frame.ts';
import type { Sentence, Words } from '../../../voice/words/words.ts';
import { counted, number, numberWord, twoDigits } from './numbers.ts';
import { tables } from './phrases.ts';

const minutes = (m: number): Sentence => counted(m, 'eine Minute', 'Minuten');
const time = timeIn({
  hours: (h) => counted(h, 'eine Stunde', 'Stunden'),
  minutes,
  seconds: (s) => counted(s, 'eine Sekunde', 'Sekunden'),
  minutesAndSeconds: (m, s) => [...number(m), ...twoDigits(s)],
  and: 'und',
});
const count = countIn(minutes, number);

const per = (unit: DistanceUnit): string => (unit === 'km' ? 'pro Kilometer' : 'pro Meile');

/** 'sieben' 'Komma vier'. */
const decimal = (tenths: number): Sentence => [
  ...number(Math.floor(tenths / 10)),
  ...(tenths % 10 === 0 ? [] : [`Komma ${numberWord(tenths % 10)}`]),
];

const length = (tenths: number, unit: DistanceUnit): Sentence => {
  if (tenths === 10) return [unit === 'km' ? 'ein Kilometer' : 'eine Meile'];
  return [...decimal(tenths), unit === 'km' ? 'Kilometer' : 'Meilen'];
};

const MINUTES_FROM_S = 60;

/** The terms of every German race report: ‘Vorsprung’ and ‘Rückstand’ share no sound that noise could leave. */
const drift = ({ side, seconds, sure }: Ahead): Sentence => {
  const about = sure ? [] : ['etwa'];
  if (side === 'even' || seconds === 0) return [...about, 'im Plan'];
  const word = side === 'up' ? 'Vorsprung' : 'Rückstand';
  return seconds < MINUTES_FROM_S ? [word, ...about, ...count(seconds)] : [...about, ...count(seconds), word];
};

export const words: Words = wordsOf({
  ...tables,
  language: 'de',
  number,
  time,
  minutes,
  pace: (s, unit) => [...time(s), per(unit)],
  length,
  place: (tenths, unit) => [unit === 'km' ? 'Kilometer' : 'Meile', ...decimal(tenths)],
  until: () => 'bis',
  metres: (m) => [...number(m), 'Meter'],
  inMetres: (m) => ['in', ...number(m), 'Metern'],
  drift,
  change: (what, byS, unit) => [what === 'ease' ? 'langsamer um' : 'schneller um', ...count(byS), per(unit)],
});
