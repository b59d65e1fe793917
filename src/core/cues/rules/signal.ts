import { type Message, message } from '../../units/message.ts';
import { type Cue, type Found, IMPORTANCE } from '../cue.ts';
import { isReckoned, type Moment } from '../moment.ts';
import { aheadFor } from '../rounding.ts';
import type { Saying } from '../saying.ts';

/**
 * Signal. What: fixes have stopped, and from here numbers rest on the pace; later, that they are back, with the drift.
 * Why now: the runner must know which numbers to trust. Important: it changes the meaning of all that follows. Lost is
 * true while it lasts; back is news for a quarter of a minute. Short: the fact alone. And once: the course line was
 * recorded against the race and has been turned round.
 */
export interface SignalWatch {
  /** The runner has been told that the signal is lost. */
  readonly lost: boolean;
  readonly toldMs: number;
  /** How often that was. */
  readonly times: number;
  /** When usable fixes came again after that; null while they do not. */
  readonly backMs: number | null;
  readonly reversed: boolean;
}

/** No fix for so long: an underpass is shorter, a tunnel is longer. */
export const LOST_AFTER_S = 15;
/** Each time it has been told it must last longer: a receiver with habitual gaps is no news. */
const LONGER_EACH = 1 / 3;
const LONGEST = 3;
/** Fixes that come but cannot be used pass within this, mostly: reflections last 10 to 40 s, and the speed still tells. */
const UNUSABLE_AFTER_S = 40;
/** The first fixes behind a tunnel are the worst: believe them after this long. */
const STEADY_MS = 3000;
/** Slow receivers give a fix every eight seconds. */
const FRESH_S = 9;
/** In a street where the signal comes and goes it is told once a minute at most. */
const AGAIN_MS = 60_000;
const SHELF_LIFE_MS = 15_000;

export const beginSignal: SignalWatch = {
  lost: false,
  toldMs: Number.NEGATIVE_INFINITY,
  times: 0,
  backMs: null,
  reversed: false,
};

const cueOf = (moment: Moment, what: (Saying & { kind: 'signal' })['what'], why: Message): Cue => ({
  topic: what === 'back' ? 'signalBack' : 'signal',
  saying: {
    kind: 'signal',
    what,
    ahead: what === 'back' ? aheadFor(moment.aheadS, moment.aheadSdS, isReckoned(moment)) : null,
  },
  importance: IMPORTANCE.signal,
  manner: 'routine',
  dueMs: moment.nowMs,
  expiresMs: moment.nowMs + SHELF_LIFE_MS,
  // Before the first fix there is no pace to go by.
  onlyShort: !Number.isFinite(moment.progress.sinceFixS),
  spare: false,
  atM: null,
  aheadS: moment.aheadS,
  aheadSdS: moment.aheadSdS,
  distanceM: moment.progress.distanceM,
  why,
});

export const lookForSignal = (
  watch: SignalWatch,
  moment: Moment,
  reversed: boolean,
): Found<SignalWatch> | null => {
  const { nowMs, startMs, progress } = moment;
  if (reversed && !watch.reversed)
    return {
      watch: { ...watch, reversed },
      cue: cueOf(moment, 'lineReversed', message('the course line ran against the race')),
    };
  const isFresh = progress.sinceFixS <= FRESH_S && progress.signal !== 'lost';
  if (!watch.lost) {
    const sinceStartS = (nowMs - startMs) / 1000;
    const silentS = Math.min(progress.sinceFixS, sinceStartS);
    const longer = Math.min(LONGEST, 1 + LONGER_EACH * watch.times);
    const hasStopped = Math.min(moment.sinceArrivalS, silentS) >= longer * LOST_AFTER_S;
    if ((!hasStopped && silentS < longer * UNUSABLE_AFTER_S) || nowMs < watch.toldMs + AGAIN_MS) return null;
    return {
      watch: { ...watch, lost: true, toldMs: nowMs, times: watch.times + 1, backMs: null },
      cue: cueOf(moment, 'lost', message('no usable fix for {s} s', { s: Math.round(silentS) })),
    };
  }
  if (!isFresh) return watch.backMs === null ? null : { watch: { ...watch, backMs: null }, cue: null };
  if (watch.backMs === null) return { watch: { ...watch, backMs: nowMs }, cue: null };
  if (nowMs < watch.backMs + STEADY_MS) return null;
  return {
    watch: { ...watch, lost: false, backMs: null },
    cue: cueOf(moment, 'back', message('fixes again')),
  };
};

/** The same cue some seconds later. Null where it is no longer so. */
export const signalAgain = (cue: Cue, moment: Moment, watch: SignalWatch): Cue | null => {
  if (cue.saying.kind !== 'signal' || cue.saying.what === 'lineReversed') return cue;
  const { what } = cue.saying;
  if ((what === 'lost') !== watch.lost) return null;
  return { ...cueOf(moment, what, cue.why), expiresMs: cue.expiresMs };
};
