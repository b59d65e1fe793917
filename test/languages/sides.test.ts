import { describe, expect, it } from 'vitest';
import type { Ahead } from '../../src/core/cues/saying.ts';
import { SPOKEN } from './spokenHere.ts';

const seconds = [1, 2, 6, 10, 30, 59, 60, 70, 600, 5940];

describe.each(SPOKEN)('sides, in %s', (_tag, { words }) => {
  const drift = (side: Ahead['side'], s: number, sure: boolean): readonly string[] =>
    words.say(
      { kind: 'settle', pace: { sPerUnit: 300, unit: 'km' }, ahead: { side, seconds: s, sure } },
      'long',
    )[1] ?? [];
  const change = (kind: 'ease' | 'quicken', byS: number, unit: 'km' | 'mile'): readonly string[] =>
    words.say({ kind, byS, unit, ahead: { side: 'even', seconds: 0, sure: true } }, 'short')[0] ?? [];

  it('differ by one word that is there for every number, and that the other side never has', () => {
    const side = (which: 'up' | 'down', s: number): readonly string[] => {
      const other = drift(which === 'up' ? 'down' : 'up', s, true);
      return drift(which, s, true).filter((clip) => !other.includes(clip));
    };
    const up = new Set(seconds.flatMap((s) => side('up', s)));
    const down = new Set(seconds.flatMap((s) => side('down', s)));
    for (const s of seconds) expect([side('up', s).length, side('down', s).length]).toEqual([1, 1]);
    expect([...up].filter((clip) => down.has(clip))).toEqual([]);
  });

  it('do not begin alike: the first word of ahead is not the first of behind, nor slower that of quicker', () => {
    const first = (clips: readonly string[]): string => clips[0]?.split(' ')[0] ?? '';
    expect(first(drift('up', 6, true))).not.toBe(first(drift('down', 6, true)));
    expect(first(change('ease', 6, 'km'))).not.toBe(first(change('quicken', 6, 'km')));
    expect(change('ease', 6, 'km').slice(1)).toEqual(change('quicken', 6, 'km').slice(1));
  });

  it('say so when the number is no more than about right', () => {
    for (const s of seconds) expect(drift('up', s, false).length).toBe(drift('up', s, true).length + 1);
  });

  it('on plan names neither side', () => {
    const even = drift('even', 0, true);
    for (const s of seconds)
      for (const which of ['up', 'down'] as const)
        expect(even.filter((clip) => drift(which, s, true).includes(clip))).toEqual([]);
  });

  it('say a unit with every change of pace', () => {
    expect(change('ease', 6, 'km')).not.toEqual(change('ease', 6, 'mile'));
  });
});
