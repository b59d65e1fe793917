import type { Speaking } from '../speaking.ts';

export const speaking: Speaking = {
  voice: 'de',
  name: 'eSpeak NG de',
  rate: 170,
  pitch: 45,
  before: 'um',
  after: 'pro Kilometer',
  number: 'vier',
  spelt: [
    [/zwound(?=\w)/, 'zwo und '],
    [/(?<=\p{L})und$/u, ' und'],
    [/zwohundert/, 'zwo hundert'],
  ],
};
