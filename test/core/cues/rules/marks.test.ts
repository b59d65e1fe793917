import { describe, expect, test } from 'vitest';
import {
  beginCheckpoints,
  lookForCheckpoint,
  nextCheckpointMs,
  placeOf,
} from '../../../../src/core/cues/rules/checkpoint.ts';
import { finishAtStop, finishCue, lookForFinish } from '../../../../src/core/cues/rules/finish.ts';
import { beginMarkers, lookForMarker } from '../../../../src/core/cues/rules/marker.ts';
import { startCue } from '../../../../src/core/cues/rules/start.ts';
import { decimal, message } from '../../../../src/core/units/message.ts';
import { momentAt, plan, racePlanned, START_MS } from '../moments.ts';

describe('start', () => {
  const atStart = (lateS: number, opening: typeof plan.opening) => {
    const moment = momentAt({ race: racePlanned({ opening }), distanceM: 0, aheadS: -lateS });
    return startCue({ ...moment, startMs: START_MS });
  };

  test('says goal and goal pace, unless the opening has a pace of its own to say next', () => {
    expect(atStart(0, null)?.saying).toEqual({
      kind: 'start',
      goalS: 6240,
      pace: { sPerUnit: 296, unit: 'km' },
    });
    expect(atStart(0, null)?.onlyShort).toBe(false);
    expect(atStart(0, plan.opening)?.onlyShort).toBe(true);
  });

  test('is said in arrears when the start was found late, and not when that is long ago', () => {
    expect(atStart(12, null)?.why).toEqual(message('start found {s} s after', { s: decimal(12, 1) }));
    expect(atStart(61, null)).toBeNull();
  });
});

describe('checkpoint', () => {
  const at5 = { next: 0 };

  test('is called within a second of the foreseen crossing, and starts on it', () => {
    // 4.5 m short at 3.38 m/s: 1.33 s to go.
    expect(lookForCheckpoint(at5, momentAt({ distanceM: 4995.5 }))).toBeNull();
    const near = momentAt({ distanceM: 4997, aheadS: 4 });
    const found = lookForCheckpoint(at5, near);
    expect(found?.watch.next).toBe(1);
    expect(found?.cue?.dueMs).toBeCloseTo(near.nowMs + (3 / near.progress.speedMps) * 1000, 6);
    expect(found?.cue?.manner).toBe('mark');
    expect(found?.cue?.atM).toBe(5000);
  });

  test('its drift is T(checkpoint) less the own time at the crossing, unrounded, and as unsure as the crossing', () => {
    const moment = momentAt({ distanceM: 4997, aheadS: 4 });
    const cue = lookForCheckpoint(at5, moment)?.cue;
    const crossingS = ((cue?.dueMs ?? 0) - START_MS) / 1000;
    expect(cue?.aheadS).toBeCloseTo(moment.race.schedule.timeAtS(5000) - crossingS, 9);
    expect(cue?.aheadSdS).toBeCloseTo(3 / moment.progress.speedMps, 9);
    expect(cue?.saying).toEqual({
      kind: 'checkpoint',
      place: { tenths: 50, unit: 'km' },
      timeS: Math.round(crossingS),
      ahead: { side: 'up', seconds: 4, sure: true },
    });
  });

  test('found in arrears it is dated back', () => {
    const moment = momentAt({ distanceM: 5020 });
    const cue = lookForCheckpoint(at5, moment)?.cue;
    expect(cue?.dueMs).toBeCloseTo(moment.nowMs - (20 / moment.progress.speedMps) * 1000, 6);
  });

  test('by dead reckoning it is said, never as sure', () => {
    const cue = lookForCheckpoint(
      at5,
      momentAt({ distanceM: 4998, aheadS: 30, sinceFixS: 40, distanceSdM: 12 }),
    )?.cue;
    expect(cue?.saying).toMatchObject({ ahead: { side: 'up', seconds: 30, sure: false } });
    expect(cue?.why).toEqual(message('crossing by dead reckoning'));
  });

  test("where the crossing is anybody's guess it waits, and keeps nothing else waiting, until it is surely passed", () => {
    const lost = { distanceSdM: 60, sinceFixS: 300 };
    expect(lookForCheckpoint(at5, momentAt({ distanceM: 5050, ...lost }))).toBeNull();
    expect(nextCheckpointMs(at5, momentAt({ distanceM: 4990, ...lost }))).toBe(Number.POSITIVE_INFINITY);
    expect(lookForCheckpoint(at5, momentAt({ distanceM: 5130, ...lost }))?.cue?.atM).toBe(5000);
    expect(lookForCheckpoint(at5, momentAt({ distanceM: 5050, distanceSdM: 5 }))?.cue?.atM).toBe(5000);
  });

  test('nobody who stands still is foreseen to cross', () => {
    const standing = momentAt({ distanceM: 4999.9, speedMps: 0 });
    expect(nextCheckpointMs(at5, standing)).toBe(Number.POSITIVE_INFINITY);
    expect(lookForCheckpoint(at5, standing)).toBeNull();
  });

  test("by the gun: both the time and the drift are on the gun's clock", () => {
    const race = racePlanned({ goalBy: 'gun' });
    const cue = lookForCheckpoint(at5, momentAt({ race, distanceM: 4999, aheadS: -70, gunBeforeS: 70 }))?.cue;
    const ownS = ((cue?.dueMs ?? 0) - START_MS) / 1000;
    expect(cue?.saying).toMatchObject({ timeS: Math.round(ownS + 70), ahead: { side: 'down', seconds: 70 } });
  });

  test('after the last there is none', () => {
    expect(lookForCheckpoint({ next: 5 }, momentAt({ distanceM: 20_500 }))).toBeNull();
    expect(nextCheckpointMs({ next: 5 }, momentAt({ distanceM: 20_500 }))).toBe(Number.POSITIVE_INFINITY);
    expect(beginCheckpoints.next).toBe(0);
  });

  test.each([
    ['km', 5000, { tenths: 50, unit: 'km' }],
    ['km', 10_548.75, { name: 'halfway' }],
    ['km', 1609.344, { tenths: 10, unit: 'mile' }],
    ['km', 12_345, { tenths: 123, unit: 'km' }],
    ['mile', 5000, { tenths: 50, unit: 'km' }],
    ['mile', 16_093.44, { tenths: 100, unit: 'mile' }],
    ['mile', 12_345, { tenths: 77, unit: 'mile' }],
    ['km', 20, { tenths: 1, unit: 'km' }],
  ] as const)('in a plan by the %s, %f m is named so', (unit, atM, place) => {
    expect(placeOf(racePlanned({ unit }), atM)).toEqual(place);
  });
});

