import { describe, expect, test } from 'vitest';
import { decoderShiftS, type SoundStore, scoreOf } from '../../../src/voice/device/score.ts';
import type { Pack } from '../../../src/voice/packs/pack.ts';

const RATE = 24_000;
const pack: Pack = {
  version: 1,
  language: 'en',
  voice: 'none',
  sampleRateHz: RATE,
  samples: 48_000,
  variants: {
    normal: { file: 'n.mp3', bytes: 0, sha256: '' },
    loud: { file: 'l.mp3', bytes: 0, sha256: '' },
  },
  clips: { two: [12_000, 6000], up: [2400, 6000] },
};

/** A sprite as a decoder gives it whose sounds begin so many seconds after where the manifest has them. */
const decoded = (lateS: number, rate: number): Float32Array => {
  const samples = new Float32Array(2 * rate);
  // The first clip stands at 0.1 s and its first sound 10 ms later.
  for (let i = Math.round((0.11 + lateS) * rate); i < 0.3 * rate; i++) samples[i] = 0.3 * Math.sin(i);
  return samples;
};

describe("a decoder's delay", () => {
  test.each([24_000, 44_100, 48_000])('is none where the decoder cuts it off, at %i Hz', (rate) => {
    expect(decoderShiftS(pack, decoded(0, rate), rate)).toBe(0);
  });

  test.each([1105, 2257])('is found where the decoder keeps the %i samples of the encoder', (samples) => {
    const lateS = samples / RATE;
    expect(decoderShiftS(pack, decoded(lateS, 48_000), 48_000)).toBeCloseTo(lateS, 3);
  });

  test('is none where a clip only begins softly, and none in silence', () => {
    expect(decoderShiftS(pack, decoded(0.015, 48_000), 48_000)).toBe(0);
    expect(decoderShiftS(pack, new Float32Array(48_000), 48_000)).toBe(0);
  });
});

describe('the score of an utterance', () => {
  const sprite = { duration: 2 } as AudioBuffer;
  const tone = { duration: 0.1 } as AudioBuffer;
  const store: SoundStore = { pack, sprite, shiftS: 0.046, tone: () => tone };

  test('sets every part at its time from the begin, out of its place in the sprite', () => {
    const notes = scoreOf(store, {
      text: 'Two up.',
      durationS: 1,
      parts: [
        { sound: { tone: 'marker' }, offsetS: 0 },
        { sound: { clip: 'two' }, offsetS: 0.22 },
        { sound: { clip: 'up' }, offsetS: 0.51 },
      ],
    });
    expect(notes.map((n) => n.buffer)).toEqual([tone, sprite, sprite]);
    expect(notes.map((n) => n.offsetS)).toEqual([0, 0.22, 0.51]);
    expect(notes.map((n) => Number(n.fromS.toFixed(6)))).toEqual([0, 0.546, 0.146]);
    expect(notes.map((n) => n.lengthS)).toEqual([0.1, 0.25, 0.25]);
  });

  test('leaves out what the pack lacks', () => {
    const parts = [{ sound: { clip: 'sideways' }, offsetS: 0 }];
    expect(scoreOf(store, { text: 'Sideways.', durationS: 1, parts })).toEqual([]);
  });
});
