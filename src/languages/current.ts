import { type ReadonlySignal, signal } from '@preact/signals';

/** The one choice of language: the screens follow it, and so does the voice of the next run. */
export interface LanguageChoice {
  /** BCP 47 tag of one of the languages that are here. */
  readonly chosenLanguage: ReadonlySignal<string>;
  /** Chosen by the runner: kept on this device. A tag that is not here is passed over. */
  readonly choose: (tag: string) => void;
}

const KEY = 'soundline.language';
/** What every text is written in, and what stands wherever a language lacks something. */
export const FALLBACK_LANGUAGE = 'en';

/** The first wish that is here, whatever its region: `de-AT` is met by `de`. */
const firstOf = (wished: readonly string[], here: readonly string[]): string => {
  for (const wish of wished) {
    const tag = wish.toLowerCase();
    const found = here.find((have) => tag === have.toLowerCase() || tag.startsWith(`${have.toLowerCase()}-`));
    if (found !== undefined) return found;
  }
  return FALLBACK_LANGUAGE;
};

/**
 * @param here  tags of the languages that are here
 * @param wished  what the browser asks for, the dearest first: followed until the runner chooses
 */
export const createLanguageChoice = (
  here: readonly string[],
  wished: readonly string[],
  keep: Pick<Storage, 'getItem' | 'setItem'>,
): LanguageChoice => {
  const kept = keep.getItem(KEY);
  const chosen = signal(kept !== null && here.includes(kept) ? kept : firstOf(wished, here));
  return {
    chosenLanguage: chosen,
    choose: (tag) => {
      if (!here.includes(tag)) return;
      chosen.value = tag;
      keep.setItem(KEY, tag);
    },
  };
};
