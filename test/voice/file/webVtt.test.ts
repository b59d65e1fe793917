import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { WebVTTParser } from 'webvtt-parser';
import { demoPlan } from '../../../src/demo/race.ts';
import { cuesOf } from '../../../src/session/aloud/aloudFile.ts';
import { vttOf } from '../../../src/voice/file/webVtt.ts';
import { madeOf } from '../../session/aloud/aloudPlans.ts';

/** What stands for signs in the text; the table that the parser has of its own lacks the semicolons. */
const SIGNS = { '&amp;': '&', '&lt;': '<', '&gt;': '>' };

/** As the W3C's own parser reads a file. */
const parsed = (text: string) => new WebVTTParser(SIGNS).parse(text, 'subtitles');
const textIn = (cue: ReturnType<typeof parsed>['cues'][number]): string =>
  cue.tree.children.map(({ value }) => value ?? '').join('');

describe('the text track', () => {
  test('of a plan has every call at its time in the sound', () => {
    const { lines, strip } = madeOf(demoPlan, 10);
    const cues = cuesOf(lines, strip);
    const { cues: read, errors } = parsed(vttOf(demoPlan.name, cues));
    expect(errors).toEqual([]);
    expect(read.map(textIn)).toEqual(lines.map(({ text }) => text));
    for (const [i, { startTime, endTime }] of read.entries()) {
      expect(Math.abs(startTime - 10 - (lines[i]?.atS ?? 0))).toBeLessThan(0.05);
      expect(endTime).toBeGreaterThan(startTime);
      expect(endTime).toBeLessThanOrEqual(read[i + 1]?.startTime ?? Number.POSITIVE_INFINITY);
    }
  });

  test('keeps any text and any time to the millisecond', () => {
    const word = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 });
    const anyCue = fc.record({ fromS: fc.integer({ min: 0, max: 18_000_000 }), text: word });
    fc.assert(
      fc.property(word, fc.array(anyCue, { maxLength: 8 }), (title, wishes) => {
        const cues = wishes
          .map(({ fromS, text }) => ({ fromS: fromS / 1000, toS: fromS / 1000 + 2, text: `said: ${text}` }))
          .sort((a, b) => a.fromS - b.fromS);
        const { cues: read, errors } = parsed(vttOf(title, cues));
        expect(errors).toEqual([]);
        expect(read.map(({ startTime }) => startTime)).toEqual(cues.map(({ fromS }) => fromS));
        expect(read.map(textIn)).toEqual(cues.map(({ text }) => text.replace(/\s+/g, ' ').trim()));
      }),
    );
  });
});
