import type { About } from './about.ts';

const found = import.meta.glob<About>('./*/about.ts', { eager: true, import: 'about' });

/** Every language that is here: a folder each, found by being there. In the order of their own names. */
export const LANGUAGES: readonly About[] = Object.values(found).toSorted((a, b) =>
  a.name < b.name ? -1 : 1,
);
