import { speakInCarrier } from './carrier.ts';
import { carrierOf, spelt } from './en/speaking.ts';
import { openFlite } from './flite.ts';
import type { Sound } from './wav.ts';

/** Speed of speech: above 1 is slower than the engine's own. */
const STRETCH = 0.9;

/** The English clips, by Flite. */
export const recordEnglish = async (names: Iterable<string>): Promise<ReadonlyMap<string, Sound>> => {
  const flite = await openFlite('rms');
  const clips = new Map<string, Sound>();
  for (const name of names)
    clips.set(name, await speakInCarrier(flite.speak, spelt(name), carrierOf(name), STRETCH));
  flite.close();
  return clips;
};
