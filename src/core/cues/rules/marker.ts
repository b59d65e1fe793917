import { message } from '../../units/message.ts';
import { isRipe } from '../board.ts';
import { crossingAt } from '../crossing.ts';
import { type Found, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import { aheadFor, timeFor } from '../rounding.ts';
import { splitSdS } from '../splitDoubt.ts';

/**
 * Kilometre or mile split. What: which board, the time since the one before, ahead or behind. Why now: the runner passes
 * the board. Important: least of all; it is the first to give way. True for some seconds, while the board is in sight.
 * Short: without the number of the board. Silent where a checkpoint or another
 * call stands at the same place, and for a while after an ease or quicken, which says as much.
 */
export interface MarkerWatch {
  readonly next: number;
  /** Own time at the board before; 0 at the start. */
  readonly lastOwnS: number;
  readonly lastSdS: number;
  /** Where that was. */
  readonly lastM: number;
}

const SHELF_LIFE_MS = 8000;
/** A split less sure than this is no split. */
const MOST_SD_S = 6;
/** Metres are turned into seconds at no less than a walk. */
const SLOWEST_MPS = 1.2;

export const beginMarkers: MarkerWatch = { next: 0, lastOwnS: 0, lastSdS: 0, lastM: 0 };

export const lookForMarker = (watch: MarkerWatch, moment: Moment): Found<MarkerWatch> | null => {
  const board = moment.race.boards[watch.next];
  if (board === undefined || !isRipe(moment, board.atM)) return null;
  const crossing = crossingAt(moment, board.atM);
  const { race, progress } = moment;
  const next: MarkerWatch = {
    next: watch.next + 1,
    lastOwnS: crossing.ownS,
    lastSdS: crossing.sdS,
    lastM: board.atM,
  };
  const sdS = splitSdS(
    { atM: watch.lastM, sdS: watch.lastSdS },
    { atM: board.atM, sdS: crossing.sdS },
    race.plan.distanceM,
    !race.byPresses,
    Math.max(SLOWEST_MPS, progress.speedMps),
  );
  if (board.taken || sdS > MOST_SD_S) return { watch: next, cue: null };
  return {
    watch: next,
    cue: {
      topic: 'marker',
      saying: {
        kind: 'marker',
        count: board.count,
        unit: race.plan.unit,
        splitS: timeFor(crossing.ownS - watch.lastOwnS, sdS),
        ahead: aheadFor(crossing.aheadS, crossing.sdS, crossing.reckoned),
      },
      importance: IMPORTANCE.marker,
      manner: 'routine',
      dueMs: crossing.atMs,
      expiresMs: crossing.atMs + SHELF_LIFE_MS,
      onlyShort: false,
      spare: true,
      atM: board.atM,
      aheadS: crossing.aheadS,
      aheadSdS: crossing.sdS,
      distanceM: Math.max(board.atM, progress.distanceM),
      why: message('board passed'),
    },
  };
};
