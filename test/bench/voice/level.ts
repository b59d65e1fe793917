import { TONES } from '../../../src/core/cues/voicePort.ts';
import { LOUDNESS, type Pack } from '../../../src/voice/packs/pack.ts';
import { renderTone } from '../../../src/voice/tones/render.ts';
import { loudness } from '../../../src/voicepack/ffmpeg.ts';
import { layOut } from '../../../src/voicepack/sprite.ts';
import { printTable } from '../table.ts';
import { shippedMp3 } from './sprite.ts';

/** A phone's usual rate; the page renders tones at the context's. */
const TONE_RATE_HZ = 48_000;

const rowOf = (name: string, { lufs, truePeakDb }: { lufs: number; truePeakDb: number }): string[] => [
  name,
  lufs.toFixed(1),
  truePeakDb.toFixed(1),
];

/** The tones one after the other with the same silence between them as clips have. */
const tones = (): { lufs: number; truePeakDb: number } => {
  const all = new Map(
    TONES.map((tone) => [tone, { samples: renderTone(tone, TONE_RATE_HZ), rateHz: TONE_RATE_HZ }]),
  );
  const { samples } = layOut(all, TONE_RATE_HZ).sound;
  const raw = ['-f', 'f32le', '-ar', String(TONE_RATE_HZ), '-ac', '1'];
  return loudness(raw, new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength));
};

/** Loudness and true peak of what is decoded from the shipped MP3, and of the tones. */
export const printLevels = (pack: Pack): void =>
  printTable(
    'Level of what is decoded, by EBU R 128',
    ['sound', 'integrated, LUFS', 'true peak, dBTP'],
    [
      ...LOUDNESS.map((variant) => rowOf(`voice, ${variant}`, loudness([], shippedMp3(pack, variant)))),
      rowOf('tones', tones()),
    ],
  );
