import type { Catalogue } from '../../src/languages/text.ts';

/** The catalogue that a language's `screen.ts` exports as `screen`. @throws where it exports none */
export const catalogueOf = (module: unknown): Catalogue => {
  const { screen } = module as { readonly screen?: Catalogue };
  if (screen === undefined) throw new Error('a screen.ts without `export const screen: Catalogue`');
  return screen;
};
