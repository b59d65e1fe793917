import type { CourseLine } from '../course/line.ts';
import type { Input } from './input.ts';
import type { Progress } from './progress.ts';

/** What the estimate may know beforehand: the course and its boards, never the plan's paces. */
export interface EstimatorSetup {
  readonly course: CourseLine | null;
  readonly officialM: number;
  /** Where kilometre or mile boards stand, ascending. */
  readonly boardsM: readonly number[];
}

/** The last press at a board and what became of it; boardM is null where no board made sense. */
export interface Press {
  readonly atMs: number;
  readonly boardM: number | null;
}

export interface EstimatorState {
  readonly gunMs: number | null;
  /** Own clock 0: given by the `start` event or found; null before. Found starts are set in arrears. */
  readonly startMs: number | null;
  readonly stopMs: number | null;
  readonly lastPress: Press | null;
  /** Fixes that could not be used. */
  readonly skipped: number;
  readonly fixes: number;
  /** The line turned out to be recorded against the direction of the race and was turned round. */
  readonly lineReversed: boolean;
  readonly atMs: number;
  readonly s: number;
  readonly v: number;
  readonly lastFixMs: number | null;
}

export const beginEstimate = (_setup: EstimatorSetup): EstimatorState => ({
  gunMs: null, startMs: null, stopMs: null, lastPress: null, skipped: 0, fixes: 0, lineReversed: false,
  atMs: Number.NEGATIVE_INFINITY, s: 0, v: 0, lastFixMs: null,
});

/** Takes one input in; pure. */
export const absorb = (setup: EstimatorSetup, state: EstimatorState, input: Input): EstimatorState => {
  const p = progressAt(setup, state, input.atMs);
  const moved = { ...state, atMs: input.atMs, s: p.distanceM };
  if (input.type === 'event' && input.event === 'start') return { ...moved, startMs: input.atMs };
  if (input.type === 'event' && input.event === 'stop') return { ...moved, stopMs: input.atMs };
  if (input.type === 'fix') return { ...moved, fixes: state.fixes + 1, lastFixMs: input.atMs, v: input.fix.speedMps ?? state.v };
  return moved;
};

/** The estimate at a later instant, by prediction alone. */
export const progressAt = (setup: EstimatorSetup, state: EstimatorState, atMs: number): Progress => {
  const dtS = state.startMs === null ? 0 : Math.max(0, (atMs - Math.max(state.atMs, state.startMs)) / 1000);
  return {
    atMs, startMs: state.startMs, distanceM: Math.min(setup.officialM, state.s + state.v * dtS), distanceSdM: 5,
    speedMps: state.v, speedSdMps: 0.2, baseSpeedMps: state.v, signal: state.lastFixMs === null ? 'waiting' : 'good',
    sinceFixS: state.lastFixMs === null ? Number.POSITIVE_INFINITY : (atMs - state.lastFixMs) / 1000,
  };
};
