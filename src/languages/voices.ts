import type { Spoken } from './spoken.ts';

const found = import.meta.glob<Spoken>(['./*/spoken.ts', '!./en/spoken.ts'], { import: 'spoken' });

/** Words and manifest of a language, fetched when they are wanted; null where it has no voice of its own. */
export const fetchSpoken = (tag: string): Promise<Spoken> | null => found[`./${tag}/spoken.ts`]?.() ?? null;
