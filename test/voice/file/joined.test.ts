import { describe, expect, test } from 'vitest';
import { chanceOf } from '../../../src/core/units/chance.ts';
import { cutOf } from '../../../src/voice/file/cut.ts';
import { CLIP_PHASE, FRAME_SAMPLES, LATE_SAMPLES, RATE_HZ } from '../../../src/voice/file/frames.ts';
import { mp3Of } from '../../../src/voice/file/mp3.ts';
import { framesOf } from '../../../src/voice/file/sheaf.ts';
import { layStrip, type Strip } from '../../../src/voice/file/strip.ts';
import { toneFrames } from '../../../src/voice/file/toneFrames.ts';
import { LOUDNESS, type Pack } from '../../../src/voice/packs/pack.ts';
import { readSound } from '../../support/ffmpegRead.ts';
import { bytesOf, PACK, shippedSheaf, shippedSources } from './shipped.ts';

const sprite = shippedSheaf();
const sources = shippedSources();
const fileOf = (strip: Strip): Uint8Array => Buffer.concat(mp3Of(strip, 'Joined'));
/** Samples that a decoder gives that cuts nothing off: the sprite without the frame that tells about it. */
const whole = readSound(Buffer.concat(sprite)).samples;

/** The tables of all packs that there are, whatever their language. */
const packs = Object.values(
  import.meta.glob<Pack>('../../../src/languages/*/pack.json', { eager: true, import: 'default' }),
);
const tables = [
  ...packs.flatMap((pack) =>
    LOUDNESS.map((loudness) => ({ name: pack.variants[loudness].file, spans: pack.clips })),
  ),
  { name: toneFrames.file, spans: toneFrames.tones },
];

describe('the shipped sounds', () => {
  test.each(tables)(
    '$name is made of frames that can be joined, with every clip at one place of them',
    ({ name, spans }) => {
      const frames = framesOf(bytesOf(name));
      expect(frames.ok && frames.value.length).toBeGreaterThan(300);
      const places = Object.values(spans).map(([first]) => ((first ?? 0) + LATE_SAMPLES) % FRAME_SAMPLES);
      expect(new Set(places)).toEqual(new Set([CLIP_PHASE]));
    },
  );

  test('is decoded frame by frame, and late by what is said', () => {
    expect(whole.length).toBe(sprite.length * FRAME_SAMPLES);
    const { samples } = readSound(bytesOf(toneFrames.file));
    for (const [first, length] of Object.values(toneFrames.tones)) {
      const sound = samples.subarray(first + LATE_SAMPLES, first + LATE_SAMPLES + length);
      const loudest = sound.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
      const begin = sound.findIndex((v) => Math.abs(v) > loudest / 10);
      // 10 ms of silence, and some of its 6 ms of rise.
      expect(begin / RATE_HZ).toBeGreaterThan(0.01);
      expect(begin / RATE_HZ).toBeLessThan(0.014);
    }
  });
});

describe('frames joined anew', () => {
  const clips = Object.keys(PACK.clips);
  /** Far below what can be heard beside the clip itself. */
  const UNHEARD_DB = -60;

  /** Largest difference between a clip in the joined sound and in the sprite, dB of the clip's peak. */
  const differenceDb = (joined: Float32Array, clip: string, atS: number): number => {
    const [first = 0, length = 0] = PACK.clips[clip] ?? [];
    const { first: frame } = cutOf(first, length);
    const from = Math.round(atS * RATE_HZ);
    const said = whole.subarray(frame * FRAME_SAMPLES + CLIP_PHASE).subarray(0, length);
    const off = said.reduce((most, v, i) => Math.max(most, Math.abs(v - (joined[from + i] ?? 0))), 0);
    return 20 * Math.log10(off / said.reduce((most, v) => Math.max(most, Math.abs(v)), 0));
  };

  test.each([1, 2, 3])('say every clip as the sprite does, in any order (%i)', (seed) => {
    const chance = chanceOf(seed);
    const order = Array.from({ length: 150 }, () => clips[Math.floor(chance.uniform() * clips.length)] ?? '');
    // One after the other as near as frames can be: each call wants to begin at once.
    const timed = order.map((clip) => ({
      atS: 0,
      utterance: { text: clip, durationS: 0, parts: [{ sound: { clip }, offsetS: 0 }] },
    }));
    const strip = layStrip(timed, sources, 0);
    const read = readSound(fileOf(strip));
    expect(read.complaints).toBe('');
    expect(read.samples.length).toBe(strip.frames * FRAME_SAMPLES);
    const worst = order.map((clip, i) => differenceDb(read.samples, clip, strip.beginsS[i] ?? 0));
    expect(Math.max(...worst)).toBeLessThan(UNHEARD_DB);
  });

  test('stand so close that a sentence does not fall apart', () => {
    const timed = clips.map((clip) => ({
      atS: 0,
      utterance: { text: clip, durationS: 0, parts: [{ sound: { clip }, offsetS: 0 }] },
    }));
    const { beginsS } = layStrip(timed, sources, 0);
    const gapsS = clips
      .slice(1)
      .map(
        (_, i) =>
          (beginsS[i + 1] ?? 0) - (beginsS[i] ?? 0) - (PACK.clips[clips[i] ?? '']?.[1] ?? 0) / RATE_HZ,
      );
    expect(Math.max(...gapsS)).toBeLessThan(0.04);
    expect(gapsS.reduce((sum, gap) => sum + gap, 0) / gapsS.length).toBeLessThan(0.03);
  });

  test('are refused where they lean on each other, or are of another kind', () => {
    const leaning = Uint8Array.from(sprite[5] ?? []);
    leaning[4] = 3;
    expect(framesOf(leaning)).toMatchObject({ ok: false, error: { found: 'a bit reservoir' } });
    expect(framesOf(new Uint8Array([0xff, 0xfb, 0x90, 0x64]))).toMatchObject({ ok: false });
    expect(framesOf((sprite[5] ?? new Uint8Array()).subarray(0, 100))).toMatchObject({ ok: false });
  });
});
