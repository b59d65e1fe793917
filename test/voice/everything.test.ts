import { describe, expect, it } from 'vitest';
import { spoken as english } from '../../src/languages/en/spoken.ts';
import { textOf } from '../../src/voice/words/words.ts';
import { everySpoken } from '../../src/voicepack/walk.ts';

describe('everything that the core can say, in English', () => {
  const spoken = [...everySpoken(english.words)];

  it('has a clip in the pack for each of its words', () => {
    const lacking = new Set<string>();
    for (const { sentences } of spoken) {
      for (const clip of sentences.flat()) if (!(clip in english.pack.clips)) lacking.add(clip);
    }
    expect([...lacking]).toEqual([]);
  });

  it('is never empty and never holds a gap', () => {
    const odd = spoken.filter(
      ({ sentences }) =>
        sentences.length === 0 || sentences.some((clips) => clips.length === 0 || clips.includes('')),
    );
    expect(odd).toEqual([]);
    expect(spoken.filter(({ sentences }) => /undefined|NaN| {2}/.test(textOf(sentences)))).toEqual([]);
  });
});
