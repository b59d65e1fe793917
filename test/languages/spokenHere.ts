import type { Spoken } from '../../src/languages/spoken.ts';

const found = import.meta.glob<Spoken>('../../src/languages/*/spoken.ts', { eager: true, import: 'spoken' });

/** Every language that has a voice, by its tag. */
export const SPOKEN: readonly (readonly [tag: string, spoken: Spoken])[] = Object.entries(found).map(
  ([path, spoken]) => [path.split('/').at(-2) ?? '', spoken] as const,
);
