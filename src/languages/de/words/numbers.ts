import { GLUED, type Sentence } from '../../../voice/words/words.ts';

/**
 * ‘Zwo’ for two wherever it stands, so that no noise makes it ‘drei’: common practice on the radio and the telephone
 * (DIN 5009 knows it; from memory).
 */
const ONES = ['null', 'eins', 'zwo', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'];
const TEENS = [
  ...['zehn', 'elf', 'zwölf', 'dreizehn', 'vierzehn'],
  ...['fünfzehn', 'sechzehn', 'siebzehn', 'achtzehn', 'neunzehn'],
];
const TENS = [
  ...['', '', 'zwanzig', 'dreißig', 'vierzig'],
  ...['fünfzig', 'sechzig', 'siebzig', 'achtzig', 'neunzig'],
];

/** As the first part of a longer number: 'ein'undzwanzig. */
const before = (n: number): string => (n === 1 ? 'ein' : (ONES[n] ?? ''));

/** A whole number from 0 to 999 in one word; the units stand before the tens: 'einundzwanzig'. */
export const numberWord = (n: number): string => {
  if (n >= 100) {
    const hundreds = `${n < 200 ? '' : before(Math.floor(n / 100))}hundert`;
    return n % 100 === 0 ? hundreds : hundreds + numberWord(n % 100);
  }
  if (n < 10) return ONES[n] ?? '';
  if (n < 20) return TEENS[n - 10] ?? '';
  const tens = TENS[Math.floor(n / 10)] ?? '';
  return n % 10 === 0 ? tens : `${before(n % 10)}und${tens}`;
};

/** From here on, which is rare, a number is two clips. */
const TWO_CLIPS_FROM = 60;

export const number = (n: number): Sentence => {
  if (n > 100)
    return [
      `${numberWord(n - (n % 100))}${n % 100 === 0 ? '' : GLUED}`,
      ...(n % 100 === 0 ? [] : number(n % 100)),
    ];
  if (n < TWO_CLIPS_FROM || n % 10 === 0) return [numberWord(n)];
  return [`${before(n % 10)}und${GLUED}`, numberWord(n - (n % 10))];
};

/** The seconds after minutes: 'null fünf', 'zwölf'. */
export const twoDigits = (n: number): Sentence => [n < 10 ? `null ${numberWord(n)}` : numberWord(n)];

/** 'eine Minute', 'zwo' 'Minuten'. */
export const counted = (n: number, single: string, many: string): Sentence =>
  n === 1 ? [single] : [...number(n), many];
