import { metresPer } from '../units/units.ts';
import { crossingMs, crossingSdS } from './crossing.ts';
import type { Moment } from './moment.ts';
import { LOOK_AHEAD_MS } from './scheduler.ts';

/**
 * When a crossing is ripe to be called. With a course line: as soon as it is foreseen within the look-ahead. Without one
 * a runner who presses at the boards knows better than the fixes: at a board the press is waited for.
 */

/** Whoever pressed at one of the last two boards will press at this one. */
const BOARDS_BACK = 2.5;
/** A press at this board, already taken in, has made the crossing this sure. */
const PRESSED_SD_S = 1;
/** How long past the foreseen crossing the press is waited for, in standard deviations of it and in seconds. */
const WAIT_Z = 1.3;
const WAIT_LEAST_S = 1.5;
const WAIT_MOST_S = 6;
const AT_BOARD_M = 1;

/** How much later than foreseen a crossing is called, waiting for a press, ms; 0 where none is to come. */
const waitMs = (moment: Moment, atM: number): number => {
  const { race, press } = moment;
  if (!race.byPresses || press === null || press.boardM >= atM) return 0;
  const unitM = metresPer(race.plan.unit);
  const isBoard = race.boards.some((b) => Math.abs(b.atM - atM) <= AT_BOARD_M);
  const sdS = crossingSdS(moment);
  if (!isBoard || atM - press.boardM > BOARDS_BACK * unitM || sdS < PRESSED_SD_S) return 0;
  return 1000 * Math.min(WAIT_MOST_S, Math.max(WAIT_LEAST_S, WAIT_Z * sdS));
};

export const isRipe = (moment: Moment, atM: number): boolean => {
  const foreseenMs = crossingMs(moment, atM);
  if (foreseenMs > moment.nowMs + LOOK_AHEAD_MS) return false;
  const pressMs = waitMs(moment, atM);
  return pressMs === 0 || foreseenMs + pressMs <= moment.nowMs;
};
