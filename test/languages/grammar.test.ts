import { describe, expect, it } from 'vitest';
import type { Saying } from '../../src/core/cues/saying.ts';
import { textOf } from '../../src/voice/words/words.ts';
import { SPOKEN } from './spokenHere.ts';

// Common practice, no source: plurals, units, gender and the order of things, in sentences that a speaker can judge.

const EVEN = { side: 'even', seconds: 0, sure: true } as const;
const due = (tenths: number, unit: 'km' | 'mile'): Saying => ({ kind: 'due', place: { tenths, unit } });
const left = (distanceM: number, unit: 'km' | 'mile'): Saying => ({
  kind: 'remaining',
  left: { distanceM, unit },
  ahead: null,
});
const lasts = (timeS: number): Saying => ({ kind: 'remaining', left: { timeS }, ahead: null });
const MILE_M = 1609.344;

const SAYINGS: readonly Saying[] = [
  lasts(60),
  lasts(120),
  lasts(21 * 60),
  lasts(3600),
  lasts(2 * 3600),
  lasts(3600 + 60),
  lasts(3600 + 1),
  lasts(4 * 60 + 20),
  left(1000, 'km'),
  left(1500, 'km'),
  left(21_000, 'km'),
  left(MILE_M, 'mile'),
  left(2 * MILE_M, 'mile'),
  left(21 * MILE_M, 'mile'),
  left(250, 'km'),
  due(211, 'km'),
  due(10, 'mile'),
  { kind: 'opening', what: 'hold', pace: { sPerUnit: 296, unit: 'km' }, untilM: 1500 },
  { kind: 'opening', what: 'hold', pace: { sPerUnit: 476, unit: 'mile' }, untilM: 2 * MILE_M },
  { kind: 'ease', byS: 1, unit: 'km', ahead: { side: 'up', seconds: 10, sure: false } },
  { kind: 'quicken', byS: 6, unit: 'mile', ahead: { side: 'down', seconds: 61, sure: true } },
  { kind: 'quicken', byS: 75, unit: 'km', ahead: EVEN },
  {
    kind: 'checkpoint',
    place: { name: 'halfway' },
    timeS: 6305,
    ahead: { side: 'even', seconds: 0, sure: false },
  },
  { kind: 'station', offers: ['water', 'gel', 'sponge'], inM: 250 },
  { kind: 'fuel', item: 'caffeine gel', inM: 0, withWater: true },
  { kind: 'pen', inMin: 1 },
  { kind: 'pen', inMin: 10 },
  { kind: 'heart', bpm: 168, mostBpm: 160 },
  {
    kind: 'leg',
    what: 'work',
    rep: { count: 2, of: 6 },
    length: { distanceM: 1000, unit: 'km' },
    target: 'comfortably hard',
    tone: 'leg',
  },
];

describe.each(SPOKEN)('grammar, in %s', (tag, { words }) => {
  it('is as on its page', async () => {
    const lines = SAYINGS.map((saying) => textOf(words.say(saying, 'long')));
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`grammar.${tag}.golden.txt`);
  });
});
