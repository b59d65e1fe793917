import { describe, expect, test } from 'vitest';
import { settleCalls } from '../../../src/core/aloud/settleCalls.ts';
import { atMoment, type Wish } from '../../../src/core/aloud/wish.ts';
import type { Saying } from '../../../src/core/cues/saying.ts';
import type { Voice } from '../../../src/core/cues/voicePort.ts';

/** Long forms last six seconds, short ones two. */
const voice: Voice = {
  utter: (saying, form) => ({ text: saying.kind, parts: [], durationS: form === 'long' ? 6 : 2 }),
};
const SAYING: Saying = { kind: 'signal', what: 'lost', ahead: null };

const at = (atS: number, importance: number, longest: Wish['longest'] = 'short'): Wish =>
  atMoment(atS, SAYING, importance, null, longest);
const between = (fromS: number, atS: number, untilS: number, importance: number): Wish => ({
  ...at(atS, importance),
  fromS,
  untilS,
});
const timesOf = (wishes: readonly Wish[]): readonly (readonly [number, string])[] =>
  settleCalls(wishes, voice).calls.map((c) => [c.atS, c.form]);

describe('who is heard where calls meet', () => {
  test('the important one in its place; the other not at all where it belongs to a moment', () => {
    const { calls, dropped } = settleCalls([at(10, 50), at(11, 80)], voice);
    expect([calls.map((c) => c.atS), dropped.map((w) => w.atS)]).toEqual([[11], [10]]);
  });

  test('both where two seconds lie between them, to the moment', () => {
    expect(timesOf([at(10, 80), at(14, 50)])).toHaveLength(2);
    expect(timesOf([at(10, 80), at(13.9, 50)])).toHaveLength(1);
    expect(timesOf([at(10, 80), at(6, 50)])).toHaveLength(2);
    expect(timesOf([at(10, 80), at(6.1, 50)])).toHaveLength(1);
  });

  test('the long form where it fits, else the short one', () => {
    expect(timesOf([at(20, 80), at(12, 50, 'long')])).toEqual([
      [12, 'long'],
      [20, 'short'],
    ]);
    expect(timesOf([at(20, 80), at(13, 50, 'long')])).toEqual([
      [13, 'short'],
      [20, 'short'],
    ]);
  });

  test('a call that may move goes to the nearest free time, late or early, and no farther than it may', () => {
    expect(timesOf([at(100, 80), between(90, 101, 110, 50)]).map(([s]) => s)).toEqual([100, 104]);
    expect(timesOf([at(100, 80), between(90, 99, 110, 50)]).map(([s]) => s)).toEqual([96, 100]);
    // No room behind: all that is left lies before, and the other way round.
    expect(timesOf([at(100, 80), between(90, 101, 101, 50)]).map(([s]) => s)).toEqual([96, 100]);
    expect(timesOf([at(100, 80), between(99, 99, 110, 50)]).map(([s]) => s)).toEqual([100, 104]);
    expect(settleCalls([at(100, 80), between(97, 99, 103, 50)], voice).dropped).toHaveLength(1);
  });
});
