import type { Utterance } from '../../core/cues/voicePort.ts';
import type { AudioClock } from './audioClock.ts';
import type { Heard } from './ear.ts';
import type { Output } from './howlerDevice.ts';
import { type SoundStore, scoreOf } from './score.ts';

/** Something to be said, and when it is to leave the earphone, by the page's clock. */
export interface Due {
  readonly utterance: Utterance;
  readonly atPageMs: number;
  /** Not worth saying if it cannot begin by then. */
  readonly latestPageMs: number;
}

/** What is set on the audio clock to sound: one utterance after the other, never two at once. */
export interface Sounding {
  /**
   * Sets an utterance to sound at its time, or after the one before it.
   * @param clockNow  asked for when all that takes time is done
   */
  readonly set: (store: SoundStore, output: Output, clockNow: () => AudioClock, due: Due) => Heard;
  /** Stops what begins after an instant of the audio clock; without one, everything. */
  readonly stop: (afterS?: number) => void;
}

interface SetCall {
  readonly beginS: number;
  readonly sources: readonly AudioBufferSourceNode[];
}

/** The context needs this long to take a source that is to start at once. */
const SOONEST_S = 0.05;
/** A delay that nobody hears, and that every call due at once has: the one above, on a busy page. */
const UNHEARD_S = 0.25;
/** No call is longer: what began before this has been said, and its sources are let go of. */
const LONGEST_S = 60;

export const createSounding = (): Sounding => {
  let calls: readonly SetCall[] = [];
  let freeFromS = 0;
  return {
    set: (store, { context, gain }, clockNow, { utterance, atPageMs, latestPageMs }) => {
      // All that takes time first: a tone may have to be rendered. Then the clock is read, and the sources are only set.
      const notes = scoreOf(store, utterance).map((note) => {
        const source = new AudioBufferSourceNode(context, { buffer: note.buffer });
        source.connect(gain);
        return { ...note, source };
      });
      const clock = clockNow();
      const beginS = Math.max(clock.contextTimeS(atPageMs), clock.nowS() + SOONEST_S, freeFromS);
      // The delay of the earphones cannot be helped: it makes no call stale.
      if (beginS > clock.plainTimeS(latestPageMs) + UNHEARD_S) return 'late';
      for (const { source, offsetS, fromS, lengthS } of notes) source.start(beginS + offsetS, fromS, lengthS);
      const sources = notes.map((note) => note.source);
      calls = [...calls.filter((call) => call.beginS > clock.nowS() - LONGEST_S), { beginS, sources }];
      freeFromS = beginS + utterance.durationS;
      return 'scheduled';
    },
    stop: (afterS = Number.NEGATIVE_INFINITY) => {
      for (const call of calls) if (call.beginS > afterS) for (const source of call.sources) source.stop();
      calls = calls.filter((call) => call.beginS <= afterS);
      freeFromS = 0;
    },
  };
};
