import { describe, expect, test } from 'vitest';
import type { Digest, Sample } from '../../../src/core/review/digest.ts';
import { raceFacts } from '../../../src/core/review/trend.ts';

const DISTANCE_M = 10_000;

/** A run whose kilometres took so much more (or, below 0, less) than planned, as shares of an hour's pace. */
const runOf = (lateShares: readonly number[], finishS: number | null = 3600): Digest => {
  const samples: Sample[] = [];
  let [atS, aheadS] = [0, 0];
  for (let i = 0; i <= lateShares.length; i++) {
    samples.push({
      atS,
      distanceM: 1000 * i,
      speedMps: 2.8,
      aheadS,
      aheadSdS: 1,
      projectedS: null,
      projectedSdS: 1,
      heartBpm: null,
      signal: 'good',
    });
    atS += 360;
    aheadS -= 360 * (lateShares[i] ?? 0);
  }
  return {
    version: 1,
    startMs: 1_800_000_000_000,
    finishS,
    distanceM: DISTANCE_M,
    samples,
    calls: [],
    fixes: samples.length,
    unused: 0,
    signalS: { waiting: 0, good: 3600, poor: 0, lost: 0 },
    receiver: null,
    longestGapS: 1,
  };
};
const wanderOf = (lateShares: readonly number[]): number | null =>
  raceFacts(runOf(lateShares), DISTANCE_M, null, null, []).wanderSd;

describe('what a race tells of its runner', () => {
  test('the wander of a kilometre is about the runner’s own mean, not the plan’s', () => {
    expect(wanderOf(Array.from({ length: 10 }, () => 0.03))).toBeCloseTo(0, 9);
    expect(wanderOf(Array.from({ length: 10 }, (_, i) => (i % 2 === 0 ? 0.02 : -0.02)))).toBeCloseTo(
      // Ten readings of ±0.02: Σ(x - x̄)² / (n - 1).
      Math.sqrt((10 * 0.02 ** 2) / 9),
      9,
    );
    // Skew readings: a single slow kilometre of ten.
    expect(wanderOf([0.1, 0, 0, 0, 0, 0, 0, 0, 0, 0])).toBeCloseTo(
      Math.sqrt((0.09 ** 2 + 9 * 0.01 ** 2) / 9),
      9,
    );
  });

  test('there is none in a run that was given up, or was too short to show it', () => {
    const even = Array.from({ length: 10 }, () => 0);
    expect(raceFacts(runOf(even, null), DISTANCE_M, null, null, []).wanderSd).toBeNull();
    const short = { ...runOf(even.slice(0, 4)), distanceM: 4999 };
    expect(raceFacts(short, 4999, null, null, []).wanderSd).toBeNull();
  });

  test('opening, fade, stations and result are those of the run; what was not seen is not told', () => {
    const facts = raceFacts(
      runOf([]),
      DISTANCE_M,
      { untilM: 1000, plannedSPerKm: 360, ranSPerKm: 352, verdict: 'tooQuick' },
      { share: 0.04, worst: { fromM: 0, toM: 1, lostS: 1 }, best: { fromM: 0, toM: 1, lostS: 0 } },
      [
        { atM: 3000, lostS: 6 },
        { atM: 6000, lostS: 2 },
      ],
    );
    expect(facts).toMatchObject({ openingOverS: 8, fadeShare: 0.04, stationS: 4 });
    expect(facts.result).toMatchObject({ distanceM: DISTANCE_M, timeS: 3600 });
    const gained = raceFacts(runOf([]), DISTANCE_M, null, null, [{ atM: 3000, lostS: -5 }]);
    expect(gained).toMatchObject({ openingOverS: null, fadeShare: null, stationS: 0 });
    expect(raceFacts(runOf([], null), DISTANCE_M, null, null, [])).toMatchObject({
      stationS: null,
      result: null,
    });
  });
});
