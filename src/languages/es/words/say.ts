import type { Ahead } from '../../../core/cues/saying.ts';
import type { DistanceUnit } from '../../../core/units/units.ts';
import { countIn, timeIn } from '../../../voice/words/clockWords.ts';
import { wordsOf } from '../../../voice/words/frame.ts';
import type { Sentence, Words } from '../../../voice/words/words.ts';
import { feminine, hundreds, masculine, number, numberWord, twoDigits } from './numbers.ts';
import { tables } from './phrases.ts';

const minutes = (m: number): Sentence => (m === 1 ? ['un minuto'] : [...masculine(m), 'minutos']);
const time = timeIn({
  hours: (h) => (h === 1 ? ['una hora'] : [...feminine(h), 'horas']),
  minutes,
  seconds: (s) => (s === 1 ? ['un segundo'] : [...masculine(s), 'segundos']),
  minutesAndSeconds: (m, s) => [...number(m), ...twoDigits(s)],
  and: 'y',
});
const count = countIn(minutes, number);

const per = (unit: DistanceUnit): string => (unit === 'km' ? 'por kilómetro' : 'por milla');

/** 'siete' 'coma cuatro'. */
const decimal = (tenths: number): Sentence => [
  ...number(Math.floor(tenths / 10)),
  ...(tenths % 10 === 0 ? [] : [`coma ${numberWord(tenths % 10)}`]),
];

const length = (tenths: number, unit: DistanceUnit): Sentence => {
  if (tenths === 10) return [unit === 'km' ? 'un kilómetro' : 'una milla'];
  const noun = unit === 'km' ? 'kilómetros' : 'millas';
  if (tenths % 10 !== 0) return [...decimal(tenths), noun];
  return [...(unit === 'km' ? masculine(tenths / 10) : feminine(tenths / 10)), noun];
};

const metres = (m: number): Sentence => [...hundreds(m), 'metros'];

const MINUTES_FROM_S = 60;

/** Not ‘por delante’ and ‘por detrás’: they begin alike, and noise leaves only the beginning. */
const drift = ({ side, seconds, sure }: Ahead): Sentence => {
  const about = sure ? [] : ['más o menos'];
  if (side === 'even' || seconds === 0) return [...about, 'justo en el plan'];
  return seconds < MINUTES_FROM_S
    ? [side === 'up' ? 'ventaja de' : 'retraso de', ...about, ...count(seconds)]
    : [...about, ...count(seconds), side === 'up' ? 'de ventaja' : 'de retraso'];
};

export const words: Words = wordsOf({
  ...tables,
  language: 'es',
  number,
  time,
  minutes,
  pace: (s, unit) => [...time(s), per(unit)],
  length,
  place: (tenths, unit) => [unit === 'km' ? 'kilómetro' : 'milla', ...decimal(tenths)],
  until: (unit) => (unit === 'km' ? 'hasta el' : 'hasta la'),
  metres,
  inMetres: (m) => ['en', ...metres(m)],
  drift,
  change: (what, byS, unit) => [what === 'ease' ? 'afloja' : 'acelera', ...count(byS), per(unit)],
});
