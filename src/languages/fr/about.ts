import type { About } from '../about.ts';

export const about: About = { tag: 'fr', name: 'Français', hasPack: true };
