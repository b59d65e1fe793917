import type { Sentence } from '../../../voice/words/words.ts';

/** As in Brazil: 'dezesseis', not 'dezasseis'. */
const TO_NINETEEN = [
  ...['zero', 'um', 'dois', 'três', 'quatro', 'cinco', 'seis', 'sete', 'oito', 'nove'],
  ...['dez', 'onze', 'doze', 'treze', 'quatorze', 'quinze'],
  ...['dezesseis', 'dezessete', 'dezoito', 'dezenove'],
];
const TENS = [
  ...['', '', 'vinte', 'trinta', 'quarenta', 'cinquenta'],
  ...['sessenta', 'setenta', 'oitenta', 'noventa'],
];

/** A whole number from 0 to 100: 'vinte e um'. */
export const numberWord = (n: number): string => {
  if (n < 20) return TO_NINETEEN[n] ?? '';
  if (n === 100) return 'cem';
  const tens = TENS[Math.floor(n / 10)] ?? '';
  return n % 10 === 0 ? tens : `${tens} e ${numberWord(n % 10)}`;
};

/** From here on, which is rare, a number is two clips: 'sessenta e' 'um'. */
const TWO_CLIPS_FROM = 60;

const clips = (word: string, n: number): Sentence => {
  const [, tens, ones] = /^(.* e) (.*)$/.exec(word) ?? [];
  return n < TWO_CLIPS_FROM || tens === undefined || ones === undefined ? [word] : [tens, ones];
};

export const number = (n: number): Sentence => clips(numberWord(n), n);

/** Before a feminine noun: 'uma', 'duas', 'vinte e uma', 'vinte e duas'. */
export const feminine = (n: number): Sentence =>
  clips(
    numberWord(n)
      .replace(/\bum$/, 'uma')
      .replace(/\bdois$/, 'duas'),
    n,
  );

/** The seconds after minutes: 'zero cinco', 'doze'. */
export const twoDigits = (n: number): Sentence => [n < 10 ? `zero ${numberWord(n)}` : numberWord(n)];

const HUNDREDS = [
  ...['', 'cento', 'duzentos', 'trezentos', 'quatrocentos', 'quinhentos'],
  ...['seiscentos', 'setecentos', 'oitocentos', 'novecentos'],
];

/** 50 to 950 in steps of 50, before a masculine noun: 'cem', 'cento' 'e cinquenta'. */
export const hundreds = (m: number): Sentence => {
  if (m <= 100) return number(m);
  return [HUNDREDS[Math.floor(m / 100)] ?? '', ...(m % 100 === 0 ? [] : ['e cinquenta'])];
};
