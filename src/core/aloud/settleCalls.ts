import type { Saying } from '../cues/saying.ts';
import type { Form, Utterance, Voice } from '../cues/voicePort.ts';
import type { Wish } from './wish.ts';

/** A call by the clock, as it will sound. */
export interface AloudCall {
  /** Begin, in seconds from the start; before it negative. */
  readonly atS: number;
  readonly kind: Saying['kind'];
  readonly form: Form;
  readonly utterance: Utterance;
  readonly atM: number | null;
}

export interface Settled {
  /** In the order of time; they keep apart by at least the gap. */
  readonly calls: readonly AloudCall[];
  /** What found no room. */
  readonly dropped: readonly Wish[];
}

/** Between two calls: a breath, so that they are not heard as one. */
const GAP_S = 2;
/** A call that may move is tried in steps of this. */
const STEP_S = 0.5;

const isFree = (taken: readonly AloudCall[], atS: number, lastsS: number): boolean =>
  taken.every((c) => atS >= c.atS + c.utterance.durationS + GAP_S || atS + lastsS + GAP_S <= c.atS);

/** The times that a wish may have, the best first, then ever farther from it. */
function* timesOf({ atS, fromS, untilS }: Wish): Generator<number> {
  yield atS;
  for (let off = STEP_S; atS + off <= untilS || atS - off >= fromS; off += STEP_S) {
    if (atS + off <= untilS) yield atS + off;
    if (atS - off >= fromS) yield atS - off;
  }
}

const place = (wish: Wish, taken: readonly AloudCall[], voice: Voice): AloudCall | null => {
  const forms: readonly Form[] = wish.longest === 'long' ? ['long', 'short'] : ['short'];
  for (const form of forms) {
    for (const atS of timesOf(wish)) {
      const saying = wish.saying(atS);
      const utterance = voice.utter(saying, form);
      if (isFree(taken, atS, utterance.durationS))
        return { atS, kind: saying.kind, form, utterance, atM: wish.atM };
    }
  }
  return null;
};

/** Gives every wish its time, the important first: what cannot be said where it belongs moves, is shortened, or goes. */
export const settleCalls = (wishes: readonly Wish[], voice: Voice): Settled => {
  const calls: AloudCall[] = [];
  const dropped: Wish[] = [];
  const byImportance = [...wishes].sort((a, b) => b.importance - a.importance || a.atS - b.atS);
  for (const wish of byImportance) {
    const call = place(wish, calls, voice);
    if (call === null) dropped.push(wish);
    else calls.push(call);
  }
  return { calls: calls.sort((a, b) => a.atS - b.atS), dropped: dropped.sort((a, b) => a.atS - b.atS) };
};
