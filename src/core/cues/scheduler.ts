import type { Call } from './call.ts';
import type { Cue } from './cue.ts';
import type { Topic } from './talk.ts';
import type { Form, Utterance, Voice } from './voicePort.ts';

/** The ear's state: what is being said, when it last fell silent, what waits. */
export interface Speech {
  /** Marks first, then the important first. */
  readonly waiting: readonly Cue[];
  /** End of the last call; calls never overlap. */
  readonly busyUntilMs: number;
  /** End of the last call that routine calls keep their distance from. */
  readonly quietFromMs: number;
  /** Speech spent so far on what is only said while there is speech to spare. */
  readonly spareMs: number;
  /** Cues that found no room while they were true, and so were not said. */
  readonly dropped: number;
  readonly nextId: number;
}

/** A moment that is kept free for something more important. */
export interface Reservation {
  readonly atMs: number;
  /** How much earlier it may come than foreseen. */
  readonly earlyMs: number;
  readonly importance: number;
  /** Routine calls also keep their distance before it. */
  readonly quiet: boolean;
}

/** What speaking depends on besides the cues. */
export interface Ear {
  readonly voice: Voice;
  readonly reserved: readonly Reservation[];
  /** Speech that may have been spent by now on what is only said while there is speech to spare. */
  readonly allowanceMs: number;
}

/** Between two routine calls: less and the runner stops listening. */
export const QUIET_MS = 12_000;
/** Between any two calls: a breath. */
const BREATH_MS = 300;
/** Before a routine call that follows an answer. */
const AFTER_ANSWER_MS = 3000;
/** Time for the device to take up a call decided now. */
const LEAD_MS = 500;
/** The same for what is asked for or comes late, where every tenth counts. */
const PROMPT_LEAD_MS = 150;
/** A call that begins on a moment is decided at most this long before it. */
export const LOOK_AHEAD_MS = 1000;

const BOTH: readonly Form[] = ['long', 'short'];
const SHORT: readonly Form[] = ['short'];

export const silence: Speech = {
  waiting: [],
  busyUntilMs: Number.NEGATIVE_INFINITY,
  quietFromMs: Number.NEGATIVE_INFINITY,
  spareMs: 0,
  dropped: 0,
  nextId: 0,
};

/** Of these only the latest counts: an older one that still waits gives way to it. */
const LATEST_ONLY: readonly (readonly Topic[])[] = [
  ['answer'],
  ['ease', 'quicken', 'tooQuick'],
  ['signal', 'signalBack'],
];

/** Marks before all others and in the order in which they fall; of the rest the important first. */
const inOrder = (a: Cue, b: Cue): number => {
  if (a.manner === 'mark' && b.manner === 'mark') return a.dueMs - b.dueMs;
  return b.importance - a.importance || a.dueMs - b.dueMs;
};

/** A cue joins those that wait. */
export const offer = (speech: Speech, cue: Cue): Speech => {
  const group = LATEST_ONLY.find((topics) => topics.includes(cue.topic)) ?? [];
  const others = speech.waiting.filter((other) => !group.includes(other.topic));
  return {
    ...speech,
    waiting: [...others, cue].sort(inOrder),
  };
};

/** The earliest begin that silence and the device allow. */
const earliestMs = (speech: Speech, cue: Cue, nowMs: number): number => {
  const freeMs = speech.busyUntilMs + BREATH_MS;
  switch (cue.manner) {
    case 'mark':
      return Math.max(cue.dueMs, freeMs, nowMs + PROMPT_LEAD_MS);
    case 'answer':
      return Math.max(nowMs + PROMPT_LEAD_MS, freeMs);
    case 'routine':
      return Math.max(
        nowMs + LEAD_MS,
        cue.dueMs,
        speech.busyUntilMs + AFTER_ANSWER_MS,
        speech.quietFromMs + QUIET_MS,
      );
  }
};

/** Until when a cue may sound so that the reserved moments are free. */
const roomUntilMs = (cue: Cue, reserved: readonly Reservation[]): number => {
  let untilMs = Number.POSITIVE_INFINITY;
  for (const { atMs, earlyMs, importance, quiet } of reserved) {
    if (importance <= cue.importance) continue;
    const apartMs = quiet && cue.manner === 'routine' ? QUIET_MS : BREATH_MS;
    untilMs = Math.min(untilMs, atMs - earlyMs - apartMs);
  }
  return untilMs;
};

/**
 * The longest form that fits before the next reserved moment and into what speech there is to spare. A mark does not
 * wait for room: where there is none, it is said short all the same.
 */
const fitting = (
  cue: Cue,
  startMs: number,
  speech: Speech,
  ear: Ear,
): { form: Form; utterance: Utterance } | null => {
  const roomMs = roomUntilMs(cue, ear.reserved) - startMs;
  const spareMs = cue.spare ? ear.allowanceMs - speech.spareMs : Number.POSITIVE_INFINITY;
  for (const form of cue.onlyShort ? SHORT : BOTH) {
    const utterance = ear.voice.utter(cue.saying, form);
    const fits = utterance.durationS * 1000 <= Math.min(roomMs, spareMs);
    if (fits || (form === 'short' && cue.manner === 'mark')) return { form, utterance };
  }
  return null;
};

const callOf = (
  cue: Cue,
  id: number,
  form: Form,
  utterance: Utterance,
  nowMs: number,
  startMs: number,
): Call => ({
  id,
  saying: cue.saying,
  form,
  utterance,
  decidedMs: nowMs,
  startMs,
  endMs: startMs + utterance.durationS * 1000,
  expiresMs: cue.expiresMs,
  atM: cue.atM,
  aheadS: cue.aheadS,
  aheadSdS: cue.aheadSdS,
  distanceM: cue.distanceM,
  why: cue.why,
});

/**
 * Decides at most one call. What is stale is dropped; what may begin within the look-ahead and fits before the reserved
 * moments begins, long if it can, else short; what does not fit waits for as long as it stays true.
 */
export const speak = (
  speech: Speech,
  nowMs: number,
  ear: Ear,
): { readonly speech: Speech; readonly call: Call | null } => {
  const waiting: Cue[] = [];
  let call: Call | null = null;
  let next = speech;
  let { dropped } = speech;
  for (const cue of speech.waiting) {
    const startMs = earliestMs(speech, cue, nowMs);
    if (startMs > cue.expiresMs) {
      dropped++;
      continue;
    }
    const fit = call === null && startMs <= nowMs + LOOK_AHEAD_MS ? fitting(cue, startMs, speech, ear) : null;
    if (fit === null) waiting.push(cue);
    else {
      call = callOf(cue, speech.nextId, fit.form, fit.utterance, nowMs, startMs);
      next = {
        ...speech,
        busyUntilMs: call.endMs,
        quietFromMs: cue.manner === 'answer' ? speech.quietFromMs : call.endMs,
        spareMs: speech.spareMs + (cue.spare ? call.endMs - startMs : 0),
        nextId: speech.nextId + 1,
      };
    }
  }
  return { speech: { ...next, waiting, dropped }, call };
};
