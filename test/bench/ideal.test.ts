import { expect, test } from 'vitest';
import { toldIn } from './curve.ts';
import { idealOf } from './ideal.ts';
import { AIRS, DEPARTURE_S_PER_KM, delayOf, PACE_S_PER_KM, PLAN, pacedIn } from './paced.ts';
import { RECEPTIONS } from './worlds.ts';

const BY_MPS = 1000 / PACE_S_PER_KM - 1000 / (PACE_S_PER_KM + DEPARTURE_S_PER_KM);

/** A few tell the order of the delays. */
const RUNS = 12;

test('a speed that is known better is told sooner, by anyone', () => {
  const { town } = RECEPTIONS;
  const worse = idealOf(town, BY_MPS, PLAN.goalS, RUNS);
  const better = idealOf({ ...town, speedSdMps: 0.15 }, BY_MPS, PLAN.goalS, RUNS);
  expect(better.z40).toBeGreaterThan(worse.z40);
  expect(better.delayS).toBeLessThan(worse.delayS / 1.5);
  // With white noise alone the change stands out by the root of the time.
  const white = idealOf({ ...town, whiteM: 1e6, speedSdMps: 0.3 }, BY_MPS, PLAN.goalS, RUNS);
  expect(white.z40).toBeCloseTo((BY_MPS / 0.3) * Math.sqrt(40), 3);
});

test('what the curve is drawn from agrees with what the engine says', () => {
  const open = AIRS.find((air) => air.name === 'open');
  if (!open) throw new Error('no open sky');
  const paced = pacedIn(open, 0, 2 * DEPARTURE_S_PER_KM, 3);
  const engineS = delayOf(paced, paced.calls);
  const curveS = delayOf(paced, toldIn(paced.shown, 2.5));
  expect(engineS).not.toBeNull();
  expect(Math.abs((engineS ?? 0) - (curveS ?? 0))).toBeLessThan(6);
});
