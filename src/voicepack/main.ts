import { createHash } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { words } from '../languages/en/words/say.ts';
import type { Pack, PackFile } from '../voice/packs/pack.ts';
import { speakInCarrier } from './carrier.ts';
import { level, trim } from './clip.ts';
import { carrierOf, spelt } from './en/speaking.ts';
import { loudness } from './ffmpeg.ts';
import { openFlite } from './flite.ts';
import { LOUD, type Mastering, master, NORMAL, PACK_RATE_HZ } from './master.ts';
import { resample } from './resample.ts';
import { layOut } from './sprite.ts';
import { clipsOf } from './walk.ts';
import type { Sound } from './wav.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));

/** Speed of speech: above 1 is slower than the engine's own. */
const STRETCH = 0.9;

const fileOf = (name: string, mp3: Buffer): PackFile => ({
  file: name,
  bytes: mp3.length,
  sha256: createHash('sha256').update(mp3).digest('hex'),
});

/** `npm run voice`: makes every clip that the words need, masters them and writes the MP3 files and the manifest. */
const main = async (): Promise<void> => {
  const flite = await openFlite('rms');
  const clips = new Map<string, Sound>();
  for (const name of clipsOf(words)) {
    const sound = await speakInCarrier(flite.speak, spelt(name), carrierOf(name), STRETCH);
    clips.set(name, resample(level(trim(sound)), PACK_RATE_HZ));
  }
  flite.close();
  const { sound, spans } = layOut(clips, PACK_RATE_HZ);
  mkdirSync(`${ROOT}public/voice`, { recursive: true });
  const ship = (name: string, mastering: Mastering): PackFile => {
    const mp3 = master(sound, mastering);
    const { lufs, truePeakDb } = loudness([], mp3);
    console.log(`${name}: ${mp3.length} bytes, ${lufs} LUFS, true peak ${truePeakDb} dBTP`);
    writeFileSync(`${ROOT}public/voice/${name}`, mp3);
    return fileOf(name, mp3);
  };
  const pack: Pack = {
    version: 1,
    language: 'en',
    voice: 'Flite rms',
    sampleRateHz: PACK_RATE_HZ,
    samples: sound.samples.length,
    variants: { normal: ship('en.mp3', NORMAL), loud: ship('en-loud.mp3', LOUD) },
    clips: Object.fromEntries(spans),
  };
  const rows = Object.entries(pack.clips).map(
    ([name, span]) => `    ${JSON.stringify(name)}: [${span.join(', ')}]`,
  );
  const head = JSON.stringify({ ...pack, clips: {} }, null, 2);
  writeFileSync(
    `${ROOT}src/languages/en/pack.json`,
    `${head.replace('"clips": {}', `"clips": {\n${rows.join(',\n')}\n  }`)}\n`,
  );
  console.log(`${spans.size} clips, ${(sound.samples.length / PACK_RATE_HZ).toFixed(1)} s`);
};

await main();
