import { createHash } from 'node:crypto';
import type { Pack, PackFile } from '../voice/packs/pack.ts';
import { level, trim } from './clip.ts';
import { loudness } from './ffmpeg.ts';
import { type Mastering, master, PACK_RATE_HZ } from './master.ts';
import { resample } from './resample.ts';
import { layOut } from './sprite.ts';
import type { Sound } from './wav.ts';

/** A pack and the bytes of its sound files by their names. */
export interface Built {
  readonly pack: Pack;
  readonly files: ReadonlyMap<string, Buffer>;
}

export interface PackOrder {
  readonly language: string;
  /** Engine and voice, for people. */
  readonly voice: string;
  /**
   * Whether every visitor's device stores it, anew with every version of the page. What is stored only where it is chosen
   * bears its hash in its name, so that no page ever plays an old sound by a new manifest.
   */
  readonly isStored: boolean;
  readonly normal: Mastering;
  readonly loud: Mastering;
}

/** Of the hash, in a name. */
const HASH_CHARS = 8;

/** Trims, levels, lays out, masters and encodes a language's clips. */
export const buildPack = (
  { language, voice, isStored, normal, loud }: PackOrder,
  raw: ReadonlyMap<string, Sound>,
): Built => {
  const clips = new Map([...raw].map(([name, sound]) => [name, resample(level(trim(sound)), PACK_RATE_HZ)]));
  const { sound, spans } = layOut(clips, PACK_RATE_HZ);
  const files = new Map<string, Buffer>();
  /** What is stored with the page is looked after by it; all else bears its hash in its name. */
  const make = (name: string, mastering: Mastering, isNamed: boolean): PackFile => {
    const mp3 = master(sound, mastering);
    const sha256 = createHash('sha256').update(mp3).digest('hex');
    const file = `${name}${isNamed ? '' : `-${sha256.slice(0, HASH_CHARS)}`}.mp3`;
    files.set(file, mp3);
    return { file, bytes: mp3.length, sha256 };
  };
  const pack: Pack = {
    version: 1,
    language,
    voice,
    sampleRateHz: PACK_RATE_HZ,
    samples: sound.samples.length,
    variants: {
      normal: make(language, normal, isStored),
      loud: make(`${language}-loud`, loud, false),
    },
    clips: Object.fromEntries(spans),
  };
  return { pack, files };
};

/** The manifest as it is kept: a clip a line. */
export const packText = (pack: Pack): string => {
  const rows = Object.entries(pack.clips).map(
    ([name, span]) => `    ${JSON.stringify(name)}: [${span.join(', ')}]`,
  );
  const head = JSON.stringify({ ...pack, clips: {} }, null, 2);
  return `${head.replace('"clips": {}', `"clips": {\n${rows.join(',\n')}\n  }`)}\n`;
};

/** What a listener's ear and phone get: for people who build packs. */
export const factsOf = ({ pack, files }: Built): readonly string[] => [
  ...[...files].map(([name, mp3]) => {
    const { lufs, truePeakDb } = loudness([], mp3);
    return `${name}: ${mp3.length} bytes, ${lufs} LUFS, true peak ${truePeakDb} dBTP`;
  }),
  `${pack.language}: ${Object.keys(pack.clips).length} clips, ${(pack.samples / pack.sampleRateHz).toFixed(1)} s, ` +
    `${(((pack.samples / pack.sampleRateHz) * DECODED_BYTES_PER_S) / 1e6).toFixed(1)} MB decoded`,
];

/** A phone decodes to 48 000 samples a second of four bytes. */
const DECODED_BYTES_PER_S = 48_000 * 4;
