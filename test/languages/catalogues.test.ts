import { expect, test } from 'vitest';
import { allTexts, everySaid } from './allTexts.ts';
import { catalogueOf } from './catalogueOf.ts';
import { catalogueFaults } from './faults.ts';

const catalogues = Object.entries(import.meta.glob('../../src/languages/*/screen.ts', { eager: true })).map(
  ([path, module]) => ({ language: /languages\/([^/]+)\//.exec(path)?.[1] ?? '', module }),
);
const said = everySaid();
const texts = allTexts(said);

test('the sources say something', () => {
  expect(texts.length).toBeGreaterThan(500);
  expect(texts).toContainEqual(
    expect.objectContaining({
      text: '{n} points without a usable lat',
      one: '{n} point without a usable lat',
    }),
  );
  // A phrase for refused input.
  expect(texts).toContainEqual(expect.objectContaining({ text: 'minutes of travel, 0 to 600' }));
});

test('a text is about a number of things everywhere, or nowhere', () => {
  const forms = new Map<string, Set<string>>();
  for (const { text, one } of said) forms.set(text, (forms.get(text) ?? new Set()).add(one ?? ''));
  expect([...forms].filter(([, ones]) => ones.size > 1).map(([text]) => text)).toEqual([]);
});

test('a catalogue is complete, without leftovers, and keeps the places of every text', () => {
  for (const { language, module } of catalogues)
    expect({ language, faults: catalogueFaults(language, catalogueOf(module), texts) }).toEqual({
      language,
      faults: [],
    });
});

const TEXTS = [
  { text: 'Run', where: [] },
  { text: '{n} of {m}', where: [] },
  { text: '{n} gels', one: 'one gel', where: [] },
];
const GOOD = {
  Run: 'Lauf',
  '{n} of {m}': 'von {m} {n}',
  '{n} gels': { one: 'ein Gel', other: '{n} Gels' },
};

test.each([
  ['all well', 'de', GOOD, []],
  ['many may fall back', 'fr', GOOD, []],
  ['one form for all numbers', 'de', { ...GOOD, '{n} gels': '{n} Gel' }, []],
  ['missing', 'de', { Run: 'Lauf', '{n} of {m}': '{n} von {m}' }, ['{n} gels: is missing']],
  ['a leftover', 'de', { ...GOOD, Walk: 'Gang' }, ['Walk: nobody says this']],
  ['a lost place', 'de', { ...GOOD, '{n} of {m}': '{n} von allen' }, ['{n} of {m}: has other places']],
  ['a misspelt place', 'de', { ...GOOD, '{n} of {m}': '{n} von {M}' }, ['{n} of {m}: has other places']],
  [
    'a lost form',
    'de',
    { ...GOOD, '{n} gels': { other: '{n} Gels' } },
    ["{n} gels: lacks the form for 'one'"],
  ],
  [
    'a form of another language',
    'de',
    { ...GOOD, '{n} gels': { one: 'ein Gel', few: '{n} Gels', other: '{n} Gels' } },
    ["{n} gels: 'few' is no form of de"],
  ],
  [
    'a form that lost its number',
    'de',
    { ...GOOD, '{n} gels': { one: 'ein Gel', other: 'Gels' } },
    ["{n} gels: 'other' has other places"],
  ],
  [
    'forms where none are',
    'de',
    { ...GOOD, Run: { one: 'Lauf', other: 'Läufe' } },
    ['Run: has plural forms for a text that is not about a number of things'],
  ],
  [
    'the note for translators',
    'de',
    { ...GOOD, Run: 'Lauf||noun' },
    ['Run: says what it is for, which is for the English only'],
  ],
  ['blanks around', 'de', { ...GOOD, Run: 'Lauf ' }, ['Run: is empty, or has blanks around']],
])('a catalogue with %s', (_, language, catalogue, faults) => {
  expect(catalogueFaults(language, catalogue, TEXTS)).toEqual(faults);
});
