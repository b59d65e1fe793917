import { leaderOf } from '../../estimate/contenders.ts';
import { speedOf, speedVarOf } from '../../estimate/courseState.ts';
import { beliefOfTrack } from '../../estimate/courseTracker.ts';
import { progressAt } from '../../estimate/estimator.ts';
import { COURSE_SCALE_MEAN } from '../../estimate/freeFilter.ts';
import type { Gaussian } from '../../estimate/kalman.ts';
import { expectNewPace } from '../../estimate/newPace.ts';
import type { EstimatorSetup, EstimatorState } from '../../estimate/state.ts';
import { beginStretch, stretchOf } from '../../estimate/stretch.ts';
import type { Seen } from './find.ts';
import type { LaidCourse, LaidLine } from './lay.ts';

/**
 * The way run in a session that knows its road. The estimate without a line runs all along; while the runner is on the
 * line, the tracker of the line measures instead, from stretch to stretch, so that going over from the one to the other
 * adds nothing and takes nothing away.
 */
export interface Way {
  readonly course: LaidCourse;
  /** Null off the line. */
  readonly on: OnLine | null;
  /** Metres up to where the present stretch began, and their variance. */
  readonly baseM: number;
  readonly baseVarM2: number;
  /** What the estimate without a line said then; of use off the line only. */
  readonly freeFrom: Free;
  /** The fixes of late on the course's plane. */
  readonly seen: readonly Passed[];
  readonly lookedMs: number;
}

export interface OnLine {
  readonly laid: LaidLine;
  readonly state: EstimatorState;
}

interface Free {
  readonly distanceM: number;
  readonly varM2: number;
}

export interface Passed extends Seen {
  /** The way as it was told at that time. */
  readonly wayM: number;
}

/** What is told of the way at one instant. */
export interface WayNow {
  readonly by: 'line' | 'free';
  readonly distanceM: number;
  readonly distanceSdM: number;
  readonly speedMps: number;
  readonly speedSdMps: number;
}

/** The estimate without a line counts a course's metres; in a session the runner's own way counts, which is a little longer. */
export const OWN_WAY = 1 / (1 - COURSE_SCALE_MEAN);
export const beginWay = (course: LaidCourse): Way => ({
  course,
  on: null,
  baseM: 0,
  baseVarM2: 0,
  freeFrom: { distanceM: 0, varM2: 0 },
  seen: [],
  lookedMs: Number.NEGATIVE_INFINITY,
});

/** What the estimate without a line says, in metres of the runner's own way. */
export const freeAt = (setup: EstimatorSetup, estimate: EstimatorState, atMs: number): Free => {
  const { distanceM, distanceSdM } = progressAt(setup, estimate, atMs);
  return { distanceM: distanceM * OWN_WAY, varM2: distanceSdM ** 2 };
};

/**
 * Where the receiver gives speeds they alone tell the pace: places on the line would move it for as long as their error
 * lasts, a minute and more (in town 1.0 false alarms in 30 min by the line, 0.1 by the speeds: bench).
 */
const hasSpeeds = ({ belief }: EstimatorState): boolean =>
  belief.kind === 'free' && belief.track.stage === 'running' && belief.track.last.speedMps !== null;

/** The way at an instant not before the last input. */
export const wayAt = (way: Way, setup: EstimatorSetup, estimate: EstimatorState, atMs: number): WayNow => {
  const { on, baseM, baseVarM2, freeFrom } = way;
  const { speedMps, speedSdMps } = progressAt(setup, estimate, atMs);
  if (on === null || on.state.belief.kind !== 'course') {
    const free = freeAt(setup, estimate, atMs);
    return {
      by: 'free',
      distanceM: baseM + free.distanceM - freeFrom.distanceM,
      distanceSdM: Math.sqrt(baseVarM2 + Math.max(0, free.varM2 - freeFrom.varM2)),
      speedMps: speedMps * OWN_WAY,
      speedSdMps,
    };
  }
  const { track } = leaderOf(on.state.belief.contenders);
  const g = beliefOfTrack(on.laid.line, track, atMs);
  const { distanceM, varianceM2 } = stretchOf(g);
  return {
    by: 'line',
    distanceM: baseM + distanceM,
    distanceSdM: Math.sqrt(baseVarM2 + varianceM2),
    ...(hasSpeeds(estimate)
      ? { speedMps: speedMps * OWN_WAY, speedSdMps }
      : {
          speedMps: Math.max(0, speedOf(g, track.hills)),
          speedSdMps: Math.sqrt(speedVarOf(g, track.hills)),
        }),
  };
};

/** The belief of each contender changed. */
export const withBeliefs = (
  state: EstimatorState,
  change: (g: Gaussian) => Gaussian,
  corners = 0,
): EstimatorState => {
  if (state.belief.kind !== 'course') return state;
  const contenders = state.belief.contenders.map((c) => ({
    ...c,
    track: { ...c.track, g: change(c.track.g), passed: c.track.passed + corners },
  }));
  return { ...state, belief: { kind: 'course', contenders } };
};

const leaderMs = (state: EstimatorState): number =>
  state.belief.kind === 'course' ? leaderOf(state.belief.contenders).track.timeMs : 0;

/** A new stretch begins here: a leg, which is then measured by itself. */
export const beginLegOn = (way: Way, setup: EstimatorSetup, estimate: EstimatorState): Way => {
  if (way.on === null) return way;
  const { laid, state } = way.on;
  const { distanceM, distanceSdM } = wayAt(way, setup, estimate, leaderMs(state));
  return {
    ...way,
    baseM: distanceM,
    baseVarM2: distanceSdM ** 2,
    on: { laid, state: expectNewPace(withBeliefs(state, beginStretch)) },
  };
};
