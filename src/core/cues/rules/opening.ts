import { message } from '../../units/message.ts';
import { M_PER_KM } from '../../units/units.ts';
import { crossingMs } from '../crossing.ts';
import { type Found, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import { goalPaceSPerKm } from '../race.ts';
import { paceFor } from '../rounding.ts';

/**
 * Opening. What: the pace to hold, and how far: it is capped. Why now: the start is over and the runner settles into a
 * stride; the first minutes are when races are run too fast. Important, but not before the start itself. True for the
 * first part of the opening. Short: the pace alone. (Too quick even for the opening: see pace.ts.)
 */
export interface OpeningWatch {
  readonly done: boolean;
}

/** Past this share of it the opening needs no announcing. */
const FIRST_PART = 0.5;

export const beginOpening: OpeningWatch = { done: false };

export const lookForOpening = (watch: OpeningWatch, moment: Moment): Found<OpeningWatch> | null => {
  if (watch.done) return null;
  const { race, nowMs, progress } = moment;
  const { opening, unit } = race.plan;
  if (opening === null || progress.distanceM > FIRST_PART * opening.untilM)
    return { watch: { done: true }, cue: null };
  return {
    watch: { done: true },
    cue: {
      topic: 'opening',
      saying: {
        kind: 'opening',
        what: 'hold',
        pace: paceFor(goalPaceSPerKm(race) - opening.quickerSPerKm, unit),
        untilM: opening.untilM,
      },
      importance: IMPORTANCE.opening,
      manner: 'routine',
      dueMs: nowMs,
      expiresMs: Math.min(crossingMs(moment, FIRST_PART * opening.untilM), nowMs + M_PER_KM * 60),
      onlyShort: false,
      spare: false,
      atM: 0,
      aheadS: null,
      aheadSdS: null,
      distanceM: progress.distanceM,
      why: message('opening of {distance} m', { distance: opening.untilM }),
    },
  };
};
