import type { Message } from '../units/message.ts';
import type { Saying } from './saying.ts';
import type { Form, Utterance } from './voicePort.ts';

/** A cue as it sounds. Times are engine milliseconds; calls never overlap. */
export interface Call {
  /** Running number within the run: 0, 1, 2 … */
  readonly id: number;
  readonly saying: Saying;
  readonly form: Form;
  readonly utterance: Utterance;
  /** When the engine decided. */
  readonly decidedMs: number;
  readonly startMs: number;
  readonly endMs: number;
  /** Not worth saying if it cannot start by then. */
  readonly expiresMs: number;
  /** Where it belongs, for cues that belong to a place. */
  readonly atM: number | null;
  /** Drift and place at the moment it speaks of. */
  readonly aheadS: number | null;
  readonly aheadSdS: number | null;
  readonly distanceM: number | null;
  /** Why it was said, for the review. */
  readonly why: Message;
}
