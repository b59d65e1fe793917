import type { Cue, Manner } from '../cues/cue.ts';
import type { Length } from '../cues/practiceSaying.ts';
import { aheadFor, paceFor, timeFor } from '../cues/rounding.ts';
import type { Saying } from '../cues/saying.ts';
import type { Topic } from '../cues/talk.ts';
import type { Extent, Leg, Taking } from '../plan/practicePlan.ts';
import { SUPPLY_NAMES } from '../plan/supplies.ts';
import { type Message, message } from '../units/message.ts';
import { type DistanceUnit, M_PER_KM, metresPer } from '../units/units.ts';
import type { LegResult } from './legNow.ts';

/**
 * What a session says, and what goes before what. The change of a leg is what everything else gives way to; then what
 * the runner asks; then what asks for an act.
 */
export const IMPORTANCE = {
  change: 90,
  answer: 80,
  pen: 75,
  signal: 70,
  heart: 65,
  pace: 60,
  remaining: 50,
  take: 45,
  rep: 40,
} as const;

/** Seconds from the first tick of the countdown to the moment it counts to. */
export const COUNTDOWN_MS = 3000;
/** Legs shorter than this have room for the short form alone. */
const SHORT_LEG_S = 25;
/** Sessions are told to the metre step that a runner can use. */
const METRES_STEP_M = 50;

interface Draft {
  readonly topic: Topic;
  readonly saying: Saying;
  readonly importance: number;
  readonly manner: Manner;
  readonly dueMs: number;
  readonly lastsMs: number;
  readonly why: Message;
  readonly onlyShort?: boolean;
  readonly ahead?: { readonly aheadS: number; readonly sdS: number } | null;
  readonly distanceM?: number | null;
}

/** A cue of a session: no place on a course belongs to it. */
export const cueOf = (d: Draft): Cue => ({
  topic: d.topic,
  saying: d.saying,
  importance: d.importance,
  manner: d.manner,
  dueMs: d.dueMs,
  expiresMs: d.dueMs + d.lastsMs,
  onlyShort: d.onlyShort ?? false,
  spare: false,
  atM: null,
  aheadS: d.ahead?.aheadS ?? null,
  aheadSdS: d.ahead?.sdS ?? null,
  distanceM: d.distanceM ?? null,
  why: d.why,
});

const lengthOf = (extent: Extent, unit: DistanceUnit): Length | 'press' => {
  if (extent.by === 'press') return 'press';
  return extent.by === 'time'
    ? { timeS: Math.round(extent.timeS) }
    : { distanceM: Math.round(extent.distanceM / METRES_STEP_M) * METRES_STEP_M, unit };
};

const legSaying = (leg: Leg, unit: DistanceUnit, tone: 'countdown' | 'leg'): Saying => ({
  kind: 'leg',
  what: leg.kind,
  rep: leg.rep,
  length: lengthOf(leg.extent, unit),
  target:
    leg.target.by === 'pace'
      ? paceFor(leg.target.paceSPerKm, unit)
      : leg.target.by === 'effort'
        ? leg.target.effort
        : null,
  tone,
});

/** A leg begins. Counted in where the moment is known beforehand. */
export const legCue = (leg: Leg, unit: DistanceUnit, changeMs: number, counted: boolean): Cue =>
  cueOf({
    topic: 'leg',
    saying: legSaying(leg, unit, counted ? 'countdown' : 'leg'),
    importance: IMPORTANCE.change,
    manner: counted ? 'mark' : 'answer',
    dueMs: counted ? changeMs - COUNTDOWN_MS : changeMs,
    lastsMs: COUNTDOWN_MS + 8000,
    onlyShort: leg.extent.by === 'time' && leg.extent.timeS < SHORT_LEG_S,
    why: counted ? message('end of the leg before') : message('begin of a leg'),
  });

/** The session ends. */
export const doneCue = (
  unit: DistanceUnit,
  changeMs: number,
  counted: boolean,
  timeS: number,
  distanceM: number | null,
): Cue =>
  cueOf({
    topic: 'done',
    saying: {
      kind: 'done',
      tone: counted ? 'countdown' : 'finish',
      timeS: timeFor(timeS, 0),
      distance:
        distanceM === null
          ? null
          : { tenths: Math.min(1000, Math.round((distanceM * 10) / metresPer(unit))), unit },
    },
    importance: IMPORTANCE.change,
    manner: counted ? 'mark' : 'answer',
    dueMs: counted ? changeMs - COUNTDOWN_MS : changeMs,
    lastsMs: 60_000,
    distanceM,
    why: message('end of the session'),
  });

/** A pace is worth a word when its standard deviation is below this, seconds per kilometre. */
const PACE_SD_S = 6;
/** Too short to have a result. */
const LEAST_RESULT_S = 60;

/** The result of a leg that asked for something; null where there is none to tell. */
export const repCue = (result: LegResult, unit: DistanceUnit): Cue | null => {
  const { leg, startMs, endMs, distanceM, distanceSdM, aheadS, aheadSdS } = result;
  const timeS = (endMs - startMs) / 1000;
  const asks = leg.kind === 'work' || leg.kind === 'opening' || leg.kind === 'goal pace';
  if (!asks || timeS < LEAST_RESULT_S || distanceM === null || distanceM < 1) return null;
  const paceSPerKm = (timeS / distanceM) * M_PER_KM;
  const isKnown = (paceSPerKm * distanceSdM) / distanceM < PACE_SD_S;
  return cueOf({
    topic: 'rep',
    saying: {
      kind: 'rep',
      count: leg.rep?.count ?? null,
      pace: isKnown ? paceFor(paceSPerKm, unit) : null,
      ahead: aheadS === null ? null : aheadFor(aheadS, aheadSdS),
    },
    importance: IMPORTANCE.rep,
    manner: 'routine',
    dueMs: endMs,
    lastsMs: 60_000,
    ahead: aheadS === null ? null : { aheadS, sdS: aheadSdS },
    distanceM,
    why: message('{s} s, {distance} m', { s: Math.round(timeS), distance: Math.round(distanceM) }),
  });
};

/** Something to take now. */
export const takeCue = ({ item }: Taking, nowMs: number): Cue =>
  cueOf({
    topic: item === 'water' ? 'station' : 'fuel',
    saying:
      item === 'water'
        ? { kind: 'station', offers: ['water'], inM: 0 }
        : { kind: 'fuel', item, inM: 0, withWater: false },
    importance: IMPORTANCE.take,
    manner: 'routine',
    dueMs: nowMs,
    lastsMs: 60_000,
    why: message('{item} in the plan of the session', { item: SUPPLY_NAMES[item] }),
  });
