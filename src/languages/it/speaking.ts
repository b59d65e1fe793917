import type { Speaking } from '../speaking.ts';

export const speaking: Speaking = {
  voice: 'it',
  name: 'eSpeak NG it',
  rate: 175,
  pitch: 45,
  before: 'di',
  after: 'per chilometro',
  number: 'quattro',
  spelt: [
    [/\bpacer\b/g, 'péiser'],
    [/’/g, "'"],
  ],
};
