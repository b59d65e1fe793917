import raw from './en.json';
import type { Pack } from './pack.ts';

/** The shipped English pack. */
export const englishPack = raw as Pack;
