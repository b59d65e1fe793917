import type { CourseLine } from '../course/line.ts';
import { eastM, northM, planeAt } from '../geo/ruler.ts';
import { arrive, noArrivals } from './arrivals.ts';
import { backInPen, gunInPen, isUnderWay, noStand, standOn } from './backInPen.ts';
import type { Contender } from './contenders.ts';
import { takeCourseFix } from './courseFix.ts';
import { beginTrack } from './courseTracker.ts';
import { beginFree, takeFreeFix } from './freeTracker.ts';
import type { Fix, Input } from './input.ts';
import { beginOdometer } from './odometer.ts';
import type { PlaneFix } from './planeFix.ts';
import { takePod, withPod } from './podSpeed.ts';
import { takePress } from './press.ts';
import { readFix } from './reading.ts';
import { type ReceiverPrior, USUAL_RECEIVER } from './receiver.ts';
import { findStartMs } from './startFinder.ts';
import { linesFromStart } from './startLine.ts';
import { startPlace } from './startPlace.ts';
import type { Belief, EstimatorSetup, EstimatorState } from './state.ts';
import { takeSteps, unknownStride } from './stride.ts';
import { type Woke, wokeOnCourse } from './wokeOnCourse.ts';

export { progressAt } from './progressAt.ts';
export type { EstimatorSetup, EstimatorState } from './state.ts';

export const beginEstimate = (setup: EstimatorSetup): EstimatorState => ({
  gunMs: null,
  startMs: null,
  startGiven: false,
  stand: noStand,
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
  pod: null,
  lastUsedMs: null,
});

/** How far back the pen is remembered. */
const PEN_S = 240;
/** A start event is the runner's press on the line: so far off along it, m. */
const START_SD_M = 1;
/** So long after a press on start another one still sets it right. */
const RESTART_S = 300;
/** A start that was found is known to a second or two. */
const FOUND_START_SD_M = 4;
/** Where a receiver woke on the course, by its first fixes along the line. */
const WOKE_SD_M = 12;
const priorOf = (setup: EstimatorSetup): ReceiverPrior => setup.receiver ?? USUAL_RECEIVER;

/** The belief at the start line, with the fixes that came since. */
const startAt = (
  setup: EstimatorSetup,
  state: EstimatorState,
  startMs: number,
  sdM: number,
): EstimatorState => {
  const pen = penOf(state);
  const belief = beliefAtStart(setup, pen, startMs, sdM);
  const since = pen.filter((f) => f.timeMs > startMs);
  return since.reduce<EstimatorState>((s, f) => takePlaneFix(setup, s, f), {
    ...state,
    startMs,
    belief,
    lineReversed: false,
  });
};

/** What the receiver has said of the pen; after a start that was none, where the runner stands. */
const penOf = ({ belief, stand }: EstimatorState): readonly PlaneFix[] => {
  if (belief.kind === 'pen') return belief.fixes;
  return stand.last ? [stand.last] : [];
};

/** A start that was found has turned out to be none: the runner waits for it. */
const waitAgain = (state: EstimatorState): EstimatorState => ({
  ...state,
  startMs: null,
  lineReversed: false,
  belief: { kind: 'pen', fixes: penOf(state) },
});

/** The belief of a receiver that woke on the course: where it woke, and the fixes that came since. */
const wokeAt = (
  setup: EstimatorSetup,
  state: EstimatorState,
  line: CourseLine,
  woke: Woke,
): EstimatorState => {
  const track = beginTrack(line, woke.timeMs, woke.alongM, WOKE_SD_M, priorOf(setup));
  const contenders = [{ line, reversed: false, track: { ...track, startMs: woke.startMs }, score: 0 }];
  const next: EstimatorState = {
    ...state,
    startMs: woke.startMs,
    belief: { kind: 'course', contenders, otherWay: null, odometer: beginOdometer(woke.timeMs) },
  };
  return penOf(state).reduce((s, f) => takePlaneFix(setup, s, f), next);
};

const beliefAtStart = (
  setup: EstimatorSetup,
  pen: readonly PlaneFix[],
  startMs: number,
  sdM: number,
): Belief => {
  if (!setup.course) return { kind: 'free', track: beginFree(startMs) };
  const contender = (line: CourseLine, reversed: boolean): Contender => {
    const track = beginTrack(line, startMs, 0, sdM, priorOf(setup));
    return { line, reversed, track, score: 0 };
  };
  const lines = linesFromStart(setup.course, startPlace(pen, startMs));
  const contenders = lines.map(({ line, reversed }) => contender(line, reversed));
  const otherWay = lines.find((l) => l.reversed)?.line ?? null;
  return { kind: 'course', contenders, otherWay, odometer: beginOdometer(startMs) };
};

