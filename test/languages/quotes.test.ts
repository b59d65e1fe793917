import { expect, test } from 'vitest';
import { textOf } from '../../src/voice/words/words.ts';
import { catalogueOf } from './catalogueOf.ts';
import { SPOKEN } from './spokenHere.ts';

const catalogues = import.meta.glob('../../src/languages/*/screen.ts', { eager: true });
const translated = SPOKEN.filter(([tag]) => `../../src/languages/${tag}/screen.ts` in catalogues);

test('there are screens in the languages of the voice', () => {
  expect(translated.length).toBeGreaterThan(1);
});

test.each(translated)(
  'where a screen quotes the voice, it says what the voice says: %s',
  (tag, { words }) => {
    const screen = catalogueOf(catalogues[`../../src/languages/${tag}/screen.ts`]);
    const said = (side: 'up' | 'down'): string =>
      textOf(
        words
          .say({ kind: 'rival', ahead: { side, seconds: 4, sure: true } }, 'long')
          .map((clips) => clips.slice(1)),
      );
    expect([screen['Ahead by four.'], screen['Behind by four.']]).toEqual([said('up'), said('down')]);
  },
);
