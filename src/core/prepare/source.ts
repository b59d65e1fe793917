import { type Message, message } from '../units/message.ts';

/** Where a figure comes from, for the line beneath it. */
export interface Source {
  readonly text: Message;
  /**
   * `read`: a published source was read for it; `memory`: recalled from a publication that was not at hand;
   * `practice`: common practice, no source.
   */
  readonly kind: 'read' | 'memory' | 'practice';
}

export const read = (text: Message): Source => ({ text, kind: 'read' });
export const memory = (source: Message): Source => ({
  text: message('{source} (recalled, not checked)', { source }),
  kind: 'memory',
});
export const PRACTICE: Source = { text: message('common practice, no source'), kind: 'practice' };

/** A range with its source: from the lower to the upper end, both included. */
export interface SourcedRange {
  readonly lower: number;
  readonly upper: number;
  readonly source: Source;
}
