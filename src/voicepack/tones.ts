import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { TONES } from '../core/cues/voicePort.ts';
import type { ToneFrames } from '../voice/file/toneFrames.ts';
import { renderTone } from '../voice/tones/render.ts';
import { encode, LIMITER_RATE_HZ, PACK_RATE_HZ } from './master.ts';
import { resample } from './resample.ts';
import { layOut } from './sprite.ts';
import type { Sound } from './wav.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const FILE = 'tones.mp3';

/** As much silence before a tone as clips have before their first sound: the frame that it begins in is then its own. */
const LEAD_S = 0.01;

const toneClip = (samples: Float32Array): Sound => {
  const lead = Math.round(LEAD_S * PACK_RATE_HZ);
  const led = new Float32Array(lead + samples.length);
  led.set(samples, lead);
  return { samples: led, rateHz: PACK_RATE_HZ };
};

/**
 * The tones as frames, for the sound file that the page joins together; in a run they are computed. They are levelled with
 * the voice where they are rendered, so they are encoded as they are. The same for every language.
 */
const main = (): void => {
  const clips = new Map(TONES.map((tone) => [tone as string, toneClip(renderTone(tone, PACK_RATE_HZ))]));
  const { sound, spans } = layOut(clips, PACK_RATE_HZ);
  const { samples } = resample(sound, LIMITER_RATE_HZ);
  const mp3 = encode(Buffer.from(samples.buffer, samples.byteOffset, samples.byteLength));
  const manifest: ToneFrames = {
    file: FILE,
    bytes: mp3.length,
    sha256: createHash('sha256').update(mp3).digest('hex'),
    tones: Object.fromEntries(spans) as ToneFrames['tones'],
  };
  writeFileSync(`${ROOT}public/voice/${FILE}`, mp3);
  const text = JSON.stringify(manifest, null, 2).replace(/\[\s+(\d+),\s+(\d+)\s+\]/g, '[$1, $2]');
  writeFileSync(`${ROOT}src/voice/file/tones.json`, `${text}\n`);
  console.log(`${FILE}: ${mp3.length} bytes, ${spans.size} tones`);
};

main();
