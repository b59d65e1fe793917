import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { FALLBACK_LANGUAGE, type LanguageChoice } from './current.ts';
import { type Catalogue, readIn } from './text.ts';

/** `here`: the screens are in the chosen language. `none`: nobody has put them into it yet; they are in English. */
export type ScreenTexts = 'here' | 'loading' | 'failed' | 'none';

const catalogues = import.meta.glob<Catalogue>('./*/screen.ts', { import: 'screen' });

/** The texts of a language, fetched when they are wanted; null where it has none. */
const fetchTexts = (tag: string): Promise<Catalogue> | null => catalogues[`./${tag}/screen.ts`]?.() ?? null;

/**
 * Puts the screens into whatever language is chosen. They stay as they are until its texts have arrived; where these
 * cannot be had, they are in English.
 */
export const followScreens = (
  { chosenLanguage }: LanguageChoice,
  fetch: (tag: string) => Promise<Catalogue> | null = fetchTexts,
): ReadonlySignal<ScreenTexts> => {
  const state = signal<ScreenTexts>('here');
  const english = (why: ScreenTexts): void => {
    readIn(FALLBACK_LANGUAGE, {});
    state.value = why;
  };
  effect(() => {
    const tag = chosenLanguage.value;
    const isStill = (): boolean => chosenLanguage.peek() === tag;
    if (tag === FALLBACK_LANGUAGE) {
      english('here');
      return;
    }
    const coming = fetch(tag);
    if (coming === null) {
      english('none');
      return;
    }
    state.value = 'loading';
    coming.then(
      (catalogue) => {
        if (!isStill()) return;
        readIn(tag, catalogue);
        state.value = 'here';
      },
      () => {
        if (isStill()) english('failed');
      },
    );
  });
  return state;
};
