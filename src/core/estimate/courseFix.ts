import { eastAtM, northAtM } from '../course/line.ts';
import type { Stand } from './backInPen.ts';
import { type Contender, leaderOf, newcomers, takeFixAll } from './contenders.ts';
import * as course from './courseState.ts';
import { finishedAtEnd, inItsOwnMetres } from './lineMetres.ts';
import { isNotTheWay, turnOdometer } from './odometer.ts';
import type { PlaneFix } from './planeFix.ts';
import type { ReceiverPrior } from './receiver.ts';
import type { Belief } from './state.ts';

type CourseBelief = Extract<Belief, { kind: 'course' }>;

/**
 * After this long without a fix that fits, look for the runner elsewhere along the line: before the track's own patience
 * is at its end, and it lets itself be drawn to the nearest place on a part of the course where the runner is not.
 */
const LOOK_ELSEWHERE_S = 30;

/** By then the runner has shown which way along the line they go. */
const DIRECTION_AFTER_S = 120;
const sameWay = (contenders: readonly Contender[]): readonly Contender[] => {
  const { reversed } = leaderOf(contenders);
  return contenders.every((c) => c.reversed === reversed)
    ? contenders
    : contenders.filter((c) => c.reversed === reversed);
};

export interface Circumstances {
  /** Since a fix was last used. */
  readonly unseenS: number;
  readonly sinceStartS: number;
  readonly startGiven: boolean;
  readonly stand: Stand;
  readonly prior: ReceiverPrior;
}

/** A start that was found may be a warm-up, away from the course, for so long. */
const WARM_UP_S = 1200;
/** The line is looked along so far on either side of where the runner is believed, in such steps. */
const ASIDE_REACH_M = 240;
const ASIDE_STEP_M = 20;

/** How far a fix lies off the line there; 0 where the line says nothing of the way. */
const asideOf = ({ line, track, ownMetres }: Contender, fix: PlaneFix): number => {
  const placeM = course.placeOf(track.g);
  if (line.gaps.length > 0 || (ownMetres && placeM > line.officialM)) return 0;
  let leastM = Number.POSITIVE_INFINITY;
  for (let s = placeM - ASIDE_REACH_M; s <= placeM + ASIDE_REACH_M; s += ASIDE_STEP_M)
    leastM = Math.min(leastM, Math.hypot(fix.eastM - eastAtM(line, s), fix.northM - northAtM(line, s)));
  return leastM;
};

/** A fix of a runner on the course, by all the contenders and by the odometer. */
export const takeCourseFix = (
  belief: CourseBelief,
  fix: PlaneFix,
  { unseenS, sinceStartS, startGiven, stand, prior }: Circumstances,
): { readonly belief: Belief; readonly used: boolean } => {
  const { contenders, used } = takeFixAll(belief.contenders, fix);
  // While nothing fits, the other way is not ruled out.
  const settled = used && sinceStartS > DIRECTION_AFTER_S ? sameWay(contenders) : contenders;
  const leader = leaderOf(settled);
  const placeM = used ? course.placeOf(leader.track.g) : null;
  const odometer = belief.odometer
    ? turnOdometer(belief.odometer, fix, placeM, () => asideOf(leader, fix), prior)
    : null;
  const mayBeWarmUp = !startGiven && sinceStartS < WARM_UP_S;
  if (odometer && !mayBeWarmUp && isNotTheWay(odometer))
    return { belief: { kind: 'free', track: odometer.track }, used };
  if (settled.length > 1) return { belief: { ...belief, contenders: settled, odometer }, used };
  if (!used && unseenS > LOOK_ELSEWHERE_S) {
    const others = newcomers(leader, belief.otherWay ?? null, fix, unseenS);
    return { belief: { ...belief, contenders: [...settled, ...others], odometer }, used };
  }
  const stoodMs = stand.first && stand.last ? stand.last.timeMs - stand.first.timeMs : 0;
  const own = used && odometer ? inItsOwnMetres(leader, odometer) : null;
  const ended = finishedAtEnd(leader, fix, stoodMs);
  const reset = own && odometer ? { ...odometer, apartM: 0, seenM: 0, placeM: null } : odometer;
  return { belief: { ...belief, contenders: [ended ?? own ?? leader], odometer: reset }, used };
};
