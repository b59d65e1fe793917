import { message } from '../../units/message.ts';
import { crossingAt, crossingMs } from '../crossing.ts';
import { type Cue, type Found, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import { goalPaceSPerKm } from '../race.ts';
import { aheadFor, paceFor } from '../rounding.ts';
import { LOOK_AHEAD_MS } from '../scheduler.ts';

/**
 * Settle. What: goal pace from here, and how much is in hand. Why now: the opening ends. Important: the target changes.
 * True for half a minute: a late settle is still a settle. Short: the pace alone.
 */
export interface SettleWatch {
  readonly done: boolean;
}

const SHELF_LIFE_MS = 30_000;

export const beginSettle: SettleWatch = { done: false };

/** When the opening ends; Infinity when it has, or there is none. */
export const nextSettleMs = (watch: SettleWatch, moment: Moment): number => {
  const { opening } = moment.race.plan;
  return watch.done || opening === null ? Number.POSITIVE_INFINITY : crossingMs(moment, opening.untilM);
};

export const lookForSettle = (watch: SettleWatch, moment: Moment): Found<SettleWatch> | null => {
  const { opening, unit } = moment.race.plan;
  if (watch.done || opening === null) return null;
  if (nextSettleMs(watch, moment) > moment.nowMs + LOOK_AHEAD_MS) return null;
  const crossing = crossingAt(moment, opening.untilM);
  const cue: Cue = {
    topic: 'settle',
    saying: {
      kind: 'settle',
      pace: paceFor(goalPaceSPerKm(moment.race), unit),
      ahead: aheadFor(crossing.aheadS, crossing.sdS, crossing.reckoned),
    },
    importance: IMPORTANCE.settle,
    manner: 'routine',
    dueMs: crossing.atMs,
    expiresMs: crossing.atMs + SHELF_LIFE_MS,
    onlyShort: false,
    spare: false,
    atM: opening.untilM,
    aheadS: crossing.aheadS,
    aheadSdS: crossing.sdS,
    distanceM: Math.max(opening.untilM, moment.progress.distanceM),
    why: message('end of the opening'),
  };
  return { watch: { done: true }, cue };
};
