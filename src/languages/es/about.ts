import type { About } from '../about.ts';

export const about: About = { tag: 'es', name: 'Español', hasPack: true };
