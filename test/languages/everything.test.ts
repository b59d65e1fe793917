import { describe, expect, it } from 'vitest';
import type { Saying } from '../../src/core/cues/saying.ts';
import { LANGUAGES } from '../../src/languages/all.ts';
import { textOf, wordsOfClips } from '../../src/voice/words/words.ts';
import { everySpoken } from '../../src/voicepack/walk.ts';
import { SPOKEN } from './spokenHere.ts';

/** English calls a gel at a table and one in the pocket by the same name. */
const SAME_GEL = ['en'];
const TOLD = ['byS', 'splitS', 'timeS', 'count', 'pace', 'place', 'offers', 'item', 'withWater', 'finishS'];
const ALIKE = ['offers', 'item'];

/** What a runner acts on, and must not take for anything else. */
const meaningOf = (saying: Saying, tag: string): string => {
  const { kind, ...facts } = saying as { kind: string } & Record<string, unknown>;
  const ahead = facts['ahead'] as { side: string; seconds: number } | null | undefined;
  const taken = SAME_GEL.includes(tag) && ['fuel', 'station'].includes(kind);
  const what = kind === 'reminder' && facts['what'] === 'pen' ? 'pen' : taken ? 'take' : kind;
  const told = taken ? TOLD.filter((name) => !ALIKE.includes(name)) : TOLD;
  return JSON.stringify([
    what,
    what === 'pen' ? (facts['inMin'] ?? 0) : (facts['what'] ?? null),
    ahead && (ahead.seconds === 0 ? 'even' : `${ahead.side} ${ahead.seconds}`),
    ...told.map((name) => facts[name] || null),
  ]);
};

describe('the languages', () => {
  it('that say they have a voice are those that have one', () => {
    expect(
      LANGUAGES.filter(({ hasPack }) => hasPack)
        .map(({ tag }) => tag)
        .toSorted(),
    ).toEqual(SPOKEN.map(([tag]) => tag).toSorted());
  });

  it('agree with their folders', () => {
    for (const [tag, { words, pack }] of SPOKEN) expect([words.language, pack.language]).toEqual([tag, tag]);
  });
});

describe.each(SPOKEN)('everything that the core can say, in %s', (tag, { words, pack }) => {
  const lacking = new Set<string>();
  const used = new Set<string>();
  const odd: string[] = [];
  const twice: string[] = [];
  const meanings = new Map<string, string>();
  for (const { saying, form, sentences } of everySpoken(words)) {
    const text = textOf(sentences);
    if (sentences.length === 0 || sentences.some((clips) => clips.length === 0 || clips.includes('')))
      odd.push(text);
    if (/undefined|NaN| {2}|[~+|]|^\.|\d/.test(text)) odd.push(text);
    for (const clip of sentences.flat()) {
      used.add(clip);
      if (!(clip in pack.clips)) lacking.add(clip);
    }
    if (form !== 'long') continue;
    const meaning = meaningOf(saying, tag);
    const known = meanings.get(text);
    if (known !== undefined && known !== meaning) twice.push(`${text}: ${known} or ${meaning}`);
    meanings.set(text, meaning);
  }

  it('has a clip in the pack for each of its words, and no clip for nothing', () => {
    expect([...lacking]).toEqual([]);
    expect(Object.keys(pack.clips).filter((clip) => !used.has(clip))).toEqual([]);
  });

  it('is never empty and never holds a gap, a figure or a mark', () => {
    expect(odd).toEqual([]);
  });

  it('never says two meanings in the same words', () => {
    expect(meanings.size).toBeGreaterThan(100_000);
    expect(twice.slice(0, 5)).toEqual([]);
  });

  it('names each clip by words that no other clip has, but for the marks', () => {
    const names = Object.keys(pack.clips);
    const marked = names.filter((name) => /[~+]$/.test(name));
    expect(new Set(names.map((name) => wordsOfClips([name]))).size).toBeGreaterThanOrEqual(
      names.length - marked.length,
    );
  });
});