const takePlaneFix = (setup: EstimatorSetup, state: EstimatorState, fix: PlaneFix): EstimatorState => {
  const { belief } = state;
  if (belief.kind === 'pen') {
    const fixes = [...belief.fixes.filter((f) => fix.timeMs - f.timeMs < PEN_S * 1000), fix];
    const waiting: EstimatorState = { ...state, belief: { kind: 'pen', fixes }, lastUsedMs: fix.timeMs };
    // A recording states no accuracy; it begins where its runner pressed, and that was at the start.
    const isLive = state.reading.usualAccuracyM !== null;
    const woke = setup.course && isLive ? wokeOnCourse(setup.course, fixes) : null;
    if (woke && setup.course) return wokeAt(setup, waiting, setup.course, woke);
    const startMs = findStartMs(setup.course, fixes, priorOf(setup).lagS);
    return startMs === null ? waiting : startAt(setup, waiting, startMs, FOUND_START_SD_M);
  }
  const stand = standOn(state.stand, fix);
  const sinceStartMs = fix.timeMs - (state.startMs ?? fix.timeMs);
  if (!state.startGiven && backInPen(setup.course, belief, stand, sinceStartMs))
    return waitAgain({ ...state, stand, lastUsedMs: fix.timeMs });
  return takeRunningFix(setup, { ...state, stand }, fix);
};

const takeRunningFix = (setup: EstimatorSetup, state: EstimatorState, fix: PlaneFix): EstimatorState => {
  const { belief } = state;
  if (belief.kind === 'pen') return state;
  if (belief.kind === 'free') {
    const { track, used } = takeFreeFix(belief.track, fix, priorOf(setup));
    return usedOrNot({ ...state, belief: { kind: 'free', track } }, fix, used);
  }
  const taken = takeCourseFix(belief, fix, {
    unseenS: (fix.timeMs - (state.lastUsedMs ?? fix.timeMs)) / 1000,
    sinceStartS: (fix.timeMs - (state.startMs ?? fix.timeMs)) / 1000,
    startGiven: state.startGiven,
    stand: state.stand,
    prior: priorOf(setup),
  });
  const alone = taken.belief.kind === 'course' && taken.belief.contenders.every((c) => c.reversed);
  const next: EstimatorState = {
    ...state,
    belief: taken.belief,
    lineReversed: state.lineReversed || alone,
  };
  return usedOrNot(next, fix, taken.used);
};

const usedOrNot = (state: EstimatorState, fix: PlaneFix, used: boolean): EstimatorState =>
  used ? { ...state, lastUsedMs: fix.timeMs } : { ...state, skipped: state.skipped + 1 };

/** So soon after the start a receiver may still have to find its satellites; later what is believed rests on more. */
const WAKES_WITHIN_S = 300;

/** The receiver is only now to be believed: what it said before is forgotten, but for a start that was given. */
const begunAnew = (setup: EstimatorSetup, state: EstimatorState, nowMs: number): EstimatorState => {
  if (nowMs - (state.startMs ?? nowMs) > 1000 * WAKES_WITHIN_S) return state;
  const blank: EstimatorState = { ...state, stand: noStand, belief: { kind: 'pen', fixes: [] } };
  if (!state.startGiven || state.startMs === null) return { ...blank, startMs: null, lineReversed: false };
  return { ...startAt(setup, blank, state.startMs, START_SD_M), lastUsedMs: state.startMs };
};

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
  const { reading, speedMps: readMps, extraSdM, wokeUp } = readFix.take(state.reading, fix);
  const { pod, speedMps } = withPod(state, readMps, arrival.takenMs);
  return takePlaneFix(
    setup,
    { ...(wokeUp ? begunAnew(setup, seen, arrival.takenMs) : seen), plane, reading, pod },
    {
      timeMs: arrival.takenMs,
      eastM: eastM(plane, fix),
      northM: northM(plane, fix),
      speedMps,
      extraSdM,
    },
  );
};

/**
 * What the runner says of the start stands above what was found; said twice, unless the race is long under way. Pressed
 * late it is when the own clock begins, and no place.
 */
const takeStart = (setup: EstimatorSetup, state: EstimatorState, atMs: number): EstimatorState => {
  const given = { ...state, startGiven: true };
  if (state.startMs === null) return startAt(setup, given, atMs, START_SD_M);
  if (state.startGiven && atMs - state.startMs >= RESTART_S * 1000) return state;
  return !state.startGiven && isUnderWay(setup.course, state.belief, state.stand)
    ? { ...given, startMs: atMs }
    : startAt(setup, given, atMs, START_SD_M);
};

/** Nobody has started before the gun: what was found before it, by a runner who is in the pen now, was a warm-up. */
const takeGun = (setup: EstimatorSetup, state: EstimatorState, gunMs: number): EstimatorState => {
  const heard = { ...state, gunMs };
  return !state.startGiven && gunInPen(setup.course, state.belief, state.stand) ? waitAgain(heard) : heard;
};

/** Takes one input in; pure. */
export const absorb = (setup: EstimatorSetup, state: EstimatorState, input: Input): EstimatorState => {
  if (input.type === 'fix') return takeFixInput(setup, state, input.fix, input.atMs);
  if (input.type === 'motion') return takeSteps(state, input);
  if (input.type === 'footPod') return takePod(state, input, setup.pod);
  if (input.type !== 'event') return state;
  switch (input.event) {
    case 'gun':
      return state.gunMs === null ? takeGun(setup, state, input.atMs) : state;
    case 'start':
      return takeStart(setup, state, input.atMs);
    case 'stop':
      return state.stopMs === null ? { ...state, stopMs: input.atMs } : state;
    case 'marker':
      return takePress(setup, state, input.atMs);
    default:
      return state;
  }
};
