import { rivalTimeAtS } from '../../plan/rival.ts';
import { message } from '../../units/message.ts';
import { crossingAt } from '../crossing.ts';
import { type Cue, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import { aheadFor } from '../rounding.ts';

/**
 * Gap to the rival. What: seconds ahead of their schedule or behind. Why now: a checkpoint was passed, and its call is
 * said first. Less important than all that the plan itself asks for. True for most of a minute. No short form.
 */
const SHELF_LIFE_MS = 40_000;

/** The gap at a checkpoint; null where the plan has no rival. */
export const rivalCue = (moment: Moment, atM: number): Cue | null => {
  const { rival } = moment.race.plan;
  if (rival === undefined) return null;
  const crossing = crossingAt(moment, atM);
  const aheadS = rivalTimeAtS(rival, atM) - crossing.goalClockS;
  return {
    topic: 'rival',
    saying: { kind: 'rival', ahead: aheadFor(aheadS, crossing.sdS, crossing.reckoned) },
    importance: IMPORTANCE.marker,
    manner: 'routine',
    dueMs: crossing.atMs,
    expiresMs: moment.nowMs + SHELF_LIFE_MS,
    onlyShort: false,
    spare: false,
    atM,
    aheadS,
    aheadSdS: crossing.sdS,
    distanceM: Math.max(atM, moment.progress.distanceM),
    why: message('a checkpoint passed, against the rival'),
  };
};
