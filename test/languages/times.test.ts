import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wordsOfClips } from '../../src/voice/words/words.ts';
import { SPOKEN } from './spokenHere.ts';

const LONGEST_S = 35_999;

describe.each(SPOKEN)('times, in %s', (_tag, { words }) => {
  const said = (timeS: number): string =>
    wordsOfClips(words.say({ kind: 'done', tone: 'finish', timeS, distance: null }, 'long')[1] ?? []);

  it('are never the same words for two of the 36 000 times', () => {
    const times = new Set(Array.from({ length: LONGEST_S + 1 }, (_, timeS) => said(timeS)));
    expect(times.size).toBe(LONGEST_S + 1);
  });

  it('begin with the hours, whatever follows, and end with the seconds, whatever went before', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 1, max: 59 }),
        fc.integer({ min: 1, max: 59 }),
        (h, m, s) => {
          const whole = said(h * 3600 + m * 60 + s);
          expect(whole.startsWith(said(h * 3600))).toBe(true);
          expect(whole.endsWith(said(m * 60 + s))).toBe(true);
        },
      ),
    );
  });

  it('say what a bare number is: minutes, hours or seconds', () => {
    for (const n of [1, 2, 5, 9]) expect(new Set([said(n), said(n * 60), said(n * 3600)]).size).toBe(3);
  });
});
