import { message } from '../../units/message.ts';
import { crossingMs, crossingOf, isAnybodysGuess } from '../crossing.ts';
import { type Cue, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import { aheadFor, timeFor } from '../rounding.ts';
import { LOOK_AHEAD_MS } from '../scheduler.ts';

/**
 * Finish. What: the time, ahead or behind of the plan; where the goal is by the gun, the own time too. Why now: the runner crosses the line. Important: above all; the
 * last call of a run. True for a minute. Short: the time alone.
 */
const SHELF_LIFE_MS = 60_000;
/** Gun and own time this near are one. */
const APART_S = 2;
/** At a press of `stop` the line may lie this many standard deviations ahead and the runner still be over it. */
const STOPPED_AT_LINE_Z = 3;
/** Nobody presses before the line; most press within this time behind it. */
const STOPPED_AT_LINE_S = 2;

export const finishCue = (moment: Moment, atMs: number): Cue => {
  const { race, progress } = moment;
  const { distanceM, goalBy } = race.plan;
  const { ownS, goalClockS, aheadS, sdS, reckoned } = crossingOf(moment, distanceM, atMs);
  const apart = goalBy === 'gun' && goalClockS - ownS >= APART_S;
  return {
    topic: 'finish',
    saying: {
      kind: 'finish',
      timeS: timeFor(goalClockS, sdS),
      ahead: aheadFor(aheadS, sdS, reckoned),
      ...(apart ? { ownS: timeFor(ownS, sdS) } : {}),
    },
    importance: IMPORTANCE.finish,
    manner: 'mark',
    dueMs: atMs,
    expiresMs: atMs + SHELF_LIFE_MS,
    onlyShort: false,
    spare: false,
    atM: distanceM,
    aheadS,
    aheadSdS: sdS,
    distanceM: Math.max(progress.distanceM, distanceM),
    why: message('the line'),
  };
};

/** When the line is due; Infinity where nobody can tell: the last word of a run is not guessed. */
export const nextFinishMs = (moment: Moment): number =>
  isAnybodysGuess(moment) ? Number.POSITIVE_INFINITY : crossingMs(moment, moment.race.plan.distanceM);

/** When the runner crosses the line, once that is near enough to be decided; null before. */
export const lookForFinish = (moment: Moment): number | null => {
  const foreseenMs = nextFinishMs(moment);
  return foreseenMs > moment.nowMs + LOOK_AHEAD_MS ? null : Math.max(moment.startMs, foreseenMs);
};

/** The same at a press of `stop`: near the line it was pressed for having crossed it. Null where the runner gave up. */
export const finishAtStop = (moment: Moment): number | null => {
  const { progress, race, nowMs, startMs } = moment;
  const shortM = race.plan.distanceM - progress.distanceM;
  const slackM = STOPPED_AT_LINE_Z * progress.distanceSdM + STOPPED_AT_LINE_S * progress.speedMps;
  return shortM > slackM ? null : Math.max(startMs, Math.min(nowMs, nextFinishMs(moment)));
};
