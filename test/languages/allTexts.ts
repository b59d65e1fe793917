import { readdirSync } from 'node:fs';
import { type Texts, textsIn } from '../support/texts.ts';

/** Where every text that can come to a page stands: the screens, what feeds them, and the parsers at the doors. */
const sources = (): string[] => [
  'src/main.tsx',
  'src/screens',
  'src/session',
  'src/offline',
  'src/share',
  'src/core',
  'src/log',
  // The folders of the languages hold words for the voice and the translations themselves.
  ...readdirSync('src/languages')
    .filter((name) => name.endsWith('.ts') && name !== 'text.ts')
    .map((name) => `src/languages/${name}`),
];

/** One English text of the page. */
export interface EnglishText {
  readonly text: string;
  /** The form for exactly one, where the text is about a number of things. */
  readonly one?: string;
  /** Where it is said, `file:line` each. */
  readonly where: readonly string[];
}

/** Every place at which a text is said, in the order of the sources. */
export const everySaid = (): Texts['said'] => textsIn(...sources()).said;

/** Every English text that a page can show, each once. */
export const allTexts = (said: Texts['said'] = everySaid()): readonly EnglishText[] => {
  const found = new Map<string, EnglishText>();
  for (const { text, one, where } of said) {
    const before = found.get(text);
    const form = one ?? before?.one;
    found.set(text, {
      text,
      ...(form === undefined ? {} : { one: form }),
      where: [...(before?.where ?? []), where],
    });
  }
  return [...found.values()];
};
