import type { Sentence } from '../../../voice/words/words.ts';

const TO_TWENTY_NINE = [
  ...['cero', 'uno', 'dos', 'tres', 'cuatro', 'cinco', 'seis', 'siete', 'ocho', 'nueve'],
  ...['diez', 'once', 'doce', 'trece', 'catorce', 'quince', 'dieciséis', 'diecisiete', 'dieciocho'],
  ...['diecinueve', 'veinte', 'veintiuno', 'veintidós', 'veintitrés', 'veinticuatro', 'veinticinco'],
  ...['veintiséis', 'veintisiete', 'veintiocho', 'veintinueve'],
];
const TENS = [
  ...['', '', '', 'treinta', 'cuarenta', 'cincuenta'],
  ...['sesenta', 'setenta', 'ochenta', 'noventa'],
];

/** A whole number from 0 to 100, standing by itself: 'veintiuno', 'treinta y uno'. */
export const numberWord = (n: number): string => {
  if (n < 30) return TO_TWENTY_NINE[n] ?? '';
  if (n === 100) return 'cien';
  const tens = TENS[Math.floor(n / 10)] ?? '';
  return n % 10 === 0 ? tens : `${tens} y ${numberWord(n % 10)}`;
};

/** From here on, which is rare, a number is two clips: 'sesenta y' 'uno'. */
const TWO_CLIPS_FROM = 60;

const clips = (word: string, n: number): Sentence => {
  const [, tens, ones] = /^(.* y) (.*)$/.exec(word) ?? [];
  return n < TWO_CLIPS_FROM || tens === undefined || ones === undefined ? [word] : [tens, ones];
};

export const number = (n: number): Sentence => clips(numberWord(n), n);

/** Before a masculine noun: 'un', 'veintiún', 'treinta y un'. */
export const masculine = (n: number): Sentence =>
  clips(
    numberWord(n)
      .replace(/^veintiuno$/, 'veintiún')
      .replace(/\buno$/, 'un'),
    n,
  );

/** Before a feminine noun: 'una', 'veintiuna', 'treinta y una'. */
export const feminine = (n: number): Sentence => clips(numberWord(n).replace(/uno$/, 'una'), n);

/** The seconds after minutes: 'cero cinco', 'doce'. */
export const twoDigits = (n: number): Sentence => [n < 10 ? `cero ${numberWord(n)}` : numberWord(n)];

const HUNDREDS = [
  ...['', 'ciento', 'doscientos', 'trescientos', 'cuatrocientos', 'quinientos'],
  ...['seiscientos', 'setecientos', 'ochocientos', 'novecientos'],
];

/** 50 to 950 in steps of 50, before a masculine noun: 'cien', 'ciento' 'cincuenta'. */
export const hundreds = (m: number): Sentence => {
  if (m <= 100) return number(m);
  return [HUNDREDS[Math.floor(m / 100)] ?? '', ...(m % 100 === 0 ? [] : number(m % 100))];
};
