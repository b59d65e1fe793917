import { speedLeftMps, usedBy } from './endurance.ts';
import type { Chance } from './random.ts';
import type { Road } from './road.ts';

/** How this runner is spread about the plan. */
export interface Spread {
  /** Expected time for the whole distance at an even effort, on this course, seconds. */
  readonly middleS: number;
  /** Standard deviation of its logarithm: what is not known of the form, and the day. From a prediction. */
  readonly sdLog: number;
  /** Standard deviation of the logarithm of the pace about what is meant, over about a kilometre. */
  readonly wanderSd: number;
  /** Mean loss at a water station, seconds. */
  readonly stationS: number;
  /** By how much more than usual this runner slows from the first half to the second, as a share; absent: by nothing. */
  readonly fadeMore?: number;
}

/** What became of one run. */
export interface Outcome {
  readonly finishS: number;
  /** The last place from where the goal was still to be had by the plan; null where it was made. */
  readonly lostAtM: number | null;
}

/* All of these: common practice or judgement, no source. */
/** Wander fades over this distance: a kilometre board brings a runner back to the plan. */
const WANDER_M = 1000;
/** A runner who is off the schedule makes up for it over this distance, by no more than this part of the pace. */
const MAKE_UP_M = 3000;
const MAKE_UP_MOST = 0.01;
/**
 * Nobody feels early what is left: the plan is kept until it asks for more than the legs have by this part of the pace,
 * less and less towards the line. So who is a few per cent too quick finds out about half-way, and slows by twice as much.
 */
const BLIND_AT_START = 0.1;
/** In the last tenth everybody knows, and gives what is left where the goal asks for it. */
const LAST_PART = 0.1;
const LAST_LIFT = 1.05;

const clamp = (x: number, most: number): number => Math.min(most, Math.max(-most, x));

/** One run of the plan. Draws the same amount of chance whatever happens, so that plans compare run by run. */
export const runOnce = (road: Road, spread: Spread, chance: Chance): Outcome => {
  const { distanceM, stretchM } = road;
  const { fadeMore = 0 } = spread;
  const capableMps = distanceM / (spread.middleS * Math.exp(spread.sdLog * chance.normal()));
  const keep = Math.exp(-stretchM / WANDER_M);
  const renew = spread.wanderSd * Math.sqrt(1 - keep * keep);
  // What the plan wins over the goal may be lost without losing the goal.
  const planFinishS = road.planAtS.at(-1) ?? 0;
  const slackS = Math.max(0, road.goalOwnS - planFinishS);
  let wander = spread.wanderSd * chance.normal();
  let left = 1;
  let timeS = 0;
  let fading = false;
  let goodToM = 0;
  for (let i = 0; i < road.planS.length; i++) {
    const leftM = distanceM - i * stretchM;
    const hill = road.hill[i] ?? 1;
    const planMps = stretchM / (road.planS[i] ?? 1);
    // Legs that fade have a little more at first and as much less at last: halves then differ by the share, at one effort.
    const capableHereMps =
      capableMps * (1 + fadeMore * (leftM / distanceM - stretchM / distanceM / 2 - 0.5) * 2);
    const aheadS = (road.planAtS[i - 1] ?? 0) - timeS;
    const makeUp = clamp((-aheadS * planMps) / MAKE_UP_M, MAKE_UP_MOST);
    // Speeds below are level speeds: what the legs spend.
    const askedMps = planMps * hill * (1 + makeUp);
    const leftMps = speedLeftMps(left, leftM, distanceM, capableHereMps);
    const last = leftM <= LAST_PART * distanceM;
    // Noticed by what all the rest asks, not by the pace of the moment: an opening feels easy whatever it costs.
    const restMps = leftM / (planFinishS - (road.planAtS[i - 1] ?? 0));
    fading ||= leftMps < restMps * (1 - (BLIND_AT_START * leftM) / distanceM);
    const lift = last && aheadS < -slackS ? LAST_LIFT : 1;
    const meantMps = fading
      ? Math.min(leftMps, askedMps)
      : Math.min(askedMps * lift, Math.max(askedMps, leftMps));
    const levelMps = meantMps * Math.exp(wander);
    left -= usedBy(stretchM, levelMps, distanceM, capableHereMps);
    // Between nothing and twice the mean, evenly.
    const lostS = 2 * spread.stationS * chance.uniform() * (road.waters[i] ?? 0);
    timeS += stretchM / (levelMps / hill) + lostS;
    if (timeS <= (road.planAtS[i] ?? 0) + slackS) goodToM = (i + 1) * stretchM;
    wander = keep * wander + renew * chance.normal();
  }
  return { finishS: timeS, lostAtM: timeS <= road.goalOwnS ? null : goodToM };
};
