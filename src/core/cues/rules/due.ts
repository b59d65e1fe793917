import { crossingSdS } from '../crossing.ts';
import { type Cue, type Found, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import type { Race } from '../race.ts';
import { placeOf } from './checkpoint.ts';

/**
 * By the clock. What: no position for minutes, and a pace to go by neither; so each board and checkpoint is told when the
 * plan has the runner there. Why now: whoever sees the board ahead is behind, whoever has it at their back is ahead, and
 * a press at it says by how much. Said once when it begins; it gives way by itself when reception returns.
 */
export interface DueWatch {
  /** The runner has been told; null while position or pace tell where they are. */
  readonly toldMs: number | null;
  /** Places whose time by the plan is past. */
  readonly passed: number;
}

/** As long as dead reckoning has the next crossing within this, it says more than the plan's clock. */
const VAGUE_SD_S = 20;
/** Longer than a cold receiver takes, and than any tunnel. */
const SILENT_S = 60;
const SHELF_LIFE_MS = 8000;
const SAME_PLACE_M = 50;

export const beginDue: DueWatch = { toldMs: null, passed: 0 };

/** Boards and checkpoints, ascending, each place once; not the finish, which the runner sees. */
export const duePlacesM = ({ plan, boards }: Race): readonly number[] =>
  [...plan.checkpointsM, ...boards.map((b) => b.atM)]
    .filter((m) => m < plan.distanceM - SAME_PLACE_M)
    .sort((a, b) => a - b)
    .filter((m, i, all) => i === 0 || m - (all[i - 1] ?? 0) > 1);

export const isByClock = (moment: Moment): boolean => {
  const sinceStartS = (moment.nowMs - moment.startMs) / 1000;
  const silentS = Math.min(moment.progress.sinceFixS, sinceStartS);
  return silentS >= SILENT_S && crossingSdS(moment) > VAGUE_SD_S;
};

const cueOf = (moment: Moment, saying: Cue['saying'], shelfLifeMs: number, why: string): Cue => ({
  topic: saying.kind === 'due' ? 'due' : 'byClock',
  saying,
  importance: IMPORTANCE.signal,
  manner: 'routine',
  dueMs: moment.nowMs,
  expiresMs: moment.nowMs + shelfLifeMs,
  onlyShort: false,
  spare: false,
  atM: null,
  aheadS: null,
  aheadSdS: null,
  distanceM: moment.progress.distanceM,
  why,
});

export const lookForDue = (watch: DueWatch, moment: Moment): Found<DueWatch> | null => {
  const places = duePlacesM(moment.race);
  const goalClockS = (moment.nowMs - moment.goalZeroMs) / 1000;
  let passed = watch.passed;
  while (passed < places.length && moment.race.schedule.timeAtS(places[passed] ?? 0) <= goalClockS) passed++;
  const byClock = isByClock(moment);
  if (!byClock)
    return passed === watch.passed && watch.toldMs === null
      ? null
      : { watch: { passed, toldMs: null }, cue: null };
  if (watch.toldMs === null)
    return {
      watch: { passed, toldMs: moment.nowMs },
      cue: cueOf(moment, { kind: 'byClock' }, 3 * SHELF_LIFE_MS, 'no position, and no pace to go by'),
    };
  if (passed === watch.passed) return null;
  const place = placeOf(moment.race, places[passed - 1] ?? 0);
  return {
    watch: { ...watch, passed },
    cue: cueOf(moment, { kind: 'due', place }, SHELF_LIFE_MS, 'its time by the plan'),
  };
};
