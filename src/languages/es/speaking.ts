import type { Speaking } from '../speaking.ts';

export const speaking: Speaking = {
  voice: 'es',
  name: 'eSpeak NG es',
  rate: 175,
  pitch: 45,
  before: 'de',
  after: 'por kilómetro',
  number: 'cuatro',
  spelt: [],
};
