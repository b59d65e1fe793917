import { type Message, message } from '../../units/message.ts';
import { type Cue, IMPORTANCE } from '../cue.ts';
import { isReckoned, type Moment } from '../moment.ts';
import type { NoticeName } from '../notice.ts';
import { aheadFor } from '../rounding.ts';

/**
 * Notice. What: the page was closed, the sound was gone, the log is not kept, the clock was set, position was refused.
 * Why now: it has just come to be known. Important like the signal: it says what to make of all that follows. True for
 * half a minute. With the drift where something was missed, so that the runner is up to date at once.
 */
const SHELF_LIFE_MS = 30_000;
/** After these the runner has missed something. */
const WITH_DRIFT: readonly NoticeName[] = ['resumed', 'soundBack'];

const REASONS: Readonly<Record<NoticeName, Message>> = {
  resumed: message('the page was closed and has taken the run up again'),
  soundBack: message('the sound was gone and has come back'),
  notStored: message('the device does not take the log'),
  storedAgain: message('the device takes the log again'),
  clockSet: message('the clock of the phone was set'),
  elsewhere: message('another window leads this run'),
  refused: message('position was refused'),
  quiet: message('quiet was asked for'),
  talking: message('the quiet is over'),
};

/** @param moment  null before the start and after the end */
export const noticeCue = (what: NoticeName, moment: Moment | null, nowMs: number): Cue => ({
  topic: 'notice',
  saying: {
    kind: 'notice',
    what,
    ahead:
      moment !== null && WITH_DRIFT.includes(what)
        ? aheadFor(moment.aheadS, moment.aheadSdS, isReckoned(moment))
        : null,
  },
  importance: IMPORTANCE.signal,
  manner: what === 'quiet' || what === 'talking' ? 'answer' : 'routine',
  dueMs: nowMs,
  expiresMs: nowMs + SHELF_LIFE_MS,
  onlyShort: false,
  spare: false,
  atM: null,
  aheadS: moment?.aheadS ?? null,
  aheadSdS: moment?.aheadSdS ?? null,
  distanceM: moment?.progress.distanceM ?? null,
  why: REASONS[what],
});
