import type { Cue } from '../cues/cue.ts';
import { aheadFor } from '../cues/rounding.ts';
import { LOOK_AHEAD_MS } from '../cues/scheduler.ts';
import { message } from '../units/message.ts';
import type { DistanceUnit } from '../units/units.ts';
import { cueOf, IMPORTANCE } from './cues.ts';
import type { Going } from './going.ts';
import { endsByPress, halfMs, type LegNow, leftOf, legEndMs } from './legNow.ts';

/** Legs shorter than this have no half-way and no last minute worth a word. */
const HALF_FROM_S = 240;
const HALF_FROM_M = 1000;
const LAST_FROM_S = 150;
/** A rest is told when this much of it is left, the longest that fits into half of it. */
const REST_LEFT_S = [60, 30] as const;
const SHELF_LIFE_MS = 8000;

type Ahead = { readonly aheadS: number; readonly sdS: number } | null;
const isRest = ({ leg }: LegNow): boolean => leg.kind === 'recovery';

const isLong = ({ leg: { extent } }: LegNow): boolean =>
  (extent.by === 'time' && extent.timeS >= HALF_FROM_S) ||
  (extent.by === 'distance' && extent.distanceM >= HALF_FROM_M);

/** When half of the leg is done, if that is now; null else. */
export const halfDue = (now: LegNow, going: Going | null, nowMs: number): number | null => {
  if (isRest(now) || !isLong(now)) return null;
  const dueMs = halfMs(now, going, nowMs);
  return dueMs <= nowMs + LOOK_AHEAD_MS ? Math.max(dueMs, nowMs) : null;
};

export const halfCue = (dueMs: number, ahead: Ahead): Cue =>
  cueOf({
    topic: 'remaining',
    saying: { kind: 'remaining', left: 'half', ahead: ahead && aheadFor(ahead.aheadS, ahead.sdS) },
    importance: IMPORTANCE.remaining,
    manner: 'mark',
    dueMs,
    lastsMs: SHELF_LIFE_MS,
    ahead,
    why: message('half of the leg'),
  });

/** How much of the leg is left when it is told, seconds; null where it is not. */
const toldAtS = (now: LegNow): number | null => {
  const { extent } = now.leg;
  if (extent.by === 'press') return null;
  const lengthS = extent.by === 'time' ? extent.timeS : Number.POSITIVE_INFINITY;
  if (isRest(now)) return REST_LEFT_S.find((s) => lengthS >= 2 * s) ?? null;
  return extent.by === 'time' ? (lengthS >= LAST_FROM_S ? 60 : null) : isLong(now) ? 60 : null;
};

/** The last minute of a leg, or what is left of a rest, if that is now. */
export const lastDue = (
  now: LegNow,
  going: Going | null,
  nowMs: number,
): { readonly dueMs: number; readonly leftS: number } | null => {
  const leftS = toldAtS(now);
  if (leftS === null) return null;
  const dueMs = legEndMs(now, going, nowMs) - 1000 * leftS;
  return dueMs <= nowMs + LOOK_AHEAD_MS ? { dueMs: Math.max(dueMs, nowMs), leftS } : null;
};

export const lastCue = (last: { readonly dueMs: number; readonly leftS: number }, ahead: Ahead): Cue =>
  cueOf({
    topic: 'remaining',
    saying: {
      kind: 'remaining',
      left: { timeS: last.leftS },
      ahead: ahead && aheadFor(ahead.aheadS, ahead.sdS),
    },
    importance: IMPORTANCE.remaining,
    manner: 'mark',
    dueMs: last.dueMs,
    lastsMs: SHELF_LIFE_MS,
    ahead,
    why: message('{s} s left', { s: last.leftS }),
  });

/** What the runner hears who asks: what is left, and how the leg stands. */
export const answerCue = (
  now: LegNow,
  going: Going | null,
  nowMs: number,
  unit: DistanceUnit,
  ahead: Ahead,
): Cue => {
  const left = leftOf(now, going, nowMs);
  const metresStep = 50;
  return cueOf({
    topic: 'answer',
    saying: {
      kind: 'remaining',
      left:
        left === null || endsByPress(now, going)
          ? 'press'
          : 'timeS' in left
            ? { timeS: Math.round(left.timeS) }
            : { distanceM: Math.round(left.distanceM / metresStep) * metresStep, unit },
      ahead: ahead && aheadFor(ahead.aheadS, ahead.sdS),
    },
    importance: IMPORTANCE.answer,
    manner: 'answer',
    dueMs: nowMs,
    lastsMs: 15_000,
    ahead,
    distanceM: going?.distanceM ?? null,
    why: message('asked||why something was said'),
  });
};