describe('marker', () => {
  test('says the board, the time since the one before, and the drift', () => {
    const moment = momentAt({ distanceM: 1999, aheadS: -7, distanceSdM: 2 });
    const found = lookForMarker({ next: 1, lastOwnS: 295.2, lastSdS: 0.5, lastM: 1000 }, moment);
    const ownS = ((found?.cue?.dueMs ?? 0) - START_MS) / 1000;
    expect(found?.cue?.saying).toEqual({
      kind: 'marker',
      count: 2,
      unit: 'km',
      splitS: Math.round(ownS - 295.2),
      ahead: { side: 'down', seconds: 7, sure: true },
    });
    expect(found?.watch).toEqual({
      next: 2,
      lastOwnS: ownS,
      lastSdS: 2 / moment.progress.speedMps,
      lastM: 2000,
    });
  });

  test('is silent where a checkpoint stands, but remembers the time there', () => {
    const found = lookForMarker(
      { next: 4, lastOwnS: 1180, lastSdS: 0.5, lastM: 4000 },
      momentAt({ distanceM: 4999 }),
    );
    expect(found?.cue).toBeNull();
    expect(found?.watch.lastOwnS).toBeGreaterThan(1180);
  });

  test('a line in doubt moves one board nearly as far as the next: the split is said all the same, coarser', () => {
    const at10 = { next: 8, lastOwnS: 2366, lastSdS: 7, lastM: 8000 };
    const found = lookForMarker(at10, momentAt({ distanceM: 8999, distanceSdM: 24 }))?.cue;
    expect(found?.saying).toMatchObject({ kind: 'marker', count: 9 });
    if (found?.saying.kind !== 'marker' || !('splitS' in found.saying)) throw new Error('no split');
    expect(found.saying.splitS % 5).toBe(0);
  });

  test('does not make up a split that nobody knows', () => {
    expect(lookForMarker(beginMarkers, momentAt({ distanceM: 999, distanceSdM: 30 }))?.cue).toBeNull();
    expect(
      lookForMarker({ next: 1, lastOwnS: 300, lastSdS: 7, lastM: 1000 }, momentAt({ distanceM: 1999 }))?.cue,
    ).toBeNull();
  });
});

