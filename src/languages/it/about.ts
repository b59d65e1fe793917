import type { About } from '../about.ts';

export const about: About = { tag: 'it', name: 'Italiano', hasPack: true };
