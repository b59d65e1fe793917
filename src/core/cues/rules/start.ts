import { decimal, message } from '../../units/message.ts';
import { type Cue, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import { goalPaceSPerKm } from '../race.ts';
import { paceFor, timeFor } from '../rounding.ts';

/**
 * Start. What: the clock runs; goal and pace. Why now: the runner must know that their crossing of the line was seen; if
 * the start was found in arrears, all the more. Important: nearly everything else counts from it. True for half a minute.
 * Short where the plan has an opening: its pace comes next, and two paces in one breath would be mixed up.
 */
const SHELF_LIFE_MS = 30_000;
/** Whoever crossed the line longer ago than this knows it. */
const LATE_S = 60;

export const startCue = ({ race, nowMs, startMs }: Moment): Cue | null => {
  const lateS = (nowMs - startMs) / 1000;
  if (lateS > LATE_S) return null;
  const { plan } = race;
  return {
    topic: 'start',
    saying: {
      kind: 'start',
      goalS: timeFor(plan.goalS, 0),
      pace: paceFor(goalPaceSPerKm(race), plan.unit),
    },
    importance: IMPORTANCE.start,
    manner: 'mark',
    dueMs: nowMs,
    expiresMs: nowMs + SHELF_LIFE_MS,
    onlyShort: plan.opening !== null,
    spare: false,
    atM: 0,
    aheadS: null,
    aheadSdS: null,
    distanceM: 0,
    why:
      lateS < 1
        ? message('start||why something was said')
        : message('start found {s} s after', { s: decimal(lateS, 1) }),
  };
};
