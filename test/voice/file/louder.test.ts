import { describe, expect, test } from 'vitest';
import { DB_PER_STEP, louder } from '../../../src/voice/file/louder.ts';
import { mp3Of } from '../../../src/voice/file/mp3.ts';
import { framesOf } from '../../../src/voice/file/sheaf.ts';
import { layStrip } from '../../../src/voice/file/strip.ts';
import { toneFrames } from '../../../src/voice/file/toneFrames.ts';
import { readSound } from '../../support/ffmpegRead.ts';
import { bytesOf, shippedSources } from './shipped.ts';

const rms = (samples: Float32Array): number =>
  Math.sqrt(samples.reduce((sum, v) => sum + v * v, 0) / samples.length);
const levelDb = (mp3: Uint8Array): number => 20 * Math.log10(rms(readSound(mp3).samples));

describe('frames made louder', () => {
  const got = framesOf(bytesOf(toneFrames.file));
  const frames = got.ok ? got.value : [];
  const plainDb = levelDb(Buffer.concat(frames));

  test.each([-4, -1, 1, 2])('by %i steps are, and nothing else in them changes', (steps) => {
    const raised = Buffer.concat(frames.map((frame) => louder(frame, steps)));
    expect(levelDb(raised) - plainDb).toBeCloseTo(steps * DB_PER_STEP, 1);
    expect(Buffer.concat(frames.map((frame) => louder(louder(frame, steps), -steps)))).toEqual(
      Buffer.concat(frames),
    );
  });

  test('follow the loud voice', () => {
    const sounded = (loudness: 'normal' | 'loud'): Float32Array => {
      const parts = [{ sound: { tone: 'leg' as const }, offsetS: 0 }];
      const strip = layStrip(
        [{ atS: 1, utterance: { text: '', durationS: 0, parts } }],
        shippedSources(loudness),
        3,
      );
      return readSound(Buffer.concat(mp3Of(strip, ''))).samples;
    };
    const loud = sounded('loud');
    expect(20 * Math.log10(rms(loud) / rms(sounded('normal')))).toBeCloseTo(3, 1);
    expect(Math.max(...loud.map(Math.abs))).toBeLessThan(1);
  });
});
