import { message } from '../../units/message.ts';
import { answer, type Cue } from '../cue.ts';
import type { Moment } from '../moment.ts';

/**
 * A press that found no board. What: there is none near. Why now: the runner pressed and believes that it counted.
 * Important like an answer, for it is one. True for some seconds.
 */
const SHELF_LIFE_MS = 10_000;

export const noBoardCue = (moment: Moment): Cue =>
  answer(moment, { kind: 'marker', what: 'noBoard' }, SHELF_LIFE_MS, message('a press with no board near'));
