import type { Saying } from '../../core/cues/saying.ts';
import type { Form } from '../../core/cues/voicePort.ts';

/**
 * One sentence as the clips that make it, in order. A clip is named by exactly the words that it says, written as they
 * stand in the middle of a sentence: 'five K', 'twenty-one', 'two seconds up'. So the text of a call and the sound of it
 * cannot part. A clip that is said otherwise before its noun than by itself, as French numbers are, bears the mark BOUND
 * at its end there, and one that is only the beginning of a word the mark GLUED; the text has neither: 'six~' 'minutes',
 * 'einund+' 'sechzig'.
 */
export type Sentence = readonly string[];

/** A language: what is said for a meaning. Pure; the only thing a new language must bring besides its pack. */
export interface Words {
  /** BCP 47 tag. */
  readonly language: string;
  readonly say: (saying: Saying, form: Form) => readonly Sentence[];
}

export const BOUND = '~';
export const GLUED = '+';

/** The words of clips that stand one after the other. */
export const wordsOfClips = (clips: Sentence): string =>
  clips.join(' ').replaceAll(BOUND, '').replaceAll(`${GLUED} `, '').replaceAll(GLUED, '');

/** 'Five K. Twenty-one twelve. Two seconds up.': each sentence begins with a capital and ends with a stop. */
export const textOf = (sentences: readonly Sentence[]): string =>
  sentences.map((clips) => `${capital(wordsOfClips(clips))}.`).join(' ');

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
