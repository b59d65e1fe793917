import { describe, expect, it } from 'vitest';
import { number as de } from '../../src/languages/de/words/numbers.ts';
import {
  number as es,
  feminine as esFeminine,
  masculine as esMasculine,
} from '../../src/languages/es/words/numbers.ts';
import { number as fr, beforeFeminine as frFeminine } from '../../src/languages/fr/words/numbers.ts';
import { number as it_ } from '../../src/languages/it/words/numbers.ts';
import { number as pt, feminine as ptFeminine } from '../../src/languages/pt/words/numbers.ts';
import { type Sentence, wordsOfClips } from '../../src/voice/words/words.ts';

// Common practice, no source; that every number from 0 to 100 is the right one is held against an engine's own number
// rules in test/outside/numberWords.test.ts.

type Say = (n: number) => Sentence;

const TABLES: readonly (readonly [what: string, say: Say, table: Readonly<Record<number, string>>])[] = [
  [
    'German',
    de,
    {
      1: 'eins',
      2: 'zwo',
      16: 'sechzehn',
      17: 'siebzehn',
      21: 'einundzwanzig',
      22: 'zwoundzwanzig',
      30: 'dreißig',
      59: 'neunundfünfzig',
      61: 'einundsechzig',
      77: 'siebenundsiebzig',
      100: 'hundert',
      150: 'hundertfünfzig',
      250: 'zwohundertfünfzig',
      950: 'neunhundertfünfzig',
    },
  ],
  [
    'French',
    fr,
    {
      17: 'dix-sept',
      21: 'vingt et un',
      22: 'vingt-deux',
      61: 'soixante et un',
      70: 'soixante-dix',
      71: 'soixante et onze',
      77: 'soixante-dix-sept',
      80: 'quatre-vingts',
      81: 'quatre-vingt-un',
      91: 'quatre-vingt-onze',
      99: 'quatre-vingt-dix-neuf',
      100: 'cent',
    },
  ],
  [
    'French, before a feminine noun',
    frFeminine,
    { 1: 'une', 11: 'onze', 21: 'vingt et une', 71: 'soixante et onze', 81: 'quatre-vingt-une' },
  ],
  [
    'Spanish',
    es,
    {
      16: 'dieciséis',
      21: 'veintiuno',
      22: 'veintidós',
      26: 'veintiséis',
      31: 'treinta y uno',
      60: 'sesenta',
      61: 'sesenta y uno',
      100: 'cien',
    },
  ],
  [
    'Spanish, before a masculine noun',
    esMasculine,
    { 1: 'un', 21: 'veintiún', 31: 'treinta y un', 61: 'sesenta y un', 22: 'veintidós' },
  ],
  [
    'Spanish, before a feminine noun',
    esFeminine,
    { 1: 'una', 21: 'veintiuna', 31: 'treinta y una', 91: 'noventa y una' },
  ],
  [
    'Italian',
    it_,
    {
      17: 'diciassette',
      21: 'ventuno',
      23: 'ventitré',
      28: 'ventotto',
      38: 'trentotto',
      61: 'sessantuno',
      63: 'sessantatré',
      68: 'sessantotto',
      70: 'settanta',
      100: 'cento',
      150: 'centocinquanta',
      800: 'ottocento',
    },
  ],
  [
    'Portuguese',
    pt,
    {
      14: 'quatorze',
      16: 'dezesseis',
      21: 'vinte e um',
      32: 'trinta e dois',
      61: 'sessenta e um',
      100: 'cem',
    },
  ],
  [
    'Portuguese, before a feminine noun',
    ptFeminine,
    { 1: 'uma', 2: 'duas', 12: 'doze', 21: 'vinte e uma', 62: 'sessenta e duas' },
  ],
];

describe.each(TABLES)('numbers in %s', (_what, say, table) => {
  it.each(Object.entries(table))('%s is %s', (n, words) => {
    expect(wordsOfClips(say(Number(n)))).toBe(words);
  });

  it('are a hundred and one different words', () => {
    const all = Array.from({ length: 101 }, (_, n) => wordsOfClips(say(n)));
    expect(new Set(all).size).toBe(101);
  });
});
