import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { clipSpan, LOUDNESS } from '../../src/voice/packs/pack.ts';
import { SPOKEN } from './spokenHere.ts';

/** Of one file: a page loads one of them. */
const MOST_BYTES = 1_500_000;
const MOST_DECODED_BYTES = 40_000_000;
/** A phone decodes to 48 000 samples a second of four bytes. */
const DECODED_BYTES_PER_S = 48_000 * 4;
const GUARD_S = 0.1;

describe.each(SPOKEN)('the voice pack of %s', (_tag, { pack }) => {
  const spans = Object.keys(pack.clips).map((name) => {
    const span = clipSpan(pack, name);
    return { name, startS: span?.startS ?? Number.NaN, durationS: span?.durationS ?? Number.NaN };
  });

  it.each(LOUDNESS)('is the sound that its manifest tells of, and small: %s', (loudness) => {
    const { file, bytes, sha256 } = pack.variants[loudness];
    const sound = readFileSync(`public/voice/${file}`);
    expect(sound.length).toBe(bytes);
    expect(createHash('sha256').update(sound).digest('hex')).toBe(sha256);
    expect(bytes).toBeLessThanOrEqual(MOST_BYTES);
  });

  it('fits in the memory of a phone', () => {
    expect((pack.samples / pack.sampleRateHz) * DECODED_BYTES_PER_S).toBeLessThanOrEqual(MOST_DECODED_BYTES);
  });

  it('has silence between its clips, and all of them inside', () => {
    const inOrder = spans.toSorted((a, b) => a.startS - b.startS);
    let endS = 0;
    for (const { startS, durationS } of inOrder) {
      expect(startS - endS).toBeGreaterThanOrEqual(GUARD_S - 1e-3);
      endS = startS + durationS;
    }
    expect(endS).toBeLessThanOrEqual(pack.samples / pack.sampleRateHz);
  });

  it('has no clip shorter or longer than its words warrant', () => {
    const odd = spans.filter(({ name, durationS }) => {
      const letters = name.replace(/[^\p{L}]/gu, '').length;
      return !(durationS > 0.045 + 0.014 * letters && durationS < 0.45 + 0.1 * letters);
    });
    expect(odd.map(({ name, durationS }) => `${name}: ${durationS.toFixed(2)} s`)).toEqual([]);
  });
});
