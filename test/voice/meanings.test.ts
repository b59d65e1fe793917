import { describe, expect, it } from 'vitest';
import type { Saying } from '../../src/core/cues/saying.ts';
import { TONES, type Tone } from '../../src/core/cues/voicePort.ts';
import { spoken as english } from '../../src/languages/en/spoken.ts';
import { NOTES } from '../../src/voice/tones/family.ts';
import { renderTone } from '../../src/voice/tones/render.ts';
import { textOf } from '../../src/voice/words/words.ts';
import { everySpoken } from '../../src/voicepack/walk.ts';

/** Calls that ask for the same act: the pen is the pen. */
const ACTS: Readonly<Record<string, string>> = { pen: 'to the pen' };
const actOf = (saying: Saying): string =>
  saying.kind === 'reminder' && saying.what === 'pen' ? 'to the pen' : (ACTS[saying.kind] ?? saying.kind);

/** What a runner acts on: the kind of call, the side and size of the drift, the seconds, the unit. */
const meaningOf = (saying: Saying): string => {
  const facts = saying as unknown as Record<string, unknown>;
  const ahead = facts['ahead'] as { side: string; seconds: number } | null | undefined;
  return JSON.stringify([
    actOf(saying),
    actOf(saying) === 'to the pen' ? null : (facts['what'] ?? null),
    ahead && (ahead.seconds === 0 ? 'even' : `${ahead.side} ${ahead.seconds}`),
    facts['byS'],
    facts['splitS'],
    facts['timeS'],
    facts['count'],
    facts['pace'],
    facts['place'],
    facts['item'],
    facts['offers'],
  ]);
};

describe('sentences', () => {
  it('of different meaning are never the same words', () => {
    const meanings = new Map<string, string>();
    const twice: string[] = [];
    for (const { saying, form, sentences } of everySpoken(english.words)) {
      if (form !== 'long') continue;
      const text = textOf(sentences);
      const meaning = meaningOf(saying);
      const known = meanings.get(text);
      if (known !== undefined && known !== meaning) twice.push(`${text}: ${known} or ${meaning}`);
      meanings.set(text, meaning);
    }
    expect(meanings.size).toBeGreaterThan(1000);
    expect(twice.slice(0, 10)).toEqual([]);
  });

  it('say ahead or behind, never both, wherever there is a side', () => {
    for (const { saying, sentences } of everySpoken(english.words)) {
      const ahead = 'ahead' in saying ? saying.ahead : null;
      const text = textOf(sentences).toLowerCase();
      if (!ahead || ahead.seconds === 0 || !/ahead|behind/.test(text)) continue;
      expect(/behind/.test(text)).toBe(ahead.side === 'down');
      expect(/ahead/.test(text)).toBe(ahead.side === 'up');
    }
  });
});

/** Beginnings and lengths of the notes, rounded to what a wrist feels: the tone without its pitch. */
const rhythmOf = (tone: Tone): string =>
  NOTES[tone].map((n) => `${Math.round(n.beginS * 20)}+${Math.round(n.lengthS * 20)}`).join(' ');

describe('earcons', () => {
  it('differ by rhythm alone', () => {
    expect(new Set(TONES.map(rhythmOf)).size).toBe(TONES.length);
  });

  it('ease sinks and quicken rises', () => {
    const span = (tone: Tone): number => {
      const notes = NOTES[tone];
      const last = notes.at(-1);
      return (last?.toHz ?? last?.hz ?? 0) - (notes[0]?.hz ?? 0);
    };
    expect(span('ease')).toBeLessThan(0);
    expect(span('quicken')).toBeGreaterThan(0);
  });

  it.each(TONES)('%s is neither silent nor clipped', (tone) => {
    const peak = renderTone(tone, 24_000).reduce((most, v) => Math.max(most, Math.abs(v)), 0);
    expect(peak).toBeGreaterThan(0.05);
    expect(peak).toBeLessThan(1);
  });
});
