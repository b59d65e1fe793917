import type { About } from '../about.ts';

export const about: About = { tag: 'de', name: 'Deutsch', hasPack: true };
