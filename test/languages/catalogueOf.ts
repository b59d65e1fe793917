import type { Catalogue } from '../../src/languages/text.ts';

/** The catalogue that a language's `screen.ts` exports, by name or as its default. @throws where it exports none */
export const catalogueOf = (module: unknown): Catalogue => {
  const { screen, default: only } = module as { readonly screen?: Catalogue; readonly default?: Catalogue };
  const found = screen ?? only;
  if (found === undefined) throw new Error('a screen.ts without a catalogue');
  return found;
};
