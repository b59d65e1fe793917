import { type Contender, leaderOf, takeFixAll } from '../../estimate/contenders.ts';
import { distanceOf } from '../../estimate/courseState.ts';
import { beginTrack } from '../../estimate/courseTracker.ts';
import { absorb } from '../../estimate/estimator.ts';
import type { Input } from '../../estimate/input.ts';
import type { Gaussian } from '../../estimate/kalman.ts';
import type { PlaneFix } from '../../estimate/planeFix.ts';
import { USUAL_RECEIVER } from '../../estimate/receiver.ts';
import type { EstimatorSetup, EstimatorState } from '../../estimate/state.ts';
import { beginStretch, moveAlong } from '../../estimate/stretch.ts';
import { eastM, northM, pointOn } from '../../geo/ruler.ts';
import { findPlace, offLineM, type Place } from './find.ts';
import type { LaidLine } from './lay.ts';
import { freeAt, type OnLine, type Passed, type Way, wayAt, withBeliefs } from './way.ts';

/** Onto the line, along it, off it and on again, by the fixes as they come. */

/** So long and so far back fixes are kept: see find.ts. */
const SEEN_MS = 120_000;
const SEEN_M = 170;
/** How often the runner is looked for on the line. */
const LOOK_MS = 2000;
/** A place found by comparing fixes is no better than their error. */
const FOUND_SD_M = 12;
/** After so long in which fixes have not fitted, the runner may have turned round. */
const TURNED_MS = 6000;
/** ... and has left the line where they are nowhere else on it: the receiver's own excursions are shorter than this, */
const LEFT_MS = 35_000;
/** or not so far from any part of it. */
const LEFT_M = 50;
/** So much earlier than the first fix that does not fit, what the line says is still to be trusted. */
const UNNOTICED_MS = 5000;
/** Another place on the line than believed, not the same one a little off. */
const ELSEWHERE_M = 60;

const lineSetup = (setup: EstimatorSetup, { line }: LaidLine): EstimatorSetup => ({ ...setup, course: line });

/** On a loop the runner is kept near home: a lap further on is the same place. */
const keptHome = (on: OnLine): OnLine => {
  const { lapM, homeM, cornersALap } = on.laid;
  if (lapM === null || on.state.belief.kind !== 'course') return on;
  const atM = distanceOf(leaderOf(on.state.belief.contenders).track.g);
  const laps = Math.floor((atM - homeM) / lapM);
  if (laps === 0) return on;
  const move = (g: Gaussian): Gaussian => {
    const next = { x: g.x.slice(), P: g.P };
    moveAlong(next, -laps * lapM);
    return next;
  };
  return { laid: on.laid, state: withBeliefs(on.state, move, -laps * cornersALap) };
};

const placeOf = ({ laid, state }: OnLine): Place => ({
  laid,
  atM: state.belief.kind === 'course' ? distanceOf(leaderOf(state.belief.contenders).track.g) : 0,
});

/** Onto the line: the tracker begins where the compared fixes did and takes them all in. */
const join = (way: Way, setup: EstimatorSetup, estimate: EstimatorState, { laid, atM }: Place): Way => {
  const now = way.seen.at(-1);
  const { line } = laid;
  if (now === undefined) return way;
  const first = way.seen.find((s) => laid.lapM !== null || atM - (now.freeM - s.freeM) >= 0);
  if (first === undefined) return way;
  const beganM = atM - (now.freeM - first.freeM);
  const track = beginTrack(line, first.fix.timeMs, beganM, FOUND_SD_M, setup.receiver ?? USUAL_RECEIVER);
  const begun: readonly Contender[] = [{ line, reversed: false, track, score: 0 }];
  const contenders = way.seen
    .slice(way.seen.indexOf(first))
    .reduce((all, { fix }) => takeFixAll(all, fix).contenders, begun);
  const told = wayAt(way, setup, estimate, now.fix.timeMs);
  const state: EstimatorState = { ...estimate, plane: line.plane, belief: { kind: 'course', contenders } };
  return {
    ...way,
    on: keptHome({ laid, state: withBeliefs(state, beginStretch) }),
    baseM: told.distanceM,
    baseVarM2: told.distanceSdM ** 2,
  };
};

