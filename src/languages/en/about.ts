import type { About } from '../about.ts';

export const about: About = { tag: 'en', name: 'English', hasPack: true };
