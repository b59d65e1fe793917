import { type Contender, leaderOf, takeFixAll } from '../../estimate/contenders.ts';
import { distanceOf, speedOf, speedVarOf } from '../../estimate/courseState.ts';
import { beginTrack, beliefOfTrack } from '../../estimate/courseTracker.ts';
import { absorb, progressAt } from '../../estimate/estimator.ts';
import { COURSE_SCALE_MEAN } from '../../estimate/freeFilter.ts';
import type { Input } from '../../estimate/input.ts';
import { expectNewPace } from '../../estimate/newPace.ts';
import type { PlaneFix } from '../../estimate/planeFix.ts';
import { USUAL_RECEIVER } from '../../estimate/receiver.ts';
import type { EstimatorSetup, EstimatorState } from '../../estimate/state.ts';
import { beginStretch, moveAlong, stretchOf } from '../../estimate/stretch.ts';
import { eastM, northM, pointOn } from '../../geo/ruler.ts';
import { findPlace, type Place, type Seen } from './find.ts';
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

interface OnLine {
  readonly laid: LaidLine;
  readonly state: EstimatorState;
}

interface Free {
  readonly distanceM: number;
  readonly varM2: number;
}

interface Passed extends Seen {
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
/** So long and so far back fixes are kept: see find.ts. */
const SEEN_MS = 120_000;
const SEEN_M = 170;
/** How often the runner is looked for on the line. */
const LOOK_MS = 2000;
/** A place found by comparing fixes is no better than their error. */
const FOUND_SD_M = 12;
/** After so long in which fixes have not fitted, the runner may have turned round. */
const TURNED_MS = 6000;
/** ... and, where they are nowhere else on the line, has left it. The receiver's own excursions are shorter, mostly. */
const LEFT_MS = 25_000;
/** So much earlier than the first fix that does not fit, what the line says is still to be trusted. */
const UNNOTICED_MS = 5000;
/** Another place on the line than believed, not the same one a little off. */
const ELSEWHERE_M = 60;

export const beginWay = (course: LaidCourse): Way => ({
  course,
  on: null,
  baseM: 0,
  baseVarM2: 0,
  freeFrom: { distanceM: 0, varM2: 0 },
  seen: [],
  lookedMs: Number.NEGATIVE_INFINITY,
});

const freeAt = (setup: EstimatorSetup, estimate: EstimatorState, atMs: number): Free => {
  const { distanceM, distanceSdM } = progressAt(setup, estimate, atMs);
  return { distanceM: distanceM * OWN_WAY, varM2: distanceSdM ** 2 };
};

/** The way at an instant not before the last input. */
export const wayAt = (way: Way, setup: EstimatorSetup, estimate: EstimatorState, atMs: number): WayNow => {
  const { on, baseM, baseVarM2, freeFrom } = way;
  if (on === null || on.state.belief.kind !== 'course') {
    const { speedMps, speedSdMps } = progressAt(setup, estimate, atMs);
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
    speedMps: Math.max(0, speedOf(g)),
    speedSdMps: Math.sqrt(speedVarOf(g)),
  };
};

/** The belief of each contender changed. */
const withBeliefs = (
  state: EstimatorState,
  change: (g: ReturnType<typeof beginStretch>) => ReturnType<typeof beginStretch>,
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

const lineSetup = (setup: EstimatorSetup, { line }: LaidLine): EstimatorSetup => ({ ...setup, course: line });

/** On a loop the runner is kept near home: a lap further on is the same place. */
const keptHome = (on: OnLine): OnLine => {
  const { lapM, homeM, cornersALap } = on.laid;
  if (lapM === null || on.state.belief.kind !== 'course') return on;
  const atM = distanceOf(leaderOf(on.state.belief.contenders).track.g);
  const laps = Math.floor((atM - homeM) / lapM);
  if (laps === 0) return on;
  const move = (g: ReturnType<typeof beginStretch>): ReturnType<typeof beginStretch> => {
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
  return refusedMs >= LEFT_MS ? leave(looked, setup, estimate, trusted) : looked;
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
