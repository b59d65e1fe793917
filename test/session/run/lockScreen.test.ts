import { describe, expect, test } from 'vitest';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { written } from '../../../src/core/units/message.ts';
import { lateOf } from '../../../src/session/ready/tapTest.ts';
import type { LiveRun } from '../../../src/session/run/liveRun.ts';
import { lockScreenText } from '../../../src/session/run/lockScreen.ts';
import { nextThing } from '../../../src/session/run/nextThing.ts';
import type { RunView } from '../../../src/session/run/runCell.ts';

const read = readRacePlan({
  version: 1,
  kind: 'race',
  distanceM: 10_000,
  goalS: 2900,
  checkpointsM: [5000],
  stations: [{ atM: 3000, offers: ['water', 'gel'] }],
  fuel: [{ item: 'gel', atM: 3000 }],
  push: { fromM: 8000, quickerSPerKm: 4 },
});
if (!read.ok) throw new Error(read.error.place);
const plan = read.value;

describe('the next thing on the way', () => {
  test.each([
    [0, 'gel', 3000],
    [2999, 'gel', 1],
    [3000, 'checkpoint', 2000],
    [5000, 'push', 3000],
    [8001, 'finish', 1999],
  ])('from %i m', (atM, name, inM) => {
    const next = nextThing(plan, atM);
    expect([next && written(next.name), next?.inM]).toEqual([name, inM]);
  });

  test('is none behind the finish', () => {
    expect(nextThing(plan, 10_000)).toBeNull();
  });
});

describe('the lock screen', () => {
  const textAt = (aheadS: number | null) =>
    lockScreenText(
      { cell: { config: { plan } } } as unknown as LiveRun,
      { drift: aheadS === null ? null : { aheadS }, progress: { distanceM: 4200 } } as unknown as RunView,
    );

  test.each([
    [3.2, '3 s ahead'],
    [-12, '12 s behind'],
    [0.2, 'On plan'],
    [null, 'No reading'],
  ])('shows a drift of %s s as "%s"', (aheadS, title) => {
    expect(textAt(aheadS)).toEqual({ title, line: 'checkpoint in 0.8 km' });
  });
});

describe('the taps of a finger', () => {
  const beats = (lateMs: readonly number[]): number[] => lateMs.map((late, i) => 1000 + 800 * i + late);

  test('say how late the sound is, the middle one of them', () => {
    expect(lateOf(beats([0, 400, 190, 200, 210, 220, 600, 205]), 1000)).toBe(210);
  });

  test('may be before the beat', () => {
    expect(lateOf(beats([0, 0, -40, -30, -50, -20, -30, -30]), 1000)).toBe(-30);
  });

  test('are too few to say anything', () => {
    expect(lateOf(beats([0, 0, 100, 100]), 1000)).toBeNull();
    expect(lateOf([], 1000)).toBeNull();
  });
});
