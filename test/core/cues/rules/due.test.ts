import { describe, expect, test } from 'vitest';
import type { Moment } from '../../../../src/core/cues/moment.ts';
import {
  beginDue,
  type DueWatch,
  isByClock,
  lookForDue,
  lookForPressByClock,
} from '../../../../src/core/cues/rules/due.ts';
import { momentAt, racePlanned } from '../moments.ts';

const race = racePlanned({ opening: null, push: null, checkpointsM: [5000], stations: [], fuel: [] });
/** The moment at which the plan has the runner at a place, and nobody knows where they are. */
const blindAt = (planM: number): Moment =>
  momentAt({ race, distanceM: planM, distanceSdM: 600, sinceFixS: 300 });
const seenAt = (planM: number): Moment => momentAt({ race, distanceM: planM });

const placesTold = (from: DueWatch, planMs: readonly number[]): unknown[] => {
  let watch = from;
  return planMs.flatMap((m) => {
    const found = lookForDue(watch, blindAt(m));
    watch = found?.watch ?? watch;
    return found?.cue ? [found.cue.saying] : [];
  });
};

describe('by the clock alone', () => {
  test('is what remains without a position and without a pace to go by', () => {
    expect(isByClock(blindAt(3000))).toBe(true);
    expect(isByClock(seenAt(3000))).toBe(false);
    expect(isByClock(momentAt({ race, distanceM: 3000, distanceSdM: 600, sinceFixS: 20 }))).toBe(false);
    expect(isByClock(momentAt({ race, distanceM: 3000, distanceSdM: 20, sinceFixS: 300 }))).toBe(false);
    // Just started: reception has not had its chance.
    expect(isByClock(momentAt({ race, distanceM: 100, distanceSdM: 600, sinceFixS: 300 }))).toBe(false);
  });

  test('is told once; then each place when the plan is there, and that place, not the next', () => {
    expect(placesTold(beginDue, [2500, 2600, 2995, 3005, 3900, 4010, 4990, 5001])).toEqual([
      { kind: 'byClock' },
      { kind: 'due', place: { tenths: 30, unit: 'km' } },
      { kind: 'due', place: { tenths: 40, unit: 'km' } },
      { kind: 'due', place: { tenths: 50, unit: 'km' } },
    ]);
  });

  test('ends without a word when reception is back, and begins anew with one', () => {
    const begun = lookForDue(beginDue, blindAt(2500))?.watch ?? beginDue;
    const seen = lookForDue(begun, seenAt(2600));
    expect([seen?.cue, seen?.watch.toldMs]).toEqual([null, null]);
    expect(placesTold(seen?.watch ?? begun, [2700])).toEqual([{ kind: 'byClock' }]);
  });
});

describe('a press at a board, by the clock alone', () => {
  test('is at the place whose time by the plan is nearest, and says how far up or down', () => {
    // The plan is at 3040 m: eleven seconds behind the time of the board at 3 km.
    const { watch, cue } = lookForPressByClock(beginDue, blindAt(3040));
    expect(watch.pressedM).toBe(3000);
    const lateS = 0.04 * (6240 / 21.0975);
    expect(cue).toMatchObject({ atM: 3000, distanceM: 3000, manner: 'answer' });
    expect(cue?.aheadS).toBeCloseTo(-lateS, 2);
    // Pressed again a little later, it is the next one, run ahead of the plan.
    const next = lookForPressByClock(watch, blindAt(3100));
    expect(next.cue?.atM).toBe(4000);
    expect(next.cue?.aheadS).toBeGreaterThan(200);
  });

  test('says nothing behind the last board', () => {
    const last = { ...beginDue, pressedM: 21_000 };
    expect(lookForPressByClock(last, blindAt(21_050))).toEqual({ watch: last, cue: null });
  });
});
