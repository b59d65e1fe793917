import type { Progress } from '../estimate/progress.ts';
import type { Message } from '../units/message.ts';
import type { Saying } from './saying.ts';
import type { Topic } from './talk.ts';

/** What goes before what when two cues want the same moment. The numbers only order; the reasons stand in each rule. */
export const IMPORTANCE = {
  finish: 100,
  checkpoint: 90,
  start: 85,
  answer: 80,
  signal: 70,
  pace: 60,
  settle: 55,
  push: 50,
  fuel: 45,
  opening: 40,
  station: 35,
  marker: 30,
} as const;

/**
 * How a cue stands to silence. Routine: keeps its distance from the call before. Mark: begins on its moment. Answer: the
 * runner asked for it, by voice or by a press.
 */
export type Manner = 'routine' | 'mark' | 'answer';

/** Something worth telling now. */
export interface Cue {
  readonly topic: Topic;
  readonly saying: Saying;
  readonly importance: number;
  readonly manner: Manner;
  /** Not to begin before. For a mark the very moment. */
  readonly dueMs: number;
  /** Not worth beginning after. */
  readonly expiresMs: number;
  /** Only the short form suits. */
  readonly onlyShort: boolean;
  /** Said only while there is speech to spare. */
  readonly spare: boolean;
  readonly atM: number | null;
  readonly aheadS: number | null;
  readonly aheadSdS: number | null;
  readonly distanceM: number | null;
  readonly why: Message;
}

/** What the runner asked for, by voice or by a press: said at once, and nothing of the drift in it. */
export const answer = (
  { nowMs, progress }: { readonly nowMs: number; readonly progress: Progress },
  saying: Saying,
  shelfLifeMs: number,
  why: Message,
): Cue => ({
  topic: 'answer',
  saying,
  importance: IMPORTANCE.answer,
  manner: 'answer',
  dueMs: nowMs,
  expiresMs: nowMs + shelfLifeMs,
  onlyShort: false,
  spare: false,
  atM: null,
  aheadS: null,
  aheadSdS: null,
  distanceM: progress.distanceM,
  why,
});

/** What a rule found at a moment: its own state from here on, and perhaps a cue. `null` instead: nothing changed. */
export interface Found<Watch> {
  readonly watch: Watch;
  readonly cue: Cue | null;
}