/** Off the line, the way counted on from what was told at a fix of before; absent: from what is told now. */
const leave = (way: Way, setup: EstimatorSetup, estimate: EstimatorState, from?: Passed): Way => {
  const now = way.seen.at(-1);
  if (now === undefined) return way;
  const told = wayAt(way, setup, estimate, now.fix.timeMs);
  const sinceM = from === undefined ? 0 : now.freeM - from.freeM;
  return {
    ...way,
    on: null,
    baseM: from === undefined ? told.distanceM : from.wayM + sinceM,
    baseVarM2: told.distanceSdM ** 2,
    freeFrom: freeAt(setup, estimate, now.fix.timeMs),
  };
};

/** Looks whether the runner is still where the line has them. */
const lookOnLine = (way: Way, setup: EstimatorSetup, estimate: EstimatorState, on: OnLine): Way => {
  const now = way.seen.at(-1);
  if (now === undefined || on.state.belief.kind !== 'course') return way;
  const { laid } = on;
  const place = placeOf(on);
  if (laid.lapM === null && place.atM >= laid.line.officialM) return leave(way, setup, estimate);
  const { firstRefused } = leaderOf(on.state.belief.contenders).track;
  if (firstRefused === null) return way;
  const refusedMs = now.fix.timeMs - firstRefused.timeMs;
  if (refusedMs < TURNED_MS || now.fix.timeMs < way.lookedMs + LOOK_MS) return way;
  const trusted = way.seen.findLast((s) => s.fix.timeMs <= firstRefused.timeMs - UNNOTICED_MS);
  const looked = { ...way, lookedMs: now.fix.timeMs };
  const found = findPlace(way.course.lines, way.seen);
  if (found !== null && isElsewhere(found, place))
    return join(leave(looked, setup, estimate, trusted), setup, estimate, found);
  const hasLeft = refusedMs >= LEFT_MS || offLineM(laid, now.fix) > LEFT_M;
  if (!hasLeft) return looked;
  // What led away says nothing about the way back.
  return { ...leave(looked, setup, estimate, trusted), seen: [now] };
};

const isElsewhere = (found: Place, believed: Place): boolean => {
  if (found.laid !== believed.laid) return true;
  const apartM = Math.abs(found.atM - believed.atM);
  const { lapM } = found.laid;
  return Math.min(apartM, lapM === null ? apartM : Math.abs(lapM - apartM)) > ELSEWHERE_M;
};

/** The latest fix as the estimate without a line took it. */
const lastFix = ({ belief }: EstimatorState): PlaneFix | null =>
  belief.kind === 'free' && belief.track.stage === 'running' ? belief.track.last : null;

const look = (way: Way, setup: EstimatorSetup, estimate: EstimatorState): Way => {
  const fix = lastFix(estimate);
  const before = way.seen.at(-1);
  if (
    fix === null ||
    estimate.plane === null ||
    fix.timeMs <= (before?.fix.timeMs ?? Number.NEGATIVE_INFINITY)
  )
    return way;
  const { plane } = (way.course.lines[0] as LaidLine).line;
  const ground = pointOn(estimate.plane, fix.eastM, fix.northM);
  const freeM = freeAt(setup, estimate, fix.timeMs).distanceM;
  const wayM = wayAt(way, setup, estimate, fix.timeMs).distanceM;
  const passed = { fix: { ...fix, eastM: eastM(plane, ground), northM: northM(plane, ground) }, freeM, wayM };
  const kept = way.seen.filter((s) => s.fix.timeMs > fix.timeMs - SEEN_MS && s.freeM > freeM - SEEN_M);
  const seen = [...kept, passed];
  const next = { ...way, seen };
  if (next.on !== null) return lookOnLine(next, setup, estimate, next.on);
  if (fix.timeMs < way.lookedMs + LOOK_MS) return next;
  const found = findPlace(way.course.lines, seen);
  const looked = { ...next, lookedMs: fix.timeMs };
  return found === null ? looked : join(looked, setup, estimate, found);
};

/**
 * Takes in what the estimate without a line has just taken in.
 * @param estimate  the estimate with this input in it
 */
export const followWay = (way: Way, setup: EstimatorSetup, estimate: EstimatorState, input: Input): Way => {
  const { on } = way;
  if (on === null || input.type === 'event') return look(way, setup, estimate);
  const state = absorb(lineSetup(setup, on.laid), on.state, input);
  return look({ ...way, on: keptHome({ laid: on.laid, state }) }, setup, estimate);
};
