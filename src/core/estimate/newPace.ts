import * as course from './courseState.ts';
import * as free from './freeFilter.ts';
import { copyOf, type Gaussian } from './kalman.ts';
import type { EstimatorState } from './state.ts';

/**
 * In a session the pace changes at a stroke, which the walk of a race's pace does not allow for: it would take a minute
 * to be believed. So the estimate is told that a change is at hand, but never from what to what: a target that leaks
 * into the filter makes it believe the runner is on it.
 */

/** From easy running to a hard leg, and back, m/s. */
const CHANGE_SD_MPS = 0.7;

const loosened = (g: Gaussian, base: number): Gaussian => {
  const next = copyOf(g);
  const i = base * next.x.length + base;
  next.P[i] = (next.P[i] ?? 0) + CHANGE_SD_MPS ** 2;
  return next;
};

/** The runner is about to run at another pace, whichever. */
export const expectNewPace = (state: EstimatorState): EstimatorState => {
  const { belief } = state;
  if (belief.kind === 'free') {
    const { track } = belief;
    if (track.stage === 'waiting') return state;
    return {
      ...state,
      belief: { kind: 'free', track: { ...track, g: loosened(track.g, free.BASE), recent: [], leaps: true } },
    };
  }
  if (belief.kind === 'pen') return state;
  const contenders = belief.contenders.map((c) => ({
    ...c,
    track: { ...c.track, g: loosened(c.track.g, course.BASE) },
  }));
  return { ...state, belief: { ...belief, contenders } };
};
