import { describe, expect, test } from 'vitest';
import { sessionAloud } from '../../../src/core/aloud/session.ts';
import type { Leg, PracticePlan } from '../../../src/core/plan/practicePlan.ts';
import { spoken } from '../../../src/languages/en/spoken.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const voice = voiceOf(spoken.pack, spoken.words);
const leg = (over: Partial<Leg>): Leg => ({
  kind: 'easy',
  extent: { by: 'time', timeS: 600 },
  target: { by: 'effort', effort: 'easy' },
  rampS: 0,
  rep: null,
  heartMostBpm: null,
  take: [],
  ...over,
});
const plan = (...legs: Leg[]): PracticePlan => ({
  version: 1,
  kind: 'practice',
  name: 'Two hard ones',
  unit: 'km',
  place: 'road',
  penClosesMs: null,
  legs,
});
const hard = (count: number): Leg =>
  leg({
    kind: 'work',
    extent: { by: 'distance', distanceM: 2000 },
    target: { by: 'pace', paceSPerKm: 270 },
    rep: { count, of: 2 },
  });

describe('a session said aloud by the clock', () => {
  test('counts each leg in, so that its last note falls on the change', () => {
    const got = sessionAloud(
      plan(leg({}), hard(1), leg({ kind: 'recovery', extent: { by: 'time', timeS: 120 } }), hard(2)),
      voice,
      10,
    );
    if (!got.ok) throw new Error(got.error.expected);
    expect(got.value.totalS).toBe(600 + 540 + 120 + 540);
    expect(got.value.calls.map((c) => [c.kind, c.atS])).toEqual([
      ['leg', 1],
      ['leg', 597],
      ['leg', 1137],
      ['leg', 1257],
      ['done', 1797],
    ]);
    expect(got.value.calls[1]?.utterance.parts[0]).toEqual({ sound: { tone: 'countdown' }, offsetS: 0 });
    expect(got.value.calls[1]?.utterance.text).toBe('Rep one of two. Two K. Four three zero per K.');
    expect(got.value.dropped).toEqual([]);
  });

  test('tells what to take at its time', () => {
    const got = sessionAloud(plan(leg({ take: [{ item: 'gel', at: { timeS: 240 } }] })), voice, 0);
    expect(got.ok && got.value.calls.find((c) => c.kind === 'fuel')).toMatchObject({ atS: 240 });
  });

  test.each([
    ['ends by a press', leg({ extent: { by: 'press' } })],
    ['ends by distance without a pace', leg({ extent: { by: 'distance', distanceM: 1000 } })],
  ])('is refused where a leg %s', (_, bad) => {
    expect(sessionAloud(plan(leg({}), bad), voice, 10)).toMatchObject({
      ok: false,
      error: { place: 'legs[1]' },
    });
  });
});
