import { BOUND, GLUED, type Sentence } from '../../../voice/words/words.ts';

const TO_SIXTEEN = [
  ...['zéro', 'un', 'deux', 'trois', 'quatre', 'cinq', 'six', 'sept', 'huit', 'neuf'],
  ...['dix', 'onze', 'douze', 'treize', 'quatorze', 'quinze', 'seize'],
];
/** The sixties go on to 79 and the eighties to 99, as in France. */
const TENS = ['', '', 'vingt', 'trente', 'quarante', 'cinquante', 'soixante', 'soixante'];
const EIGHTY = 'quatre-vingt';

/** A whole number from 0 to 100: 'vingt et un', 'soixante et onze', 'quatre-vingts', 'quatre-vingt-un'. */
export const numberWord = (n: number): string => {
  if (n < 17) return TO_SIXTEEN[n] ?? '';
  if (n < 20) return `dix-${numberWord(n - 10)}`;
  if (n === 100) return 'cent';
  if (n >= 80) return n === 80 ? `${EIGHTY}s` : `${EIGHTY}-${numberWord(n - 80)}`;
  const tens = TENS[Math.floor(n / 10)] ?? '';
  const rest = n >= 60 ? n - 60 : n % 10;
  if (rest === 0) return tens;
  return rest === 1 || rest === 11 ? `${tens} et ${numberWord(rest)}` : `${tens}-${numberWord(rest)}`;
};

/** From here on, which is rare, a number is two clips: 'soixante-' 'deux', 'quatre-vingt-' 'dix-sept'. */
const TWO_CLIPS_FROM = 60;

const clips = (word: string, n: number): Sentence => {
  const [, tens, rest] = /^(soixante-|quatre-vingt-)(.+)$/.exec(word) ?? [];
  return n < TWO_CLIPS_FROM || tens === undefined || rest === undefined ? [word] : [tens + GLUED, rest];
};

export const number = (n: number): Sentence => clips(numberWord(n), n);

/** 'six', 'huit' and 'dix' lose their last sound before a noun that begins with a consonant. */
const bound = (word: string): string => (/(six|huit|dix)$/.test(word) ? word + BOUND : word);
const feminine = (word: string): string => word.replace(/\bun$/, 'une');

/** Before a masculine noun that begins with a consonant. */
export const before = (n: number): Sentence => clips(bound(numberWord(n)), n);
/** Before a feminine one. */
export const beforeFeminine = (n: number): Sentence => clips(bound(feminine(numberWord(n))), n);
