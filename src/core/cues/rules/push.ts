import { decimal, type Message, message } from '../../units/message.ts';
import { normalBelow } from '../../units/normal.ts';
import { M_PER_KM } from '../../units/units.ts';
import { crossingMs } from '../crossing.ts';
import { type Cue, type Found, IMPORTANCE } from '../cue.ts';
import { isReckoned, type Moment } from '../moment.ts';
import { goalPaceSPerKm } from '../race.ts';
import { aheadFor, paceFor } from '../rounding.ts';
import { LOOK_AHEAD_MS } from '../scheduler.ts';
import { isSaid, type Talk } from '../talk.ts';

/**
 * Push. What: go now, the pace it takes, how far it is, and the drift. Why now: the plan's push begins; or the end is
 * near and a push would still bring the goal. Important: it is what the runner has saved for. True for half a minute.
 * Short: the pace alone.
 *
 * Only if the numbers allow it: the runner must be likely to hold the pace, judged by how they ran the last minutes.
 * - Where the plan has a push: at its begin, at the pace that brings the plan's time, if that can be held; else at the
 *   planned pace, if that can; else nothing is said, and the runner is not told to quicken for not pushing.
 * - Where it has none: in the last part, once, if the goal is slipping away and can still be reached; and on a full
 *   talk level, with a kilometre or so to go and the goal safe, for those who want to empty the tank.
 */
export interface PushWatch {
  readonly done: boolean;
  /** The plan's push has begun and was not offered. */
  readonly withheld: boolean;
}

/**
 * What a runner can add near the end and keep to the line: about 3 %, give or take 1.5 %. Our judgement, no source: the
 * field as a whole adds nothing (Nikolaidis et al. 2019: no end spurt), so more should not be asked for.
 */
const RESERVE = 0.03;
const RESERVE_SD = 0.015;
const LIKELY = 0.5;
const SHELF_LIFE_MS = 30_000;
/** The last part: from here on a push without a plan is thought of, and not in the last few hundred metres. */
const LAST_PART = 0.85;
const TOO_LATE_M = 500;
/** The goal is slipping away below, and safe above. */
const SLIPPING = 0.4;
const SAFE = 0.9;
/** A push with the goal safe: so far from the line, so much quicker. */
const FREE_FROM_M = 1200;
const FREE_GAIN = 0.02;

export const beginPush: PushWatch = { done: false, withheld: false };

/** When the plan's push begins; Infinity when it has, or there is none. */
export const nextPushMs = (watch: PushWatch, moment: Moment): number => {
  const { push } = moment.race.plan;
  return watch.done || push === null ? Number.POSITIVE_INFINITY : crossingMs(moment, push.fromM);
};

/** Is a pace likely to be held to the line? `gain`: how much quicker it is than how the runner has run. */
const canHold = (gain: number): boolean => normalBelow((RESERVE - gain) / RESERVE_SD) >= LIKELY;

const cueAt = (moment: Moment, paceSPerKm: number, free: boolean, why: Message): Cue => {
  const { race, nowMs, progress, aheadS, aheadSdS } = moment;
  return {
    topic: free ? 'freePush' : 'push',
    saying: {
      kind: 'push',
      pace: paceFor(paceSPerKm, race.plan.unit),
      remainingM: Math.round(race.plan.distanceM - progress.distanceM),
      ahead: aheadFor(aheadS, aheadSdS, isReckoned(moment)),
    },
    importance: IMPORTANCE.push,
    manner: 'routine',
    dueMs: nowMs,
    expiresMs: nowMs + SHELF_LIFE_MS,
    onlyShort: false,
    spare: false,
    atM: race.plan.push?.fromM ?? null,
    aheadS,
    aheadSdS,
    distanceM: progress.distanceM,
    why,
  };
};

/** Seconds that the rest takes at goal pace by the runner's way of running now, and how far it is. */
const restOf = (
  moment: Moment,
): { readonly asNowS: number; readonly remainingM: number; readonly planS: number } => {
  const { race, progress, keeping } = moment;
  const remainingM = Math.max(1, race.plan.distanceM - progress.distanceM);
  const planS = race.totalS - race.schedule.timeAtS(progress.distanceM);
  const { push } = race.plan;
  const pushing =
    push && progress.distanceM >= push.fromM - 1 ? (push.quickerSPerKm * remainingM) / M_PER_KM : 0;
  return { asNowS: (planS + pushing) / Math.max(0.1, keeping.rate), remainingM, planS };
};

const planned = (moment: Moment): Cue | null => {
  const { asNowS, remainingM, planS } = restOf(moment);
  const neededS = Math.min(planS, planS + moment.aheadS);
  for (const restS of [neededS, planS]) {
    const gain = asNowS / Math.max(1, restS) - 1;
    if (canHold(gain))
      return cueAt(
        moment,
        (restS / remainingM) * M_PER_KM,
        false,
        message('push: {percent} % quicker than so far', { percent: decimal(100 * gain, 1) }),
      );
  }
  return null;
};

const unplanned = (moment: Moment, talk: Talk): Cue | null => {
  const { race, progress } = moment;
  const remainingM = race.plan.distanceM - progress.distanceM;
  if (progress.distanceM < LAST_PART * race.plan.distanceM || remainingM < TOO_LATE_M) return null;
  const { goalChance, neededPaceSPerKm } = moment.drift();
  const { asNowS } = restOf(moment);
  if (goalChance < SLIPPING && neededPaceSPerKm !== null) {
    const gain = asNowS / ((neededPaceSPerKm / M_PER_KM) * remainingM) - 1;
    return canHold(gain) ? cueAt(moment, neededPaceSPerKm, false, message('the goal is in reach')) : null;
  }
  if (goalChance < SAFE || remainingM > FREE_FROM_M || !isSaid(talk, 'freePush')) return null;
  return cueAt(
    moment,
    (goalPaceSPerKm(race) / moment.keeping.rate) * (1 - FREE_GAIN),
    true,
    message('time in hand'),
  );
};

export const lookForPush = (watch: PushWatch, moment: Moment, talk: Talk): Found<PushWatch> | null => {
  if (watch.done) return null;
  if (moment.race.plan.push === null) {
    const cue = unplanned(moment, talk);
    return cue && { watch: { done: true, withheld: false }, cue };
  }
  if (nextPushMs(watch, moment) > moment.nowMs + LOOK_AHEAD_MS) return null;
  const cue = planned(moment);
  return { watch: { done: true, withheld: cue === null }, cue };
};

/** How much slower than the schedule is fine because the push was not offered, as a share of the pace. */
export const letOff = (watch: PushWatch, { race }: Moment): number => {
  const { push } = race.plan;
  return watch.withheld && push !== null ? Math.max(0, push.quickerSPerKm / goalPaceSPerKm(race)) : 0;
};
