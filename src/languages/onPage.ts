import { effect, type ReadonlySignal } from '@preact/signals';
import type { About } from './about.ts';
import { LANGUAGES } from './all.ts';
import { createLanguageChoice, type LanguageChoice } from './current.ts';
import { followScreens, type ScreenTexts } from './screens.ts';
import { screenLanguage } from './text.ts';

/** The languages of a page: which there are, which is chosen, and whether its texts are here. */
export interface PageLanguage extends LanguageChoice {
  readonly languages: readonly About[];
  readonly texts: ReadonlySignal<ScreenTexts>;
}

/**
 * @param wished  what the browser asks for, the dearest first
 * @param root  carries the language that the screens are in, for those who read them aloud
 */
export const createPageLanguage = (
  wished: readonly string[],
  keep: Pick<Storage, 'getItem' | 'setItem'>,
  root: { lang: string },
): PageLanguage => {
  const tags = LANGUAGES.map(({ tag }) => tag);
  const choice = createLanguageChoice(tags, wished, keep);
  const texts = followScreens(choice);
  effect(() => {
    root.lang = screenLanguage.value;
  });
  return { ...choice, languages: LANGUAGES, texts };
};
