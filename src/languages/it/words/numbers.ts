import { GLUED, type Sentence } from '../../../voice/words/words.ts';

const TO_NINETEEN = [
  ...['zero', 'uno', 'due', 'tre', 'quattro', 'cinque', 'sei', 'sette', 'otto', 'nove'],
  ...['dieci', 'undici', 'dodici', 'tredici', 'quattordici', 'quindici', 'sedici'],
  ...['diciassette', 'diciotto', 'diciannove'],
];
const TENS = [
  ...['', '', 'venti', 'trenta', 'quaranta', 'cinquanta'],
  ...['sessanta', 'settanta', 'ottanta', 'novanta'],
];

/** What stands after tens or hundreds: tre bears an accent there. */
const after = (n: number): string => (n === 3 ? 'tré' : numberWord(n));

/** A whole number from 0 to 999 in one word; before 'uno' and 'otto' the tens lose their vowel: 'ventuno', 'ventotto'. */
export const numberWord = (n: number): string => {
  if (n >= 100) {
    const hundreds = `${n < 200 ? '' : numberWord(Math.floor(n / 100))}cento`;
    return n % 100 === 0 ? hundreds : hundreds + after(n % 100);
  }
  if (n < 20) return TO_NINETEEN[n] ?? '';
  const tens = TENS[Math.floor(n / 10)] ?? '';
  const ones = n % 10;
  if (ones === 0) return tens;
  return (ones === 1 || ones === 8 ? tens.slice(0, -1) : tens) + after(ones);
};

/** From here on, which is rare, a number is two clips, unless its parts run into each other. */
const TWO_CLIPS_FROM = 60;

export const number = (n: number): Sentence => {
  const ones = n % 10;
  if (n > 100 && n % 100 !== 0) return [numberWord(n - (n % 100)) + GLUED, ...number(n % 100)];
  if (n < TWO_CLIPS_FROM || n >= 100 || [0, 1, 8].includes(ones)) return [numberWord(n)];
  return [numberWord(n - ones) + GLUED, after(ones)];
};

/** The seconds after minutes: 'zero cinque', 'dodici'. */
export const twoDigits = (n: number): Sentence => [n < 10 ? `zero ${numberWord(n)}` : numberWord(n)];

/** 'un minuto', 'ventuno' 'minuti'. */
export const counted = (n: number, single: string, many: string): Sentence =>
  n === 1 ? [single] : [...number(n), many];
