import { describe, expect, test } from 'vitest';
import { TALL, TOWN } from '../../../src/sensors/simulatedReceiver.ts';
import { follow, type Wish } from './follow.ts';
import * as meddling from './meddling.ts';
import { outAndBack, town } from './roads.ts';

/** What receivers do, and how far off the estimate may be: RMS and worst in metres, over three seeds. */
const rows: readonly (readonly [string, Wish, rmsM: number, worstM: number])[] = [
  ['among tall buildings', { road: town, receiver: TALL }, 8, 30],
  ['a burst of 32 m for half a minute', { road: town, meddle: meddling.shift(600, 630, 25, 20) }, 2, 8],
  [
    'a jump of 150 m with good stated accuracy',
    { road: town, meddle: meddling.shift(600, 606, 110, 100) },
    2,
    8,
  ],
  ['a tunnel of 30 s', { road: town, meddle: meddling.tunnel(600, 630) }, 2, 8],
  ['a tunnel of 3 min', { road: town, meddle: meddling.tunnel(600, 780) }, 4, 25],
  [
    'a tunnel round the cone of an out-and-back',
    { road: outAndBack, meddle: meddling.tunnel(680, 860) },
    4,
    25,
  ],
  ['a fix every 3 s', { road: town, receiver: { everyS: 3 } }, 2.5, 8],
  ['a fix every 8 s', { road: town, receiver: { everyS: 8 } }, 3, 9],
  ['a fix every 8 s, no speed', { road: town, receiver: { everyS: 8, speedSdMps: null } }, 3, 9],
  ['positions 1.5 s late', { road: town, receiver: { lagS: 1.5 } }, 6, 10],
  [
    'speeds filled with zeros',
    { road: town, meddle: meddling.changeFixes((i) => ({ ...i, fix: { ...i.fix, speedMps: 0 } })) },
    3,
    9,
  ],
  ['speeds in kilometres an hour', { road: town, meddle: meddling.speeds((mps) => 3.6 * mps) }, 3, 9],
  ['speeds in knots', { road: town, meddle: meddling.speeds((mps) => 1.944 * mps) }, 12, 140],
  ['the same speed over and over', { road: town, meddle: meddling.speeds(() => 3.21) }, 3, 10],
  [
    'three speeds in ten filled with zeros',
    { road: town, meddle: meddling.speeds((mps, i) => ((i * 7919) % 10 < 3 ? 0 : mps)) },
    2.5,
    8,
  ],
  [
    'frozen for a minute, its speed at zero',
    {
      road: town,
      meddle: meddling.inTurn(
        meddling.freeze(500, 560),
        meddling.speeds((mps, _, ownS) => (ownS < 500 || ownS > 560 ? mps : 0)),
      ),
    },
    3,
    12,
  ],
  [
    'its clock set back by an hour',
    {
      road: town,
      meddle: meddling.changeFixes((i, ownS) =>
        ownS < 600 ? i : { ...i, fix: { ...i.fix, timestampMs: i.fix.timestampMs - 3_600_000 } },
      ),
    },
    2,
    8,
  ],
  [
    'its clock stands',
    {
      road: town,
      meddle: meddling.changeFixes((i) => ({ ...i, fix: { ...i.fix, timestampMs: 1_800_000_000_000 } })),
    },
    2,
    8,
  ],
  ['twenty fixes at a time', { road: town, meddle: meddling.bundled(20) }, 2.5, 9],
  ['frozen for a minute', { road: town, meddle: meddling.freeze(500, 560) }, 3, 12],
  ['a fix of an hour ago from 5 km away', { road: town, meddle: meddling.cached(3_600_000) }, 2, 6],
  ['the same with a fresh stamp', { road: town, meddle: meddling.cached(500) }, 2, 6],
  ['a stop of a minute', { road: town, runner: { stops: [{ atM: 2500, seconds: 60 }] } }, 3, 12],
  [
    'a stop of a minute, no speed',
    { road: town, receiver: { speedSdMps: null }, runner: { stops: [{ atM: 2500, seconds: 60 }] } },
    5,
    40,
  ],
];

describe('receivers as they are', () => {
  test.each(rows)('%s', (_, wish, rmsM, worstM) => {
    for (const seed of [1, 2, 3]) {
      const followed = follow({ ...wish, seed });
      expect(followed.rmsM).toBeLessThan(rmsM);
      expect(followed.worstM).toBeLessThan(worstM);
    }
  });

  test('says when the signal is lost, and when it is not', () => {
    expect(follow({ road: town, meddle: meddling.tunnel(600, 630) }).signals).not.toContain('waiting');
    const frozen = follow({ road: town, meddle: meddling.freeze(500, 560) });
    expect(frozen.signals).toContain('lost');
    expect(follow({ road: town }).signals).toEqual(new Set(['good']));
  });

  test('steps carry the runner through a tunnel in which the pace changes', () => {
    const wish: Wish = {
      road: town,
      runner: { stretches: [{ fromM: 2400, toM: 3100, share: -0.2 }] },
    };
    const dark = meddling.tunnel(600, 780);
    const blind = follow({ ...wish, meddle: dark });
    const stepping = follow({ ...wish, meddle: meddling.inTurn(meddling.withSteps(1.3), dark) });
    // Own clock 779 s: the last moment before the light.
    const errorAt = (f: typeof blind): number =>
      Math.abs(f.samples.find((s) => s.ownS > 780)?.errorM ?? Number.POSITIVE_INFINITY);
    expect(errorAt(stepping)).toBeLessThan(15);
    expect(stepping.rmsM).toBeLessThanOrEqual(blind.rmsM + 0.5);
  });
});

describe('finds the start by itself', () => {
  test.each([
    ['in the open', {}, 2],
    ['in town', TOWN, 3.5],
    ['without speed', { speedSdMps: null }, 2],
  ])('%s', (_, receiver, withinS) => {
    for (const seed of [1, 2, 3, 4]) {
      const { startErrorS } = follow({
        road: town,
        receiver,
        penS: 180,
        seed,
        meddle: meddling.withoutEvents,
      });
      expect(Math.abs(startErrorS ?? Number.POSITIVE_INFINITY)).toBeLessThan(withinS);
    }
  });

  test('without a line, where the running begins', () => {
    const { startErrorS } = follow({ road: town, given: null, penS: 180, meddle: meddling.withoutEvents });
    expect(Math.abs(startErrorS ?? Number.POSITIVE_INFINITY)).toBeLessThan(4);
  });
});

describe('without a line', () => {
  const boards = {
    boards: { atM: Array.from({ length: 6 }, (_, i) => 1000 * (i + 1)), sdS: 0.8, missedShare: 0.1 },
    others: [{ atS: 0, event: 'start' as const }],
  };
  test.each([
    ['bare, with speed', {}, undefined, 35],
    ['bare, places alone', { speedSdMps: null }, undefined, 90],
    ['with presses', TOWN, boards, 9],
    ['with presses, places alone', { ...TOWN, speedSdMps: null }, boards, 25],
  ])('%s', (_, receiver, presses, rmsM) => {
    for (const seed of [1, 2, 3]) {
      const wish: Wish = { road: town, given: null, receiver, seed };
      const followed = follow(presses ? { ...wish, presses } : wish);
      expect(followed.rmsM).toBeLessThan(rmsM);
      expect(followed.inside).toBeGreaterThan(0.8);
    }
  });
});
