import type { Saying } from '../../core/cues/saying.ts';
import type { Form } from '../../core/cues/voicePort.ts';

/**
 * One sentence as the clips that make it, in order. A clip is named by exactly the words that it says, written as they
 * stand in the middle of a sentence: 'five K', 'twenty-one', 'two seconds up'. So the text of a call and the sound of it
 * cannot part.
 */
export type Sentence = readonly string[];

/** A language: what is said for a meaning. Pure; the only thing a new language must bring besides its pack. */
export interface Words {
  /** BCP 47 tag. */
  readonly language: string;
  readonly say: (saying: Saying, form: Form) => readonly Sentence[];
}

/** 'Five K. Twenty-one twelve. Two seconds up.': each sentence begins with a capital and ends with a stop. */
export const textOf = (sentences: readonly Sentence[]): string =>
  sentences.map((clips) => `${capital(clips.join(' '))}.`).join(' ');

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
