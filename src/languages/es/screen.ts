import { merged } from '../merged.ts';

/** The texts of the screens, by the part of the page that says them first. */
export const screen = merged(import.meta.glob('./screen/*.ts', { eager: true }));
