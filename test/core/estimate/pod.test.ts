import { describe, expect, test } from 'vitest';
import { absorb, beginEstimate, progressAt } from '../../../src/core/estimate/estimator.ts';
import type { Input } from '../../../src/core/estimate/input.ts';
import {
  learnPod,
  nextRunPod,
  type PodScale,
  podSpeed,
  USUAL_POD,
} from '../../../src/core/estimate/podScale.ts';
import { podSeen } from '../../../src/core/estimate/podSpeed.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';
import type { Simulated } from '../../../src/sensors/simulated.ts';
import { TOWN } from '../../../src/sensors/simulatedReceiver.ts';
import { follow } from './follow.ts';
import { town } from './roads.ts';

const SHARE = 0.04;

/** A pod that reads so much too much, once a second, beside what came in anyway. */
const wearing =
  (share: number, seed = 5) =>
  (inputs: readonly Input[], run: Simulated): readonly Input[] => {
    const chance = chanceOf(seed);
    const pod = Array.from({ length: Math.floor(run.truth.toS) }, (_, s): Input => {
      const speedMps = Math.max(0, run.truth.speedAtMps(s) * (1 + share) + 0.05 * chance.normal());
      return { type: 'footPod', atMs: run.startMs + 1000 * s, speedMps, stepsPerMin: 176 };
    });
    return [...inputs, ...pod].sort((a, b) => a.atMs - b.atMs);
  };

/** Dark from 2500 to 3400 m, and slower in there, where only the pod sees it. */
const tunnel = {
  road: town,
  receiver: { deadM: [{ fromM: 2500, toM: 3400 }] },
  runner: { stretches: [{ fromM: 2550, toM: 3400, share: -0.15 }] },
} as const;

/** Error of the distance just before light is seen again, metres. */
const errorAtExit = (given: typeof town | null, podShare: number | null): number => {
  const { run } = follow(tunnel);
  const inputs = podShare === null ? run.inputs : wearing(podShare)(run.inputs, run);
  const setup = { course: given, officialM: town.officialM, boardsM: [] };
  const exitMs = run.startMs + 1000 * (run.truth.crossingS(3390) ?? 0);
  const state = inputs
    .filter((i) => i.atMs <= exitMs)
    .reduce((s, i) => absorb(setup, s, i), beginEstimate(setup));
  return Math.abs(progressAt(setup, state, exitMs).distanceM - 3390);
};

describe('a foot pod in a tunnel', () => {
  test.each([
    ['along a line', town],
    ['without a line', null],
  ])('%s: it sees that the runner goes slower, which nothing else does', (_, given) => {
    expect(errorAtExit(given, null)).toBeGreaterThan(60);
    expect(errorAtExit(given, SHARE)).toBeLessThan(20);
  });
});

describe('the scale of a foot pod', () => {
  test('is learned on the road, whatever it says out of the box', () => {
    const { state } = follow({ road: town, receiver: TOWN, meddle: wearing(SHARE) });
    const scale = podSeen(state);
    const { speedMps } = podSpeed(scale ?? USUAL_POD, 4 * (1 + SHARE));
    expect(Math.abs(speedMps / 4 - 1)).toBeLessThan(0.006);
  });

  test('does not make the estimate worse in town, without a line', () => {
    const alone = [1, 2, 3].map((seed) => follow({ road: town, given: null, receiver: TOWN, seed }).rmsM);
    const worn = [1, 2, 3].map(
      (seed) => follow({ road: town, given: null, receiver: TOWN, seed, meddle: wearing(SHARE) }).rmsM,
    );
    const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);
    expect(sum(worn)).toBeLessThan(1.05 * sum(alone));
  });

  test('tells the paces apart', () => {
    const chance = chanceOf(3);
    const trueFactor = (rawMps: number): number => 0.97 - 0.05 * Math.log(rawMps / (1000 / 300));
    let scale: PodScale = USUAL_POD;
    for (let s = 0; s < 1800; s++) {
      const raw = s % 600 < 300 ? 2.8 : 4.2;
      scale = learnPod(scale, raw, raw * trueFactor(raw) + 0.3 * chance.normal(), 0.3, 1);
    }
    for (const raw of [2.8, 4.2])
      expect(Math.abs(podSpeed(scale, raw).speedMps / (raw * trueFactor(raw)) - 1)).toBeLessThan(0.008);
    expect(podSpeed(scale, 4.2).scaleSdMps).toBeLessThan(podSpeed(USUAL_POD, 4.2).scaleSdMps / 5);
  });

  test('is a little less sure at the next run, and never less than out of the box', () => {
    const known: PodScale = { ...USUAL_POD, factor: 0.95, factorVar: 1e-5, slopeVar: 1e-4 };
    expect(nextRunPod(known).factor).toBe(0.95);
    expect(nextRunPod(known).factorVar).toBeGreaterThan(known.factorVar);
    expect(nextRunPod(USUAL_POD).factorVar).toBe(USUAL_POD.factorVar);
  });
});
