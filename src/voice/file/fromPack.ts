import type { DoorError, Result } from '../../core/units/result.ts';
import { ok } from '../../core/units/result.ts';
import type { Loudness, Pack } from '../packs/pack.ts';
import { cutOf } from './cut.ts';
import { DB_PER_STEP, louder } from './louder.ts';
import { framesOf } from './sheaf.ts';
import type { SourceOf } from './strip.ts';
import type { ToneFrames } from './toneFrames.ts';

/** A sound file with its table of contents. */
interface Sounds<Table> {
  readonly table: Table;
  readonly mp3: Uint8Array;
}

/** The loud voice is 3 LU louder than the normal one, with which the tones are levelled. */
const LOUD_DB = 3;

/**
 * Where the frames of every clip of a pack and of every tone are, the tones as loud as the voice. Refused where one of the
 * files cannot be joined.
 */
export const sourcesOf = (
  voice: Sounds<Pack>,
  tones: Sounds<ToneFrames>,
  loudness: Loudness,
): Result<SourceOf, DoorError> => {
  const clipSheaf = framesOf(voice.mp3);
  if (!clipSheaf.ok) return clipSheaf;
  const toneSheaf = framesOf(tones.mp3);
  if (!toneSheaf.ok) return toneSheaf;
  const steps = loudness === 'loud' ? Math.round(LOUD_DB / DB_PER_STEP) : 0;
  const levelled = toneSheaf.value.map((frame) => louder(frame, steps));
  return ok((sound) => {
    if ('tone' in sound) return { sheaf: levelled, cut: cutOf(...tones.table.tones[sound.tone]) };
    const [first, length] = voice.table.clips[sound.clip] ?? [];
    return first === undefined || length === undefined
      ? null
      : { sheaf: clipSheaf.value, cut: cutOf(first, length) };
  });
};
