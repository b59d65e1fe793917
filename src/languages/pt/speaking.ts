import type { Speaking } from '../speaking.ts';

export const speaking: Speaking = {
  voice: 'pt-br',
  name: 'eSpeak NG pt-br',
  rate: 180,
  pitch: 45,
  before: 'de',
  after: 'por quilômetro',
  number: 'quatro',
  spelt: [],
};
