import { afterEach, expect, test } from 'vitest';
import { createLanguageChoice } from '../../src/languages/current.ts';
import { followScreens } from '../../src/languages/screens.ts';
import { type Catalogue, readIn, screenLanguage, t } from '../../src/languages/text.ts';

afterEach(() => readIn('en', {}));

const keep = { getItem: () => null, setItem: () => {} };
const chooser = () => createLanguageChoice(['de', 'en', 'fr', 'it'], [], keep);
const GERMAN: Catalogue = { Run: 'Lauf' };

/** A fetch whose end the test decides. */
const held = () => {
  const ends: Record<string, { give: (c: Catalogue) => void; refuse: () => void }> = {};
  const fetch = (tag: string): Promise<Catalogue> | null =>
    tag === 'it'
      ? null
      : new Promise((resolve, reject) => {
          ends[tag] = { give: resolve, refuse: () => reject(new Error('no network')) };
        });
  return { ends, fetch };
};
const settle = (): Promise<void> => new Promise((done) => setTimeout(done, 0));

test('the screens stay English until the texts have arrived', async () => {
  const choice = chooser();
  const { ends, fetch } = held();
  const state = followScreens(choice, fetch);
  expect([state.value, screenLanguage.value]).toEqual(['here', 'en']);
  choice.choose('de');
  expect([state.value, t('Run')]).toEqual(['loading', 'Run']);
  ends['de']?.give(GERMAN);
  await settle();
  expect([state.value, screenLanguage.value, t('Run')]).toEqual(['here', 'de', 'Lauf']);
});

test('of two choices the later one counts, whichever arrives last', async () => {
  const choice = chooser();
  const { ends, fetch } = held();
  followScreens(choice, fetch);
  choice.choose('de');
  choice.choose('fr');
  ends['fr']?.give({ Run: 'Course' });
  await settle();
  ends['de']?.give(GERMAN);
  await settle();
  expect(t('Run')).toBe('Course');
});

test('where texts cannot be had, or do not exist, the screens are English and say so', async () => {
  const choice = chooser();
  const { ends, fetch } = held();
  const state = followScreens(choice, fetch);
  choice.choose('de');
  ends['de']?.give(GERMAN);
  await settle();
  choice.choose('fr');
  ends['fr']?.refuse();
  await settle();
  expect([state.value, screenLanguage.value, t('Run')]).toEqual(['failed', 'en', 'Run']);
  choice.choose('it');
  expect([state.value, t('Run')]).toEqual(['none', 'Run']);
});
