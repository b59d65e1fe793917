import { expect, test } from 'vitest';
import { createLanguageChoice } from '../../src/languages/current.ts';

const HERE = ['de', 'en', 'fr'];
const shelf = (kept: Record<string, string> = {}) => ({
  kept,
  getItem: (key: string) => kept[key] ?? null,
  setItem: (key: string, value: string) => {
    kept[key] = value;
  },
});

test('the first visit follows the browser, as far as a language is here', () => {
  const first = (...wished: string[]) => createLanguageChoice(HERE, wished, shelf()).chosenLanguage.value;
  expect(first('de-AT', 'en')).toBe('de');
  expect(first('nl', 'FR')).toBe('fr');
  expect(first('den')).toBe('en');
  expect(first()).toBe('en');
});

test('what the runner chose is kept, and stands above what the browser asks for', () => {
  const keep = shelf();
  createLanguageChoice(HERE, ['de'], keep).choose('fr');
  expect(createLanguageChoice(HERE, ['de'], keep).chosenLanguage.value).toBe('fr');
  createLanguageChoice(HERE, ['de'], keep).choose('xx');
  expect(createLanguageChoice(HERE, ['de'], keep).chosenLanguage.value).toBe('fr');
  // A language that a later version no longer has.
  expect(createLanguageChoice(['de', 'en'], ['de'], keep).chosenLanguage.value).toBe('de');
});

test('a choice during the visit is followed at once', () => {
  const choice = createLanguageChoice(HERE, [], shelf());
  choice.choose('de');
  expect(choice.chosenLanguage.value).toBe('de');
});
