import { describe, expect, test } from 'vitest';
import { beginOpening, lookForOpening } from '../../../../src/core/cues/rules/opening.ts';
import { beginPush, letOff, lookForPush, nextPushMs } from '../../../../src/core/cues/rules/push.ts';
import { beginSettle, lookForSettle, nextSettleMs } from '../../../../src/core/cues/rules/settle.ts';
import { keptAt, momentAt, racePlanned } from '../moments.ts';

describe('opening', () => {
  test('says the pace to hold and how far it is capped, once', () => {
    const found = lookForOpening(beginOpening, momentAt({ distanceM: 3 }));
    expect(found?.cue?.saying).toEqual({
      kind: 'opening',
      what: 'hold',
      pace: { sPerUnit: 290, unit: 'km' },
      untilM: 1500,
    });
    expect(found && lookForOpening(found.watch, momentAt({ distanceM: 6 }))).toBeNull();
  });

  test('is not announced when half of it is over, or where there is none', () => {
    expect(lookForOpening(beginOpening, momentAt({ distanceM: 751 }))?.cue).toBeNull();
    expect(
      lookForOpening(beginOpening, momentAt({ race: racePlanned({ opening: null }), distanceM: 3 }))?.cue,
    ).toBeNull();
  });
});

describe('settle', () => {
  test("comes at the opening's end with goal pace and what is in hand", () => {
    expect(lookForSettle(beginSettle, momentAt({ distanceM: 1490 }))).toBeNull();
    const found = lookForSettle(beginSettle, momentAt({ distanceM: 1498, aheadS: 4 }));
    expect(found?.cue?.saying).toEqual({
      kind: 'settle',
      pace: { sPerUnit: 296, unit: 'km' },
      ahead: { side: 'up', seconds: 4, sure: true },
    });
    expect(found && nextSettleMs(found.watch, momentAt({ distanceM: 1400 }))).toBe(Number.POSITIVE_INFINITY);
  });

  test('does not come where there is no opening', () => {
    const moment = momentAt({ race: racePlanned({ opening: null }), distanceM: 1498 });
    expect(lookForSettle(beginSettle, moment)).toBeNull();
    expect(nextSettleMs(beginSettle, moment)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('the push of the plan', () => {
  const begin = (aheadS: number, rate: number) =>
    lookForPush(beginPush, momentAt({ distanceM: 18_097, aheadS, keeping: keptAt(rate) }), 'normal');

  test('is offered at its begin, at its pace, when on plan', () => {
    expect(begin(0, 1)?.cue?.saying).toMatchObject({
      kind: 'push',
      pace: { sPerUnit: 292, unit: 'km' },
      remainingM: 3001,
    });
    expect(nextPushMs(beginPush, momentAt({ distanceM: 17_000 }))).toBeLessThan(Number.POSITIVE_INFINITY);
    expect(lookForPush(beginPush, momentAt({ distanceM: 17_000 }), 'normal')).toBeNull();
  });

  test("asks for the pace that brings the plan's time where the runner is late but can hold it", () => {
    expect(begin(-9, 1)?.cue?.saying).toMatchObject({ pace: { sPerUnit: 289 } });
  });

  test('asks for the planned pace where more would be too much', () => {
    expect(begin(-60, 1)?.cue?.saying).toMatchObject({ pace: { sPerUnit: 292 } });
  });

  test('is not offered to whoever has slowed too much, and then does not count as slow', () => {
    const found = begin(-60, 0.96);
    expect(found?.cue).toBeNull();
    expect(found?.watch).toEqual({ done: true, withheld: true });
    expect(letOff({ done: true, withheld: true }, momentAt({ distanceM: 19_000 }))).toBeCloseTo(
      4 / 295.77,
      4,
    );
    expect(letOff({ done: true, withheld: false }, momentAt({ distanceM: 19_000 }))).toBe(0);
  });
});

describe('a push that the plan does not have', () => {
  const race = racePlanned({ push: null, opening: null });
  const at = (distanceM: number, aheadS: number, talk: 'normal' | 'full' = 'normal') =>
    lookForPush(beginPush, momentAt({ race, distanceM, aheadS }), talk);

  test('is offered near the end where the goal slips away and can be reached', () => {
    expect(at(18_500, -12)?.cue?.saying).toMatchObject({ kind: 'push', pace: { sPerUnit: 291 } });
    expect(at(18_500, -12)?.watch.done).toBe(true);
  });

  test('not too early, not too late, not when it is out of reach, not when on plan', () => {
    expect(at(15_000, -12)).toBeNull();
    expect(at(20_700, -3)).toBeNull();
    expect(at(18_500, -60)).toBeNull();
    expect(at(18_500, 1)).toBeNull();
  });

  test('with the goal safe only for those who want to hear everything', () => {
    expect(at(20_000, 40)).toBeNull();
    expect(at(20_000, 40, 'full')?.cue?.topic).toBe('freePush');
  });
});
