import { beliefAt } from './belief.ts';
import { leaderOf } from './contenders.ts';
import * as readings from './courseReadings.ts';
import * as course from './courseState.ts';
import { predictTrack } from './courseTracker.ts';
import { pressFree } from './freeTracker.ts';
import type { EstimatorSetup, EstimatorState } from './state.ts';

/**
 * A press at a board is a measurement with the error of a human: about a second of running, and boards stand a metre or
 * two off their mark.
 */
const HUMAN_S = 0.9;
const BOARD_SD_M = 2;
/** A board further than this many standard deviations from the belief was not the one. */
const SENSIBLE_SD = 3.5;
/** The belief may be wrong by this share of the way since the last board without knowing it. */
const UNKNOWN_SHARE = 0.02;

/** Takes a press in: the nearest board that makes sense; none, and the press is remembered as such. */
export const takePress = (setup: EstimatorSetup, state: EstimatorState, atMs: number): EstimatorState => {
  const belief = beliefAt(state, atMs);
  const refused: EstimatorState = { ...state, lastPress: { atMs, boardM: null } };
  if (!belief || state.startMs === null) return refused;
  const boardM = setup.boardsM.reduce<number | null>(
    (best, b) =>
      best === null || Math.abs(b - belief.distanceM) < Math.abs(best - belief.distanceM) ? b : best,
    null,
  );
  if (boardM === null) return refused;
  const sdM = Math.hypot(HUMAN_S * Math.max(1, belief.speedMps), BOARD_SD_M);
  const knownM = state.lastPress?.boardM ?? 0;
  const spareM = UNKNOWN_SHARE * Math.abs(boardM - knownM);
  const off = Math.abs(boardM - belief.distanceM);
  if (off > SENSIBLE_SD * Math.hypot(sdM, belief.distanceSdM) + spareM || boardM === state.lastPress?.boardM)
    return refused;
  const pressed: EstimatorState = { ...state, lastPress: { atMs, boardM } };
  if (state.belief.kind === 'free')
    return { ...pressed, belief: { kind: 'free', track: pressFree(state.belief.track, atMs, boardM, sdM) } };
  if (state.belief.kind !== 'course') return refused;
  const leader = leaderOf(state.belief.contenders);
  const contenders = state.belief.contenders.map((c) => {
    const g = predictTrack(c.line, c.track, atMs);
    readings.takeDistance(g, boardM, sdM);
    // A contender that is far from the board pays for it.
    const off =
      (course.distanceOf(c.track.g) - boardM) / Math.hypot(sdM, Math.sqrt(course.distanceVarOf(c.track.g)));
    return {
      ...c,
      track: { ...c.track, g, timeMs: Math.max(atMs, c.track.timeMs) },
      score: c === leader ? c.score : c.score - off * off * 0.1,
    };
  });
  return { ...pressed, belief: { ...state.belief, contenders } };
};
