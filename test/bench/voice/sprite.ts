import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { decoderShiftS } from '../../../src/voice/device/score.ts';
import type { Loudness, Pack } from '../../../src/voice/packs/pack.ts';
import { decode } from '../../../src/voicepack/master.ts';
import { resample } from '../../../src/voicepack/resample.ts';
import type { Sound } from '../../../src/voicepack/wav.ts';
import { RECOGNISER_RATE_HZ } from './recogniser.ts';

const VOICES = new URL('../../../public/voice/', import.meta.url);

export const shippedMp3 = (pack: Pack, loudness: Loudness): Buffer =>
  readFileSync(fileURLToPath(new URL(pack.variants[loudness].file, VOICES)));

/** A decoded sprite with its sounds where the manifest has them: the decoder's delay is taken off as the page does it. */
export const inPlace = (pack: Pack, decoded: Sound): Sound => {
  const shift = Math.round(decoderShiftS(pack, decoded.samples, decoded.rateHz) * decoded.rateHz);
  return { ...decoded, samples: decoded.samples.slice(shift) };
};

/** What a page plays clips from, at the recogniser's rate. */
export const shippedSprite = (pack: Pack, loudness: Loudness): Float32Array =>
  resample(inPlace(pack, decode(shippedMp3(pack, loudness))), RECOGNISER_RATE_HZ).samples;
