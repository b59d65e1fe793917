import { leaderOf, standing } from './contenders.ts';
import * as course from './courseState.ts';
import { wayOfTrack } from './courseTracker.ts';
import { freeBeliefAt } from './freeTracker.ts';
import { undecidedVar } from './lineMetres.ts';
import type { EstimatorState } from './state.ts';

/**
 * A straightened line has faults that its own account of itself does not hold (a bend missed, a point counted to the
 * wrong street): so much of the variance that it admits comes on top. Measured over 24 simulated lines and races.
 */
const UNTOLD_SHARE = 0.5;

/** The leading belief at an instant, by prediction alone; null before the start. */
export const beliefAt = (state: EstimatorState, atMs: number) => {
  const { belief } = state;
  if (belief.kind === 'pen') return null;
  if (belief.kind === 'free') return freeBeliefAt(belief.track, atMs);
  const leader = leaderOf(belief.contenders);
  const g = wayOfTrack(leader.line, leader.track, atMs);
  const distanceM = course.distanceOf(g);
  let variance = course.distanceVarOf(g) + UNTOLD_SHARE * course.lineVarOf(g);
  variance +=
    ((leader.ownMetres?.doubtShare ?? 0) * distanceM) ** 2 + undecidedVar(leader, belief.odometer ?? null);
  if (belief.contenders.length > 1) {
    // What the others say is doubt about the leader.
    let weights = 0;
    let spread = 0;
    for (const c of belief.contenders) {
      const w = Math.exp(Math.min(0, standing(c) - standing(leader)));
      weights += w;
      spread += w * (course.distanceOf(c.track.g) - course.distanceOf(leader.track.g)) ** 2;
    }
    variance += spread / weights;
  }
  return {
    distanceM,
    distanceSdM: Math.sqrt(variance),
    speedMps: course.speedOf(g, leader.track.hills),
    speedSdMps: Math.sqrt(course.speedVarOf(g, leader.track.hills)),
    baseSpeedMps: course.baseSpeedOf(g),
  };
};
