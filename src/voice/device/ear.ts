import type { Utterance } from '../../core/cues/voicePort.ts';

/** What became of an utterance at the device. */
export type Heard = 'scheduled' | 'late' | 'silent';

/** The ear as a run sees it. Times are page milliseconds (performance.now). */
export interface Ear {
  /**
   * Sounds an utterance so that it is heard at an instant, sample-exact between its parts. It may begin later, but not
   * after `latestPageMs`: then it is dropped (`late`), never said stale. `silent` when there is no sound at all.
   */
  readonly say: (utterance: Utterance, atPageMs: number, latestPageMs: number) => Heard;
  /** Takes back what waits to sound; what sounds already is heard out. */
  readonly takeBack: () => void;
  /** Ends everything that sounds or waits to sound. */
  readonly hush: () => void;
}
