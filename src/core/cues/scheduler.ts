import type { Call } from './call.ts';
import type { Cue } from './cue.ts';
import type { Form, Utterance, Voice } from './voicePort.ts';

/** The ear's state: what is being said, when it last fell silent, what waits. */
export interface Speech {
  readonly waiting: readonly Cue[];
  /** End of the last call; calls never overlap. */
  readonly busyUntilMs: number;
  /** End of the last call that routine calls keep their distance from. */
  readonly quietFromMs: number;
  readonly nextId: number;
}

/** A moment that is kept free for something more important. */
export interface Reservation {
  readonly atMs: number;
  readonly importance: number;
}

/** Between two routine calls: less and the runner stops listening. */
export const QUIET_MS = 12_000;
/** Between any two calls: a breath. */
const BREATH_MS = 300;
/** Before a routine call that follows an answer. */
const AFTER_ANSWER_MS = 3000;
/** Time for the device to take up a call decided now. */
export const LEAD_MS = 500;
/** The same for what is asked for or comes late, where every tenth counts. */
const PROMPT_LEAD_MS = 150;
/** A call that begins on a moment is decided at most this long before it. */
export const LOOK_AHEAD_MS = 1000;
/** The foreseen moment may come this much earlier. */
const RESERVE_MS = 800;

export const silence: Speech = {
  waiting: [],
  busyUntilMs: Number.NEGATIVE_INFINITY,
  quietFromMs: Number.NEGATIVE_INFINITY,
  nextId: 0,
};

/** A cue joins those that wait, the important first; among equals the earlier. */
export const offer = (speech: Speech, cue: Cue): Speech => ({
  ...speech,
  waiting: [...speech.waiting, cue].sort((a, b) => b.importance - a.importance || a.dueMs - b.dueMs),
});

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

/** When the first reserved moment comes that this cue must leave free. */
const roomUntilMs = (cue: Cue, reserved: readonly Reservation[]): number => {
  let untilMs = Number.POSITIVE_INFINITY;
  for (const { atMs, importance } of reserved)
    if (importance > cue.importance) untilMs = Math.min(untilMs, atMs - BREATH_MS - RESERVE_MS);
  return untilMs;
};

const fitting = (cue: Cue, roomMs: number, voice: Voice): { form: Form; utterance: Utterance } | null => {
  const forms: readonly Form[] = cue.onlyShort ? ['short'] : ['long', 'short'];
  for (const form of forms) {
    const utterance = voice.utter(cue.saying, form);
    if (utterance.durationS * 1000 <= roomMs) return { form, utterance };
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
  reserved: readonly Reservation[],
  voice: Voice,
): { readonly speech: Speech; readonly call: Call | null } => {
  const waiting: Cue[] = [];
  let call: Call | null = null;
  let said: Cue | null = null;
  for (const cue of speech.waiting) {
    const startMs = earliestMs(speech, cue, nowMs);
    if (startMs > cue.expiresMs) continue;
    const fit =
      call === null && startMs <= nowMs + LOOK_AHEAD_MS
        ? fitting(cue, roomUntilMs(cue, reserved) - startMs, voice)
        : null;
    if (fit) {
      call = callOf(cue, speech.nextId, fit.form, fit.utterance, nowMs, startMs);
      said = cue;
    } else waiting.push(cue);
  }
  if (call === null || said === null) return { speech: { ...speech, waiting }, call: null };
  return {
    speech: {
      waiting,
      busyUntilMs: call.endMs,
      quietFromMs: said.manner === 'answer' ? speech.quietFromMs : call.endMs,
      nextId: speech.nextId + 1,
    },
    call,
  };
};
