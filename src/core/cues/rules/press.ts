import { message } from '../../units/message.ts';
import { type Cue, IMPORTANCE } from '../cue.ts';
import type { Moment } from '../moment.ts';

/**
 * A press that found no board. What: there is none near. Why now: the runner pressed and believes that it counted.
 * Important like an answer, for it is one. True for some seconds.
 */
const SHELF_LIFE_MS = 10_000;

export const noBoardCue = ({ nowMs, progress }: Moment): Cue => ({
  topic: 'answer',
  saying: { kind: 'marker', what: 'noBoard' },
  importance: IMPORTANCE.answer,
  manner: 'answer',
  dueMs: nowMs,
  expiresMs: nowMs + SHELF_LIFE_MS,
  onlyShort: false,
  spare: false,
  atM: null,
  aheadS: null,
  aheadSdS: null,
  distanceM: progress.distanceM,
  why: message('a press with no board near'),
});
