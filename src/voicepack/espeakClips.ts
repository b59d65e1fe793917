import type { Speaking } from '../languages/speaking.ts';
import { BOUND, wordsOfClips } from '../voice/words/words.ts';
import type { SpeakText, SpokenText } from './espeak.ts';
import type { Role } from './roles.ts';
import type { Sound } from './wav.ts';

/** What stands around a clip when it is spoken, and is cut away. */
const carrierOf = (
  clip: string,
  role: Role,
  { before, after, bound, number }: Speaking,
): { readonly before: string; readonly after: string } => {
  if (clip.endsWith(BOUND) && bound !== undefined) return bound;
  switch (role) {
    case 'alone':
      return { before: '', after: '' };
    case 'opener':
      return { before: '', after: number };
    case 'leader':
      return { before, after: number };
    case 'closer':
      return { before: number, after: '' };
    case 'middle':
      return { before, after };
  }
};

const spelt = (clip: string, { figures, spelt: rules }: Speaking): string =>
  figures?.get(clip) ??
  rules.reduce((text, [written, spelling]) => text.replace(written, spelling), wordsOfClips([clip]));

/** The first word that begins at or after a place in the text; the end of the sound where none is asked. */
const startOf = ({ words }: SpokenText, at: number, text: string): number => {
  const word = words.find((w) => w.at === at);
  if (word === undefined) throw new Error(`no word begins at ${at} of ${JSON.stringify(text)}`);
  return word.startS;
};

/** A clip as it sounds in a sentence of its role: said with words around it, and cut out where the next word begins. */
export const espeakClip = (speak: SpeakText, clip: string, role: Role, speaking: Speaking): Sound => {
  const { before, after } = carrierOf(clip, role, speaking);
  const said = spelt(clip, speaking);
  const lead = before === '' ? '' : `${before} `;
  const tail = after === '' ? '' : `${after.startsWith(',') ? '' : ' '}${after}`;
  const text = lead + said + tail;
  const spoken = speak(text);
  const { samples, rateHz } = spoken.sound;
  const startS = lead === '' ? 0 : startOf(spoken, lead.length, text);
  const afterAt = lead.length + said.length + (after.startsWith(',') ? 2 : 1);
  const endS = tail === '' ? samples.length / rateHz : startOf(spoken, afterAt, text);
  return { samples: samples.slice(Math.round(startS * rateHz), Math.round(endS * rateHz)), rateHz };
};
