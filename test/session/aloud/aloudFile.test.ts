import { describe, expect, test } from 'vitest';
import { demoPlan } from '../../../src/demo/race.ts';
import { FRAME_S, FRAME_SAMPLES, RATE_HZ } from '../../../src/voice/file/frames.ts';
import { frameBytes } from '../../../src/voice/file/header.ts';
import { factsOf, mp3Of } from '../../../src/voice/file/mp3.ts';
import { readSound } from '../../support/ffmpegRead.ts';
import { fiveHours, madeOf } from './aloudPlans.ts';

const TITLE = 'Harbour half – 1:44:00 – Möwe, 波';
const LEAD_S = 10;
const half = madeOf(demoPlan, LEAD_S);
const long = madeOf(fiveHours, 60);
const file = Buffer.concat(mp3Of(half.strip, TITLE));
const longFile = Buffer.concat(mp3Of(long.strip, 'Five hours'));

/** The tag's length with its head: four times seven bits. */
const tagBytes = (mp3: Buffer): number =>
  10 + mp3.readUInt8(6) * 2 ** 21 + mp3.readUInt8(7) * 2 ** 14 + mp3.readUInt8(8) * 2 ** 7 + mp3.readUInt8(9);

/** Where each frame begins, from the begin of the first, which tells about the file. */
const framesIn = (mp3: Buffer): number[] => {
  const sound = mp3.subarray(tagBytes(mp3));
  const begins: number[] = [];
  for (let at = 0; at < sound.length; ) {
    const length = frameBytes(sound, at);
    if (length === null) throw new Error(`no frame at ${at}`);
    begins.push(at);
    at += length;
  }
  return begins;
};

/** After a frame's header and how its bits are read. */
const XING_AT = 13;
/** Share of full scale that is heard. */
const HEARD = 0.01;
const BEFORE_S = 0.2;

describe.each([
  ['a half marathon', file, half],
  ['a marathon in five hours', longFile, long],
])('the sound file of %s', (_, mp3, { strip }) => {
  const sound = mp3.subarray(tagBytes(mp3));
  const begins = framesIn(mp3);

  test('is a tag and whole frames, to its last byte', () => {
    expect(mp3.toString('latin1', 0, 3)).toBe('ID3');
    expect(begins.length).toBe(strip.frames + 1);
  });

  test('tells its frames and bytes', () => {
    expect(sound.toString('latin1', XING_AT, XING_AT + 4)).toBe('Xing');
    expect(sound.readUInt32BE(XING_AT + 8)).toBe(strip.frames);
    expect(sound.readUInt32BE(XING_AT + 12)).toBe(sound.length);
  });

  test('tells where each hundredth of its time begins', () => {
    for (let i = 0; i < 100; i++) {
      const frame = 1 + Math.floor((i / 100) * strip.frames);
      const told = (sound.readUInt8(XING_AT + 16 + i) * sound.length) / 256;
      const off = (begins[frame] ?? 0) - told;
      expect(off).toBeGreaterThanOrEqual(-1);
      expect(off).toBeLessThan(sound.length / 256 + 1);
    }
  });

  test('is as long and as large as was said before', () => {
    const facts = factsOf(strip, mp3 === file ? TITLE : 'Five hours');
    expect(facts.bytes).toBe(mp3.length);
    expect(facts.lengthS).toBeCloseTo(strip.frames * FRAME_S, 6);
  });
});

describe('read by ffmpeg, the half marathon', () => {
  const read = readSound(file);

  test('is decoded without a complaint, in its full length', () => {
    expect(read.complaints).toBe('');
    expect(read.samples.length).toBe(half.strip.frames * FRAME_SAMPLES);
  });

  test('shows title and length', () => {
    expect(read.facts).toContain(TITLE);
    const [, h, m, s] = /Duration: (\d+):(\d+):([\d.]+)/.exec(read.facts) ?? [];
    expect(3600 * Number(h) + 60 * Number(m) + Number(s)).toBeCloseTo(half.strip.frames * FRAME_S, 1);
  });

  test('begins every call within 30 ms of its time', () => {
    const offsS = half.lines.map(({ atS }) => {
      const from = Math.round((LEAD_S + atS - BEFORE_S) * RATE_HZ);
      const around = read.samples.subarray(from, from + RATE_HZ);
      return around.findIndex((v) => Math.abs(v) > HEARD) / RATE_HZ - BEFORE_S;
    });
    for (const off of offsS) expect(Math.abs(off)).toBeLessThan(0.03);
  });

  test('is silent between the calls', () => {
    const { lines, strip } = half;
    let at = 0;
    for (const [i, { utterance }] of lines.entries()) {
      const upTo = Math.round(((strip.beginsS[i] ?? 0) - 0.05) * RATE_HZ);
      let sounding = 0;
      for (; at < upTo; at++) if (read.samples[at] !== 0) sounding++;
      expect(sounding, `before call ${i}`).toBe(0);
      at = Math.round(((strip.beginsS[i] ?? 0) + utterance.durationS + 0.5) * RATE_HZ);
    }
  });
});

describe('five hours', () => {
  test('are at most 30 MB', () => {
    expect(longFile.length).toBeLessThan(30e6);
    expect(longFile.length / 1e6).toBeGreaterThan(15);
  });

  test('are found again after a jump into their middle', () => {
    const { lines, strip } = long;
    const middle = lines.findIndex(({ atS }) => atS > 2.5 * 3600);
    const atS = strip.beginsS[middle] ?? 0;
    const EARLIER_S = 20;
    const read = readSound(longFile, ['-ss', String(atS - EARLIER_S), '-t', '60']);
    const begin = read.samples.findIndex((v) => Math.abs(v) > HEARD) / RATE_HZ;
    expect(Math.abs(begin - EARLIER_S)).toBeLessThan(1);
  });
});
