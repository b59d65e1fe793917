import type { CourseLine } from '../course/line.ts';
import { eastAtM, northAtM } from '../course/line.ts';
import { leaderOf } from './contenders.ts';
import * as course from './courseState.ts';
import type { PlaneFix } from './planeFix.ts';
import { pastStartM } from './startFinder.ts';
import type { Belief } from './state.ts';

/**
 * A start that was found may have been a warm-up on the course. It shows when the runner stands in the pen again while
 * the belief has them out on the course: then the start is still to come.
 */

/** Where the runner has stayed: the first fix of the stay and the latest. */
export interface Stand {
  readonly first: PlaneFix | null;
  readonly last: PlaneFix | null;
}

export const noStand: Stand = { first: null, last: null };

/** A receiver that stands still creeps by less than this in half a minute; a walker leaves it in ten seconds. */
const STAY_M = 12;
/** Quicker than this by Doppler is no stay. */
const STAY_MPS = 1;

export const standOn = ({ first }: Stand, fix: PlaneFix): Stand => {
  const stays =
    first !== null &&
    (fix.speedMps ?? 0) < STAY_MPS &&
    Math.hypot(fix.eastM - first.eastM, fix.northM - first.northM) < STAY_M;
  return { first: stays ? first : fix, last: fix };
};

/** Pens are long and wide: so far from the line's first point one still stands in one. */
const PEN_REACH_M = 60;
/** The pen lies behind the start line; receivers err. */
const PAST_LINE_M = 15;
/** Held up by the crowd just behind the start line a runner stands for less than this. */
const STOOD_MS = 20_000;
/** A stop so long after the start is no crowd. */
const CROWD_OVER_MS = 60_000;
/** So far from where the belief has them, the runner is not where it has them. */
const ELSEWHERE_M = 100;

/** By the line as it was given: after a jog from elsewhere the leader's own was led on from there. */
const inPen = (line: CourseLine, fix: PlaneFix): boolean =>
  Math.hypot(fix.eastM - eastAtM(line, 0), fix.northM - northAtM(line, 0)) < PEN_REACH_M &&
  pastStartM(line, fix) < PAST_LINE_M;

const offM = (line: CourseLine, alongM: number, fix: PlaneFix): number =>
  Math.hypot(fix.eastM - eastAtM(line, alongM), fix.northM - northAtM(line, alongM));

/** At the end of a lap one passes the start as well: there the belief has them there too, and all is well. */
const isElsewhere = (line: CourseLine, alongM: number, fix: PlaneFix): boolean =>
  alongM < PEN_REACH_M || offM(line, alongM, fix) > ELSEWHERE_M;

const isInPen = (given: CourseLine | null, belief: Belief, fix: PlaneFix): boolean => {
  if (belief.kind !== 'course' || !given) return false;
  const { line, track, reversed } = leaderOf(belief.contenders);
  return inPen(reversed ? line : given, fix) && isElsewhere(line, course.distanceOf(track.g), fix);
};

export const backInPen = (
  given: CourseLine | null,
  belief: Belief,
  { first, last }: Stand,
  sinceStartMs: number,
): boolean =>
  first !== null &&
  last !== null &&
  last.timeMs - first.timeMs >= STOOD_MS &&
  sinceStartMs >= CROWD_OVER_MS &&
  isInPen(given, belief, last);

/** Whether the gun finds the runner in the pen: standing or walking there, whatever start was found before. */
export const gunInPen = (given: CourseLine | null, belief: Belief, { first, last }: Stand): boolean =>
  last !== null && first !== last && isInPen(given, belief, last);

/** Whether a press on start comes late: the runner is past the line, and where the belief has them. */
export const isUnderWay = (given: CourseLine | null, belief: Belief, { last }: Stand): boolean => {
  if (belief.kind !== 'course' || !given || !last) return false;
  const { line, track, reversed } = leaderOf(belief.contenders);
  return !inPen(reversed ? line : given, last) && offM(line, course.distanceOf(track.g), last) < ELSEWHERE_M;
};
