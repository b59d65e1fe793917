import type { Ahead } from '../../../core/cues/saying.ts';
import type { DistanceUnit } from '../../../core/units/units.ts';
import { countIn, timeIn } from '../../../voice/words/clockWords.ts';
import { wordsOf } from '../../../voice/words/frame.ts';
import type { Sentence, Words } from '../../../voice/words/words.ts';
import { feminine, hundreds, number, numberWord, twoDigits } from './numbers.ts';
import { tables } from './phrases.ts';

const minutes = (m: number): Sentence => (m === 1 ? ['um minuto'] : [...number(m), 'minutos']);
const time = timeIn({
  hours: (h) => (h === 1 ? ['uma hora'] : [...feminine(h), 'horas']),
  minutes,
  seconds: (s) => (s === 1 ? ['um segundo'] : [...number(s), 'segundos']),
  minutesAndSeconds: (m, s) => [...number(m), ...twoDigits(s)],
  and: 'e',
});
const count = countIn(minutes, number);

const per = (unit: DistanceUnit): string => (unit === 'km' ? 'por quilômetro' : 'por milha');

/** 'sete' 'vírgula quatro'. */
const decimal = (tenths: number): Sentence => [
  ...number(Math.floor(tenths / 10)),
  ...(tenths % 10 === 0 ? [] : [`vírgula ${numberWord(tenths % 10)}`]),
];

const length = (tenths: number, unit: DistanceUnit): Sentence => {
  if (tenths === 10) return [unit === 'km' ? 'um quilômetro' : 'uma milha'];
  const noun = unit === 'km' ? 'quilômetros' : 'milhas';
  if (tenths % 10 !== 0) return [...decimal(tenths), noun];
  return [...(unit === 'km' ? number(tenths / 10) : feminine(tenths / 10)), noun];
};

const metres = (m: number): Sentence => [...hundreds(m), 'metros'];

const MINUTES_FROM_S = 60;

/** Not ‘adiantado’ and ‘atrasado’: they end alike. */
const drift = ({ side, seconds, sure }: Ahead): Sentence => {
  const about = sure ? [] : ['mais ou menos'];
  if (side === 'even' || seconds === 0) return [...about, 'dentro do plano'];
  return seconds < MINUTES_FROM_S
    ? [side === 'up' ? 'vantagem de' : 'atraso de', ...about, ...count(seconds)]
    : [...about, ...count(seconds), side === 'up' ? 'de vantagem' : 'de atraso'];
};

export const words: Words = wordsOf({
  ...tables,
  language: 'pt',
  number,
  time,
  minutes,
  pace: (s, unit) => [...time(s), per(unit)],
  length,
  place: (tenths, unit) => [unit === 'km' ? 'quilômetro' : 'milha', ...decimal(tenths)],
  until: (unit) => (unit === 'km' ? 'até o' : 'até a'),
  metres,
  inMetres: (m) => ['em', ...metres(m)],
  drift,
  // Not ‘reduza’: it may be heard as ‘reduce the seconds’, which is the other way.
  change: (what, byS, unit) => [what === 'ease' ? 'mais devagar' : 'acelere', ...count(byS), per(unit)],
});
