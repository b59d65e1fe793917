import type { CourseLine } from '../course/line.ts';
import { eastM, northM, planeAt } from '../geo/ruler.ts';
import { arrive, noArrivals } from './arrivals.ts';
import { type Contender, leaderOf, newcomers, takeFixAll } from './contenders.ts';
import { beginTrack } from './courseTracker.ts';
import { beginFree, takeFreeFix } from './freeTracker.ts';
import type { Fix, Input } from './input.ts';
import type { PlaneFix } from './planeFix.ts';
import { takePress } from './press.ts';
import { readFix } from './reading.ts';
import { type ReceiverPrior, USUAL_RECEIVER } from './receiver.ts';
import { findStartMs } from './startFinder.ts';
import { lineFromStart, reversedLine } from './startLine.ts';
import type { Belief, EstimatorSetup, EstimatorState } from './state.ts';
import { takeSteps, unknownStride } from './stride.ts';

export { progressAt } from './progressAt.ts';
export type { EstimatorSetup, EstimatorState } from './state.ts';

export const beginEstimate = (setup: EstimatorSetup): EstimatorState => ({
  gunMs: null,
  startMs: null,
  stopMs: null,
  lastPress: null,
  skipped: 0,
  fixes: 0,
  lineReversed: false,
  plane: setup.course?.plane ?? null,
  arrivals: noArrivals,
  reading: readFix.begin,
  belief: { kind: 'pen', fixes: [] },
  stride: unknownStride,
  lastUsedMs: null,
});

/** How far back the pen is remembered. */
const PEN_S = 240;
/** A start event is the runner's press on the line: so far off along it, m. */
const START_SD_M = 1;
/** A start that was found is known to a second or two. */
const FOUND_START_SD_M = 4;
/** After this long without a fix that fits, look for the runner elsewhere along the line. */
const LOOK_ELSEWHERE_S = 20;

const priorOf = (setup: EstimatorSetup): ReceiverPrior => setup.receiver ?? USUAL_RECEIVER;

/** The belief at the start line, with the fixes that came since. */
const startAt = (
  setup: EstimatorSetup,
  state: EstimatorState,
  startMs: number,
  sdM: number,
): EstimatorState => {
  const pen = state.belief.kind === 'pen' ? state.belief.fixes : [];
  const belief = beliefAtStart(setup, pen, startMs, sdM);
  const since = pen.filter((f) => f.timeMs > startMs);
  return since.reduce<EstimatorState>((s, f) => takePlaneFix(setup, s, f), { ...state, startMs, belief });
};

const beliefAtStart = (
  setup: EstimatorSetup,
  pen: readonly PlaneFix[],
  startMs: number,
  sdM: number,
): Belief => {
  if (!setup.course) return { kind: 'free', track: beginFree(startMs) };
  const prior = priorOf(setup);
  const track = beginTrack(startMs, 0, sdM, prior);
  const late = pen.filter((f) => f.timeMs <= startMs).slice(-5);
  const reversed = reversedLine(setup.course);
  const middle = (of: (f: PlaneFix) => number): number =>
    late.map(of).sort((a, b) => a - b)[late.length >> 1] ?? 0;
  const fromHere = (line: CourseLine): CourseLine =>
    late.length > 0
      ? lineFromStart(
          line,
          middle((f) => f.eastM),
          middle((f) => f.northM),
        )
      : line;
  const contenders: Contender[] = [{ line: fromHere(setup.course), reversed: false, track, score: 0 }];
  // As given is the better guess: the line turned round must show itself by the way it goes.
  if (reversed) contenders.push({ line: reversed, reversed: true, track, score: -2 });
  return { kind: 'course', contenders };
};

const takePlaneFix = (setup: EstimatorSetup, state: EstimatorState, fix: PlaneFix): EstimatorState => {
  const { belief } = state;
  if (belief.kind === 'pen') {
    const fixes = [...belief.fixes.filter((f) => fix.timeMs - f.timeMs < PEN_S * 1000), fix];
    const startMs = findStartMs(setup.course, fixes, priorOf(setup).lagS);
    const waiting: EstimatorState = { ...state, belief: { kind: 'pen', fixes }, lastUsedMs: fix.timeMs };
    return startMs === null ? waiting : startAt(setup, waiting, startMs, FOUND_START_SD_M);
  }
  if (belief.kind === 'free') {
    const { track, used } = takeFreeFix(belief.track, fix, priorOf(setup));
    return usedOrNot({ ...state, belief: { kind: 'free', track } }, fix, used);
  }
  const { contenders, used } = takeFixAll(belief.contenders, fix);
  const unseenS = used ? 0 : (fix.timeMs - (state.lastUsedMs ?? fix.timeMs)) / 1000;
  const wider =
    unseenS > LOOK_ELSEWHERE_S && contenders.length === 1
      ? [...contenders, ...newcomers(leaderOf(contenders), fix, unseenS)]
      : contenders;
  const alone = wider.length === 1 && wider[0]?.reversed === true;
  const next: EstimatorState = {
    ...state,
    belief: { kind: 'course', contenders: wider },
    lineReversed: state.lineReversed || alone,
  };
  return usedOrNot(next, fix, used);
};

const usedOrNot = (state: EstimatorState, fix: PlaneFix, used: boolean): EstimatorState =>
  used ? { ...state, lastUsedMs: fix.timeMs } : { ...state, skipped: state.skipped + 1 };

const takeFixInput = (
  setup: EstimatorSetup,
  state: EstimatorState,
  fix: Fix,
  atMs: number,
): EstimatorState => {
  const counted = { ...state, fixes: state.fixes + 1 };
  const arrival = arrive(state.arrivals, fix, atMs);
  const seen = { ...counted, arrivals: arrival.arrivals };
  if (arrival.kind !== 'fix') return { ...seen, skipped: state.skipped + 1 };
  const plane = state.plane ?? planeAt(fix);
  const { reading, speedMps, extraSdM } = readFix.take(state.reading, fix);
  return takePlaneFix(
    setup,
    { ...seen, plane, reading },
    {
      timeMs: arrival.takenMs,
      eastM: eastM(plane, fix),
      northM: northM(plane, fix),
      speedMps,
      extraSdM,
    },
  );
};

/** Takes one input in; pure. */
export const absorb = (setup: EstimatorSetup, state: EstimatorState, input: Input): EstimatorState => {
  if (input.type === 'fix') return takeFixInput(setup, state, input.fix, input.atMs);
  if (input.type === 'motion') return takeSteps(state, input);
  if (input.type !== 'event') return state;
  switch (input.event) {
    case 'gun':
      return state.gunMs === null ? { ...state, gunMs: input.atMs } : state;
    case 'start':
      // A start that was found before stands corrected by the runner's own press only while it is fresh.
      return state.startMs === null ? startAt(setup, state, input.atMs, START_SD_M) : state;
    case 'stop':
      return state.stopMs === null ? { ...state, stopMs: input.atMs } : state;
    case 'marker':
      return takePress(setup, state, input.atMs);
    default:
      return state;
  }
};
