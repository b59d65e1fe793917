import type { About } from '../about.ts';

/** Brazilian: most runners who speak Portuguese are from there, and its full vowels carry farther in noise. */
export const about: About = { tag: 'pt', name: 'Português (Brasil)', hasPack: true };
