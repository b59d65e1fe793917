import type { Saying } from './saying.ts';

/** Earcons. Distinct by rhythm and contour, not by pitch alone. */
export const TONES = ['countdown', 'leg', 'ease', 'quicken', 'marker', 'lost', 'back', 'finish'] as const;
export type Tone = (typeof TONES)[number];

export type Form = 'long' | 'short';

/** One sound inside a call: which clip or tone, and when it begins, in seconds from the call's begin. */
export interface Part {
  readonly sound: { readonly clip: string } | { readonly tone: Tone };
  readonly offsetS: number;
}

/** A Saying as it will sound, with its real length. */
export interface Utterance {
  /** Exactly what is said; empty for a tone alone. */
  readonly text: string;
  readonly parts: readonly Part[];
  readonly durationS: number;
}

/** The ear as the core sees it: a pure function of meaning. Implemented by src/voice from the pack's manifest. */
export interface Voice {
  readonly utter: (saying: Saying, form: Form) => Utterance;
  /** The tone that is the whole of a call for those who want no words; null where only words will do. */
  readonly alone?: (saying: Saying) => Utterance | null;
}

/** The same voice for those who want no words: tones alone, and words where no tone can say it. */
export const wordless = (voice: Voice): Voice => ({
  ...voice,
  utter: (saying, form) => voice.alone?.(saying) ?? voice.utter(saying, form),
});
