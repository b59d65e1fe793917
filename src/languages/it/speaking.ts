import type { Speaking } from '../speaking.ts';
import { numberWord } from './words/numbers.ts';

/** From its letters the engine says 'trentasette' with a soft s. */
const figures = new Map(Array.from({ length: 100 }, (_, n) => [numberWord(n), String(n)]));

export const speaking: Speaking = {
  voice: 'it',
  name: 'eSpeak NG it',
  rate: 175,
  pitch: 45,
  before: 'di',
  after: 'per chilometro',
  number: 'quattro',
  figures,
  spelt: [
    [/\bpacer\b/g, 'péiser'],
    [/’/g, "'"],
  ],
};
