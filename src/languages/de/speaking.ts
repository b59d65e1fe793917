import type { Speaking } from '../speaking.ts';
import { numberWord } from './words/numbers.ts';

/** From its letters the engine says 'vierzehn' with a long i, and runs 'einunddreißig' together. */
const figures = new Map(
  Array.from({ length: 100 }, (_, n) => [numberWord(n), String(n)] as const).filter(
    ([word]) => !word.includes('zwo'),
  ),
);

export const speaking: Speaking = {
  voice: 'de',
  name: 'eSpeak NG de',
  rate: 170,
  pitch: 45,
  before: 'um',
  after: 'pro Kilometer',
  number: 'vier',
  figures,
  spelt: [
    [/zwound(?=\w)/, 'zwo und '],
    [/(?<=\p{L})und$/u, ' und'],
    [/zwohundert/, 'zwo hundert'],
  ],
};
