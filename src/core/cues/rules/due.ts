import { type Message, message } from '../../units/message.ts';
import { crossingSdS } from '../crossing.ts';
import { type Cue, type Found, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';
import { aheadFor, timeFor } from '../rounding.ts';
import { placeOf } from './checkpoint.ts';

/**
 * By the clock. What: no position for minutes, and a pace to go by neither; so each board and checkpoint is told when the
 * plan has the runner there. Why now: whoever sees the board ahead is behind, whoever has it at their back is ahead, and
 * a press at it says by how much. Important like the signal: it says what to go by. True for some seconds beside its place.
 * Said once when it begins; it ends by itself when reception returns.
 */
export interface DueWatch {
  /** The runner has been told; null while position or pace tell where they are. */
  readonly toldMs: number | null;
  /** Places whose time by the plan is past. */
  readonly passed: number;
  /** The last place that the runner pressed at; 0 before. */
  readonly pressedM: number;
}

/** As long as dead reckoning has the next crossing within this, it says more than the plan's clock. */
const VAGUE_SD_S = 20;
/** Longer than a cold receiver takes, and than any tunnel. */
const SILENT_S = 60;
const SHELF_LIFE_MS = 8000;

export const beginDue: DueWatch = { toldMs: null, passed: 0, pressedM: 0 };

export const isByClock = (moment: Moment): boolean => {
  const sinceStartS = (moment.nowMs - moment.startMs) / 1000;
  const silentS = Math.min(moment.progress.sinceFixS, sinceStartS);
  return silentS >= SILENT_S && crossingSdS(moment) > VAGUE_SD_S;
};

const cueOf = (moment: Moment, saying: Cue['saying'], shelfLifeMs: number, why: Message): Cue => ({
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
  const { placesM: places } = moment.race;
  const goalClockS = (moment.nowMs - moment.goalZeroMs) / 1000;
  let passed = watch.passed;
  while (passed < places.length && moment.race.schedule.timeAtS(places[passed] ?? 0) <= goalClockS) passed++;
  const byClock = isByClock(moment);
  if (!byClock)
    return passed === watch.passed && watch.toldMs === null
      ? null
      : { watch: { ...watch, passed, toldMs: null }, cue: null };
  if (watch.toldMs === null)
    return {
      watch: { ...watch, passed, toldMs: moment.nowMs },
      cue: cueOf(
        moment,
        { kind: 'byClock' },
        3 * SHELF_LIFE_MS,
        message('no position, and no pace to go by'),
      ),
    };
  if (passed === watch.passed) return null;
  const place = placeOf(moment.race, places[passed - 1] ?? 0);
  return {
    watch: { ...watch, passed },
    cue: cueOf(moment, { kind: 'due', place }, SHELF_LIFE_MS, message('its time by the plan')),
  };
};

/** A human presses within about a second of the board. */
const HUMAN_SD_S = 1;

/**
 * A press while there is nothing but the clock: the place whose time by the plan is nearest, behind the one before, is the
 * place; the time there says how far up or down. It is an answer, for the runner asked for it with the press.
 */
export const lookForPressByClock = (watch: DueWatch, moment: Moment): Found<DueWatch> => {
  const { race, nowMs, goalZeroMs } = moment;
  const clockS = (nowMs - goalZeroMs) / 1000;
  const aheadAtS = (atM: number): number => race.schedule.timeAtS(atM) - clockS;
  const [atM] = race.placesM
    .filter((m) => m > watch.pressedM)
    .toSorted((a, b) => Math.abs(aheadAtS(a)) - Math.abs(aheadAtS(b)));
  if (atM === undefined) return { watch, cue: null };
  const aheadS = aheadAtS(atM);
  return {
    watch: { ...watch, pressedM: atM },
    cue: {
      ...cueOf(moment, { kind: 'byClock' }, SHELF_LIFE_MS, message('pressed at a board, by the clock alone')),
      topic: 'answer',
      manner: 'answer',
      saying: {
        kind: 'checkpoint',
        place: placeOf(race, atM),
        timeS: timeFor(clockS, HUMAN_SD_S),
        ahead: aheadFor(aheadS, HUMAN_SD_S, false),
      },
      importance: IMPORTANCE.answer,
      atM,
      aheadS,
      aheadSdS: HUMAN_SD_S,
      distanceM: atM,
    },
  };
};
