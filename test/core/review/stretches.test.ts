import { describe, expect, test } from 'vitest';
import type { Signal } from '../../../src/core/estimate/progress.ts';
import { beginDigest, type Digest, type Sample } from '../../../src/core/review/digest.ts';
import { ranStretches, receptionOver } from '../../../src/core/review/stretches.ts';
import { demoCourse } from '../../../src/demo/course.ts';
import { demoDeadM, demoPlan } from '../../../src/demo/race.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { NO_PRESSES, simulate } from '../../../src/sensors/simulated.ts';
import { TOWN } from '../../../src/sensors/simulatedReceiver.ts';
import { STEADY } from '../../../src/sensors/simulatedRunner.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const at = (distanceM: number, signal: Signal, heartBpm: number | null = null): Sample => ({
  atS: distanceM / 4,
  distanceM,
  speedMps: 4,
  aheadS: 0,
  aheadSdS: 1,
  projectedS: null,
  projectedSdS: 1,
  heartBpm,
  signal,
});

const digestWith = (samples: readonly Sample[]): Digest => ({
  version: 1,
  startMs: 0,
  finishS: null,
  distanceM: samples.at(-1)?.distanceM ?? 0,
  samples,
  calls: [],
  fixes: samples.length,
  unused: 0,
  signalS: { waiting: 0, good: 0, poor: 0, lost: 0 },
  receiver: null,
  longestGapS: 0,
});

describe('reception along the way', () => {
  test('is cut where it changes, without a hole', () => {
    const samples = [at(100, 'good'), at(200, 'good'), at(500, 'lost'), at(600, 'poor'), at(700, 'good')];
    expect(receptionOver(digestWith(samples))).toEqual([
      { fromM: 0, toM: 200, signal: 'good' },
      { fromM: 200, toM: 500, signal: 'lost' },
      { fromM: 500, toM: 600, signal: 'poor' },
      { fromM: 600, toM: 700, signal: 'good' },
    ]);
    expect(receptionOver(digestWith([]))).toEqual([]);
  });

  test('of a run through a tunnel is lost there, and the seconds count as lost', () => {
    const line = demoCourse();
    const { inputs } = simulate({
      plan: demoPlan,
      line,
      runner: STEADY,
      receiver: { ...TOWN, deadM: demoDeadM },
      presses: NO_PRESSES,
      penS: 10,
      seed: 3,
    });
    const digesting = beginDigest({
      plan: demoPlan,
      course: line,
      voice: voiceOf(english.pack, english.words),
    });
    for (const input of inputs) digesting.take(input);
    const digest = digesting.end();
    const [dark] = demoDeadM;
    const lost = receptionOver(digest).filter((r) => r.signal === 'lost');
    expect(lost.some((r) => r.fromM < (dark?.toM ?? 0) && r.toM > (dark?.fromM ?? 0))).toBe(true);
    expect(digest.signalS.lost).toBeGreaterThan(30);
  }, 30_000);
});

test('stretches from board to board have pace, heart and height', () => {
  const samples = [at(400, 'good', 140), at(900, 'good', 150), at(1400, 'good', null), at(2000, 'good', 170)];
  const splits = [
    { atM: 1000, timeS: 250, splitS: 250, plannedSplitS: 260, aheadS: 10 },
    { atM: 1500, timeS: 380, splitS: 130, plannedSplitS: 130, aheadS: 10 },
  ];
  const [first, second] = ranStretches(digestWith(samples), splits, null);
  expect(first).toEqual({
    fromM: 0,
    toM: 1000,
    ranSPerKm: 250,
    plannedSPerKm: 260,
    heartBpm: 145,
    heightM: null,
  });
  expect(second).toMatchObject({ fromM: 1000, ranSPerKm: 260, plannedSPerKm: 260, heartBpm: null });
  expect(ranStretches(digestWith(samples), splits, demoCourse())[0]?.heightM).toEqual(expect.any(Number));
});
