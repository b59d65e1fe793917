import type { Pack } from '../voice/packs/pack.ts';
import type { Words } from '../voice/words/words.ts';

/** What the voice needs of a language: the words for each meaning, and where each of them stands in the sound. */
export interface Spoken {
  readonly words: Words;
  readonly pack: Pack;
}
