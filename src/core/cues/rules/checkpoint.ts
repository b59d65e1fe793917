import { message } from '../../units/message.ts';
import { M_PER_KM, M_PER_MILE } from '../../units/units.ts';
import { isRipe } from '../board.ts';
import { type Crossing, crossingAt, crossingMs, isAnybodysGuess } from '../crossing.ts';
import { type Cue, type Found, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import type { Race } from '../race.ts';
import { aheadFor, timeFor } from '../rounding.ts';
import type { Place } from '../saying.ts';

/**
 * Checkpoint. What: the place, the time through, ahead or behind. Why now: the runner crosses it; the first word falls
 * on the crossing. Important: the plan asks for it by name; only the finish goes before it. True until the next one is
 * near. Short: place and drift.
 *
 * By dead reckoning it is said as long as its moment means something; else it waits until fixes tell or
 * the place is surely passed. It is never left out.
 */
export interface CheckpointWatch {
  readonly next: number;
}

const SHELF_LIFE_MS = 120_000;
/** Passed by this many standard deviations is surely passed. */
const SURELY_Z = 2;
/** A place is a whole kilometre or mile if it is within this. */
const WHOLE_M = 1;
/** There are words up to a hundred units. */
const MOST_TENTHS = 1000;

export const beginCheckpoints: CheckpointWatch = { next: 0 };

const isWhole = (atM: number, unitM: number): boolean =>
  Math.abs(atM - Math.round(atM / unitM) * unitM) < WHOLE_M;

/** Half-way; else the plan's own unit, unless the place is a whole number of the other one (5 km mats in a mile plan). */
export const placeOf = ({ plan }: Race, atM: number): Place => {
  if (Math.abs(atM - plan.distanceM / 2) < WHOLE_M) return { name: 'halfway' };
  const otherWhole =
    plan.unit === 'km'
      ? !isWhole(atM, M_PER_KM) && isWhole(atM, M_PER_MILE)
      : isWhole(atM, M_PER_KM) && !isWhole(atM, M_PER_MILE);
  const unit = otherWhole === (plan.unit === 'km') ? 'mile' : 'km';
  const tenths = Math.round((atM * 10) / (unit === 'km' ? M_PER_KM : M_PER_MILE));
  return { tenths: Math.min(MOST_TENTHS, Math.max(1, tenths)), unit };
};

/** When the next checkpoint is due; Infinity when none is left, or nobody can tell. */
export const nextCheckpointMs = (watch: CheckpointWatch, moment: Moment): number => {
  const atM = moment.race.plan.checkpointsM[watch.next];
  if (atM === undefined || isAnybodysGuess(moment)) return Number.POSITIVE_INFINITY;
  return crossingMs(moment, atM);
};

const cueAt = (moment: Moment, atM: number, crossing: Crossing): Cue => ({
  topic: 'checkpoint',
  saying: {
    kind: 'checkpoint',
    place: placeOf(moment.race, atM),
    timeS: timeFor(crossing.goalClockS, crossing.sdS),
    ahead: aheadFor(crossing.aheadS, crossing.sdS, crossing.reckoned),
  },
  importance: IMPORTANCE.checkpoint,
  manner: 'mark',
  dueMs: crossing.atMs,
  expiresMs: moment.nowMs + SHELF_LIFE_MS,
  onlyShort: false,
  spare: false,
  atM,
  aheadS: crossing.aheadS,
  aheadSdS: crossing.sdS,
  distanceM: Math.max(atM, moment.progress.distanceM),
  why: crossing.reckoned ? message('crossing by dead reckoning') : message('crossing||of a checkpoint'),
});

export const lookForCheckpoint = (watch: CheckpointWatch, moment: Moment): Found<CheckpointWatch> | null => {
  const atM = moment.race.plan.checkpointsM[watch.next];
  if (atM === undefined || !isRipe(moment, atM)) return null;
  const crossing = crossingAt(moment, atM);
  const { distanceM, distanceSdM } = moment.progress;
  if (isAnybodysGuess(moment) && distanceM - SURELY_Z * distanceSdM < atM) return null;
  return { watch: { next: watch.next + 1 }, cue: cueAt(moment, atM, crossing) };
};
