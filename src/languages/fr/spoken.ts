import type { Pack } from '../../voice/packs/pack.ts';
import type { Spoken } from '../spoken.ts';
import raw from './pack.json';
import { words } from './words/say.ts';

export const spoken: Spoken = { words, pack: raw as Pack };