describe('a press that is to come', () => {
  const noLine = racePlanned({}, false);
  const at = (distanceM: number, change: object = {}) =>
    momentAt({ race: noLine, distanceM, distanceSdM: 10, pressedM: 4000, ...change });

  test('is waited for at a board by whoever presses, and no longer than the crossing is unsure', () => {
    expect(lookForCheckpoint({ next: 0 }, at(4999))).toBeNull();
    expect(lookForCheckpoint({ next: 0 }, at(5010))).toBeNull();
    // 1.3 standard deviations of 10 m behind the board.
    expect(lookForCheckpoint({ next: 0 }, at(5014))?.cue?.atM).toBe(5000);
  });

  test('once it came the crossing is called', () => {
    expect(lookForCheckpoint({ next: 0 }, at(5001, { distanceSdM: 3, pressedM: 5000 }))?.cue?.atM).toBe(5000);
  });

  test('is not waited for between boards, from who has not pressed lately, or where the line is known', () => {
    expect(lookForCheckpoint({ next: 2 }, at(10_548, { pressedM: 10_000 }))?.cue?.atM).toBe(10_548.75);
    expect(lookForCheckpoint({ next: 0 }, at(4999, { pressedM: 2000 }))?.cue?.atM).toBe(5000);
    expect(
      lookForCheckpoint({ next: 0 }, momentAt({ distanceM: 4999, pressedM: 4000, distanceSdM: 10 }))?.cue,
    ).toBeTruthy();
  });
});

describe('finish', () => {
  const near = momentAt({ distanceM: 21_096, aheadS: 5, distanceSdM: 2 });

  test('is foreseen within a second and dated to the crossing', () => {
    expect(lookForFinish(momentAt({ distanceM: 21_090 }))).toBeNull();
    expect(lookForFinish(near)).toBeCloseTo(near.nowMs + (1.5 / near.progress.speedMps) * 1000, 6);
  });

  test('says the time and the drift', () => {
    const atMs = START_MS + 6228_400;
    expect(finishCue(near, atMs).saying).toEqual({
      kind: 'finish',
      timeS: 6228,
      ahead: { side: 'down', seconds: 9, sure: true },
    });
  });

  test('by the gun says the own time besides, where they differ', () => {
    const byGun = (gunBeforeS: number) =>
      finishCue(
        momentAt({ race: racePlanned({ goalBy: 'gun' }), distanceM: 21_096, gunBeforeS, distanceSdM: 2 }),
        START_MS + 6_200_000,
      ).saying;
    expect(byGun(45)).toMatchObject({ timeS: 6245, ownS: 6200 });
    expect(byGun(1)).not.toHaveProperty('ownS');
  });

  test('a stop pressed at the line is the finish, a stop before it is not', () => {
    const short = momentAt({ distanceM: 21_090, distanceSdM: 3 });
    expect(finishAtStop(short)).toBe(short.nowMs);
    expect(finishAtStop(momentAt({ distanceM: 21_070, distanceSdM: 3 }))).toBeNull();
    const past = momentAt({ distanceM: 21_097.5, distanceSdM: 3 });
    expect(finishAtStop(past)).toBe(past.nowMs);
  });
});

test('the finish is not guessed in an outage, but called where nothing better is to come', () => {
  const vague = { distanceM: 21_097, distanceSdM: 60 };
  expect(lookForFinish(momentAt({ ...vague, sinceFixS: 90 }))).toBeNull();
  expect(lookForFinish(momentAt({ ...vague, sinceFixS: 1 }))).not.toBeNull();
  expect(lookForCheckpoint({ next: 0 }, momentAt({ distanceM: 4999, distanceSdM: 60 }))?.cue?.atM).toBe(5000);
});
