import { leaderOf } from './contenders.ts';
import * as readings from './courseReadings.ts';
import * as course from './courseState.ts';
import { predictTrack } from './courseTracker.ts';
import type { Input } from './input.ts';
import type { EstimatorState, Stride } from './state.ts';

/**
 * Steps through the tunnel. While reception is good the length of a step is learned from speed and step rate; when it is
 * gone, step rate times step length is the speed. Step length follows speed more than step rate does, so it is only
 * trusted near what it was lately.
 */
export const unknownStride: Stride = { lengthM: null, seen: 0 };

/** Reception is good while the last fix is younger than this. */
const FRESH_S = 3;
const LEARN = 0.05;
const SEEN_TO_TRUST = 20;
/** Speed from steps errs by about 3 %, the same way for many seconds: given one a second, each counts for little. */
const STEP_SPEED_SD_MPS = 0.6;
/** Steps as far off the believed speed as this tell of a change. */
const PLAIN_MPS = 0.35;
/** No runner steps slower or faster than this: 1.2 to 4.5 steps a second. */
const STEP_HZ = { min: 1.2, max: 4.5 };

export const takeSteps = (
  state: EstimatorState,
  input: Extract<Input, { type: 'motion' }>,
): EstimatorState => {
  const { belief, stride, lastUsedMs } = state;
  const { stepHz, atMs } = input;
  if (belief.kind !== 'course' || lastUsedMs === null) return state;
  if (stepHz === null || stepHz < STEP_HZ.min || stepHz > STEP_HZ.max) return state;
  if (atMs - lastUsedMs < FRESH_S * 1000) {
    const { track } = leaderOf(belief.contenders);
    const seenM = course.speedOf(track.g, track.hills) / stepHz;
    const lengthM = stride.lengthM === null ? seenM : stride.lengthM + LEARN * (seenM - stride.lengthM);
    return { ...state, stride: { lengthM, seen: stride.seen + 1 } };
  }
  if (stride.lengthM === null || stride.seen < SEEN_TO_TRUST) return state;
  const speedMps = stride.lengthM * stepHz;
  const contenders = belief.contenders.map((c) => {
    if (atMs <= c.track.timeMs) return c;
    const g = predictTrack(c.line, c.track, atMs);
    const seen = readings.fitSpeed(g, c.track.hills, speedMps);
    const offMps = Math.abs(seen.innovation);
    if (offMps > PLAIN_MPS) course.loosenSpeed(g, offMps / 2);
    readings.takeSpeed(g, seen, STEP_SPEED_SD_MPS);
    return { ...c, track: { ...c.track, g, timeMs: atMs } };
  });
  return { ...state, belief: { ...belief, contenders } };
};
