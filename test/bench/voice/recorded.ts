import type { Pack } from '../../../src/voice/packs/pack.ts';
import { speakInCarrier } from '../../../src/voicepack/carrier.ts';
import { level, trim } from '../../../src/voicepack/clip.ts';
import { carrierOf, spelt } from '../../../src/voicepack/en/speaking.ts';
import { openFlite } from '../../../src/voicepack/flite.ts';
import { decode, master, NORMAL, PACK_RATE_HZ } from '../../../src/voicepack/master.ts';
import { resample } from '../../../src/voicepack/resample.ts';
import { layOut } from '../../../src/voicepack/sprite.ts';
import type { Sound } from '../../../src/voicepack/wav.ts';
import { RECOGNISER_RATE_HZ } from './recogniser.ts';
import { inPlace } from './sprite.ts';

/** Speed of the shipped clips, single digits left out. */
const STRETCH = 0.9;

/**
 * Clips that the pack does not have, mastered and encoded like its own; the sprite at the recogniser's rate.
 * @param isCut  cut from running speech, as the pack's are; else each is said by itself
 */
export const recorded = async (
  like: Pack,
  names: readonly string[],
  isCut: boolean,
): Promise<{ readonly pack: Pack; readonly sprite: Float32Array }> => {
  const flite = await openFlite('rms');
  const clips = new Map<string, Sound>();
  for (const name of [...new Set(names)].sort()) {
    const sound = isCut
      ? await speakInCarrier(flite.speak, spelt(name), carrierOf(name), STRETCH)
      : (await flite.speak(spelt(name), STRETCH)).sound;
    clips.set(name, resample(level(trim(sound)), PACK_RATE_HZ));
  }
  flite.close();
  const { sound, spans } = layOut(clips, PACK_RATE_HZ);
  const pack: Pack = { ...like, clips: Object.fromEntries(spans) };
  const placed = inPlace(pack, decode(master(sound, NORMAL)));
  return { pack, sprite: resample(placed, RECOGNISER_RATE_HZ).samples };
};
