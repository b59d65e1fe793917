import { describe, expect, test } from 'vitest';
import { screen as german } from '../../src/languages/de/screen.ts';
import { screen as french } from '../../src/languages/fr/screen.ts';
import type { Catalogue } from '../../src/languages/text.ts';

/** What a careful printer of a language would mark; looked for in every text of its screens. */
type Rules = Readonly<Record<string, RegExp>>;

// U+202F is the narrow blank that does not break, which France sets before these signs; U+00A0 the wide one.
const NARROW = '\u202f';

/** Imprimerie nationale, Lexique des règles typographiques (from memory). */
const FRENCH: Rules = {
  'a sign with another blank before it than the narrow one': /[^\u202f][;!?»]/,
  // Not between the figures of a time, nor before a path.
  'a colon without the narrow blank': /[^\u202f\d]:|\d:(?!\d)/,
  'an opening quotation mark without the narrow blank': /«(?!\u202f)/,
  'a straight apostrophe': /'/,
};

/** Duden, rules on quotation marks and apostrophes (from memory). */
const GERMAN: Rules = {
  'a quotation mark of another language': /[«»”]/,
  'quotation marks that do not pair': /„(?![^„“]*“)|^[^„]*“/,
  'a straight apostrophe': /'/,
  'a blank before a sign': /\s[;:!?]/,
};

/** Words of a file format stand as the file has them. */
const isCode = (text: string): boolean => /["`[\]]/.test(text);

const faults = (catalogue: Catalogue, rules: Rules): string[] =>
  Object.values(catalogue)
    .flatMap((entry) => (typeof entry === 'string' ? [entry] : Object.values(entry)))
    .filter((text) => !isCode(text))
    .flatMap((text) =>
      Object.entries(rules).flatMap(([fault, sign]) => (sign.test(text) ? [`${fault}: ${text}`] : [])),
    );

describe('the signs of', () => {
  test('French', () => expect(faults(french, FRENCH)).toEqual([]));
  test('German', () => expect(faults(german, GERMAN)).toEqual([]));

  test.each([
    ['Prêt ?', FRENCH],
    [`Prêt${NARROW}: oui ; non`, FRENCH],
    ['Départ: 8:20', FRENCH],
    [`«Jamais${NARROW}»`, FRENCH],
    ["l'allure", FRENCH],
    ['auf «Nie»', GERMAN],
    ['auf „Nie', GERMAN],
    ['auf Nie“', GERMAN],
    ['Bereit ?', GERMAN],
  ])('%s is marked', (text, rules) => {
    expect(faults({ text }, rules)).toHaveLength(1);
  });

  test.each([
    [`Départ${NARROW}: 8:20, «${NARROW}jamais${NARROW}»`, FRENCH],
    ['auf „Nie“: 8:20!', GERMAN],
  ])('%s is well set', (text, rules) => {
    expect(faults({ text }, rules)).toEqual([]);
  });
});
