import type { DoorError, Result } from '../../core/units/result.ts';
import { ok } from '../../core/units/result.ts';
import type { Pack } from '../packs/pack.ts';
import { cutOf } from './cut.ts';
import { framesOf } from './sheaf.ts';
import type { SourceOf } from './strip.ts';
import type { ToneFrames } from './toneFrames.ts';

/** A sound file with its table of contents. */
interface Sounds<Table> {
  readonly table: Table;
  readonly mp3: Uint8Array;
}

/** Where the frames of every clip of a pack and of every tone are. Refused where one of the files cannot be joined. */
export const sourcesOf = (voice: Sounds<Pack>, tones: Sounds<ToneFrames>): Result<SourceOf, DoorError> => {
  const clipSheaf = framesOf(voice.mp3);
  if (!clipSheaf.ok) return clipSheaf;
  const toneSheaf = framesOf(tones.mp3);
  if (!toneSheaf.ok) return toneSheaf;
  return ok((sound) => {
    if ('tone' in sound) return { sheaf: toneSheaf.value, cut: cutOf(...tones.table.tones[sound.tone]) };
    const [first, length] = voice.table.clips[sound.clip] ?? [];
    return first === undefined || length === undefined
      ? null
      : { sheaf: clipSheaf.value, cut: cutOf(first, length) };
  });
};
