import { describe, expect, test } from 'vitest';
import { again } from '../../../../src/core/cues/again.ts';
import type { Moment } from '../../../../src/core/cues/moment.ts';
import { beginSignal, lookForSignal, type SignalWatch } from '../../../../src/core/cues/rules/signal.ts';
import { momentAt } from '../moments.ts';

const unseenFor = (silentS: number, change: Partial<Moment> = {}): Moment => ({
  ...momentAt({ distanceM: 6000, aheadS: 8, sinceFixS: silentS }),
  ...change,
});
const lost: SignalWatch = { lost: true, toldMs: 0, times: 1, backMs: null, reversed: false };

describe('signal lost', () => {
  test('is told when no fix has come for a quarter of a minute', () => {
    expect(lookForSignal(beginSignal, unseenFor(14.5), false)).toBeNull();
    const found = lookForSignal(beginSignal, unseenFor(15), false);
    expect(found?.cue?.saying).toEqual({ kind: 'signal', what: 'lost', ahead: null });
    expect(found?.watch.lost).toBe(true);
  });

  test('fixes that come but cannot be used are given longer: reflections pass', () => {
    expect(lookForSignal(beginSignal, unseenFor(30, { sinceArrivalS: 1 }), false)).toBeNull();
    expect(lookForSignal(beginSignal, unseenFor(40, { sinceArrivalS: 1 }), false)?.watch.lost).toBe(true);
  });

  test("counts from the start, not from the phone's last errand", () => {
    const early = momentAt({ distanceM: 40, sinceFixS: 5000 });
    expect(lookForSignal(beginSignal, early, false)).toBeNull();
  });

  test('before the first fix it does not speak of a pace to go by', () => {
    expect(lookForSignal(beginSignal, unseenFor(Number.POSITIVE_INFINITY), false)?.cue?.onlyShort).toBe(true);
    expect(lookForSignal(beginSignal, unseenFor(20), false)?.cue?.onlyShort).toBe(false);
  });

  test('the more often it was told the longer it must last', () => {
    const often = { ...beginSignal, times: 3 };
    expect(lookForSignal(often, unseenFor(29), false)).toBeNull();
    expect(lookForSignal(often, unseenFor(30), false)?.watch.times).toBe(4);
    expect(lookForSignal({ ...beginSignal, times: 99 }, unseenFor(45), false)?.watch.lost).toBe(true);
  });

  test('is told once, and once a minute at most', () => {
    expect(lookForSignal(lost, unseenFor(30), false)).toBeNull();
    const moment = unseenFor(20);
    expect(lookForSignal({ ...beginSignal, toldMs: moment.nowMs - 50_000 }, moment, false)).toBeNull();
  });
});

describe('signal back', () => {
  test('is told with the drift, when the first fixes have proved steady', () => {
    const first = unseenFor(0.5);
    const seen = lookForSignal(lost, first, false);
    expect(seen).toEqual({ watch: { ...lost, backMs: first.nowMs }, cue: null });
    const watch = seen?.watch ?? lost;
    expect(lookForSignal(watch, { ...first, nowMs: first.nowMs + 2500 }, false)).toBeNull();
    const told = lookForSignal(watch, { ...first, nowMs: first.nowMs + 3000 }, false);
    expect(told?.cue?.saying).toEqual({
      kind: 'signal',
      what: 'back',
      ahead: { side: 'up', seconds: 8, sure: true },
    });
    expect(told?.watch.lost).toBe(false);
  });

  test('a single fix in between does not count', () => {
    const watch = { ...lost, backMs: 5 };
    expect(lookForSignal(watch, unseenFor(10), false)).toEqual({
      watch: { ...lost, backMs: null },
      cue: null,
    });
  });
});

test('a call that waits says the drift of now, and is dropped when it is no longer so', () => {
  const cue = lookForSignal(beginSignal, unseenFor(15), false)?.cue;
  if (!cue) throw new Error('no cue');
  expect(again(cue, unseenFor(17), lost)?.expiresMs).toBe(cue.expiresMs);
  expect(again(cue, unseenFor(1), { ...lost, lost: false })).toBeNull();
});

test('a line recorded against the race is told once', () => {
  const found = lookForSignal(beginSignal, unseenFor(1), true);
  expect(found?.cue?.saying).toEqual({ kind: 'signal', what: 'lineReversed', ahead: null });
  expect(lookForSignal(found?.watch ?? beginSignal, unseenFor(1), true)).toBeNull();
});
