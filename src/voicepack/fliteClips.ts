import { speakInCarrier } from './carrier.ts';
import { carrierOf, spelt, stretchOf } from './en/speaking.ts';
import { openFlite } from './flite.ts';
import type { Sound } from './wav.ts';

/** The English clips, by Flite. */
export const recordEnglish = async (names: Iterable<string>): Promise<ReadonlyMap<string, Sound>> => {
  const flite = await openFlite('rms');
  const clips = new Map<string, Sound>();
  for (const name of names)
    clips.set(name, await speakInCarrier(flite.speak, spelt(name), carrierOf(name), stretchOf(name)));
  flite.close();
  return clips;
};
