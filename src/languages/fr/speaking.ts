import type { Speaking } from '../speaking.ts';

export const speaking: Speaking = {
  voice: 'fr',
  name: 'eSpeak NG fr',
  rate: 150,
  pitch: 45,
  before: 'de',
  // After a comma a number is said in full; before a consonant 'six' would be 'si'.
  after: ', par kilo',
  bound: { before: 'de', after: 'minutes' },
  number: 'quatre',
  spelt: [
    [/\bmile/g, 'maïle'],
    [/’/g, "'"],
  ],
};
