import { beliefAt } from './belief.ts';
import { leaderOf } from './contenders.ts';
import { airNow } from './courseTracker.ts';
import type { Progress, Signal } from './progress.ts';
import type { EstimatorSetup, EstimatorState } from './state.ts';

/** No fix that fits for this long: lost. A receiver gives one each second or two. */
const LOST_AFTER_S = 12;
const POOR_AFTER_S = 5;
/** A slow error above this is what tall buildings do. */
const POOR_SD_M = 5.5;

const signalOf = (state: EstimatorState, sinceFixS: number): Signal => {
  if (state.lastUsedMs === null) return 'waiting';
  if (sinceFixS > LOST_AFTER_S) return 'lost';
  if (sinceFixS > POOR_AFTER_S) return 'poor';
  if (state.belief.kind === 'course' && airNow(leaderOf(state.belief.contenders).track).slowSdM > POOR_SD_M)
    return 'poor';
  return 'good';
};

/** The estimate at an instant not before the last input, by prediction alone. */
export const progressAt = (setup: EstimatorSetup, state: EstimatorState, atMs: number): Progress => {
  const sinceFixS =
    state.lastUsedMs === null ? Number.POSITIVE_INFINITY : Math.max(0, (atMs - state.lastUsedMs) / 1000);
  const belief = beliefAt(state, atMs);
  return {
    atMs,
    startMs: state.startMs,
    distanceM: Math.min(setup.officialM, Math.max(0, belief?.distanceM ?? 0)),
    distanceSdM: belief?.distanceSdM ?? 0.5,
    speedMps: Math.max(0, belief?.speedMps ?? 0),
    speedSdMps: belief?.speedSdMps ?? 1,
    baseSpeedMps: Math.max(0, belief?.baseSpeedMps ?? 0),
    signal: signalOf(state, sinceFixS),
    sinceFixS,
  };
};
