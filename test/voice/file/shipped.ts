import { readFileSync } from 'node:fs';
import { spoken } from '../../../src/languages/en/spoken.ts';
import { sourcesOf } from '../../../src/voice/file/fromPack.ts';
import { framesOf, type Sheaf } from '../../../src/voice/file/sheaf.ts';
import type { SourceOf } from '../../../src/voice/file/strip.ts';
import { toneFrames } from '../../../src/voice/file/toneFrames.ts';
import type { Loudness } from '../../../src/voice/packs/pack.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const VOICES = new URL('../../../public/voice/', import.meta.url);

export const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(new URL(name, VOICES)));

/** What a test asks for must be there. */
const must = <T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown },
): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

export const PACK = spoken.pack;
export const VOICE = voiceOf(PACK, spoken.words);

/** The frames of the English pack as it is shipped, and of the tones. */
export const shippedSheaf = (): Sheaf => must(framesOf(bytesOf(PACK.variants.normal.file)));
export const shippedSources = (loudness: Loudness = 'normal'): SourceOf =>
  must(
    sourcesOf(
      { table: PACK, mp3: bytesOf(PACK.variants[loudness].file) },
      { table: toneFrames, mp3: bytesOf(toneFrames.file) },
      loudness,
    ),
  );
