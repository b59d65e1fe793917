import type { Catalogue, Entry } from '../../src/languages/text.ts';
import { placesIn } from '../support/texts.ts';
import type { EnglishText } from './allTexts.ts';

const setOf = (text: string): string => [...new Set(placesIn(text))].sort().join(' ');

/** Categories that a language may leave to `other`: numbers of a million and more, which no screen counts to. */
const MAY_FALL_BACK = ['many'];

const formFaults = (language: string, english: EnglishText, forms: Exclude<Entry, string>): string[] => {
  if (english.one === undefined) return ['has plural forms for a text that is not about a number of things'];
  const categories = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
  const given = Object.keys(forms);
  const wanted = [...categories.filter((c) => !MAY_FALL_BACK.includes(c)), 'other'];
  return [
    ...[...new Set(wanted)].filter((c) => !given.includes(c)).map((c) => `lacks the form for '${c}'`),
    ...given.filter((c) => !categories.some((k) => k === c)).map((c) => `'${c}' is no form of ${language}`),
    ...Object.entries(forms).flatMap(([category, text]) => {
      // A form for one number may spell the number out, as English does.
      const free = category === 'other' ? [english.text] : [english.text, english.one ?? ''];
      return free.some((e) => setOf(e) === setOf(text)) ? [] : [`'${category}' has other places`];
    }),
  ];
};

const entryFaults = (language: string, english: EnglishText, entry: Entry): string[] => {
  const texts = typeof entry === 'string' ? [entry] : Object.values(entry);
  return [
    ...(texts.some((text) => text.trim() === '' || text !== text.trim())
      ? ['is empty, or has blanks around']
      : []),
    ...(texts.some((text) => text.includes('||'))
      ? ['says what it is for, which is for the English only']
      : []),
    ...(typeof entry !== 'string'
      ? formFaults(language, english, entry)
      : setOf(entry) === setOf(english.text)
        ? []
        : ['has other places']),
  ];
};

/** What is wrong with a language's texts for the screens, a line each. */
export const catalogueFaults = (
  language: string,
  catalogue: Catalogue,
  texts: readonly EnglishText[],
): string[] => {
  const known = new Map(texts.map((english) => [english.text, english]));
  return [
    ...texts.filter(({ text }) => !(text in catalogue)).map(({ text }) => `${text}: is missing`),
    ...Object.entries(catalogue).flatMap(([text, entry]) => {
      const english = known.get(text);
      return english === undefined
        ? [`${text}: nobody says this`]
        : entryFaults(language, english, entry).map((fault) => `${text}: ${fault}`);
    }),
  ];
};
