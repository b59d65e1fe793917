import type { Call } from '../../core/cues/call.ts';
import type { RunInput } from '../../core/run/settings.ts';
import { writeLogLine } from '../../log/logLine.ts';
import { type LogStore, linesOf, type RunHead } from '../../log/store.ts';
import { createRecorder, type Keeping } from '../../log/storeRecorder.ts';
import type { PageTime } from '../../voice/device/pageTime.ts';
import type { Folded } from './runCell.ts';
import type { ClockPair } from './runClock.ts';

/** The log of the run under way: every line is on the device seconds later at most, and in memory until it is. */
export interface RunRecord {
  readonly add: (input: RunInput) => void;
  /** Calls are about to sound: what led to them goes to the device at once, so that no later page says them again. */
  readonly called: (calls: readonly Call[]) => void;
  /** The page goes out of sight and may not come back. */
  readonly hidden: () => void;
  /** The whole log: what is on the device, and what is still held. It is not kept in memory besides. */
  readonly lines: () => Promise<readonly string[]>;
  readonly end: () => void;
  /** Resolves once the last batch was taken or refused. */
  readonly ended: () => Promise<void>;
}

export interface RecordParts {
  readonly store: LogStore;
  readonly head: RunHead;
  readonly clocks: () => ClockPair;
  readonly time: PageTime;
  readonly build: string;
  readonly foldedNow: () => Folded | null;
  readonly onKeeping: (keeping: Keeping) => void;
  /** How many lines of this run are in the store already; null for a new one. */
  readonly storedLines: number | null;
}

/** At most this much of a run is lost when its page is killed. A relaxed write takes about 2 ms (web-platform-tests 18817). */
const BATCH_MS = 1000;
/** A cache of the fold, so that a page that opens late in a race need not fold hours. */
const SNAPSHOT_MS = 60_000;
/** After these the log is forced to the medium, which costs a phone some tens of ms. */
const MILESTONES: readonly Call['saying']['kind'][] = ['start', 'checkpoint', 'finish'];

export const startRecord = (parts: RecordParts): RunRecord => {
  let count = parts.storedLines ?? 0;
  let ended = false;
  let last: Promise<void> = Promise.resolve();
  const recorder = createRecorder({
    store: parts.store,
    head: parts.head,
    clocks: parts.clocks,
    onKeeping: parts.onKeeping,
    ...(parts.storedLines === null ? {} : { stored: parts.storedLines }),
  });

  const snapshot = async (): Promise<void> => {
    const { store, head, build } = parts;
    const folded = parts.foldedNow();
    if (folded === null) return;
    const kept = { run: head.id, build, lines: count, folded };
    await recorder.flush('relaxed');
    // A cache: where it cannot be kept, the fold begins at the beginning.
    if (recorder.keeping() === 'stored') await store.keepSnapshot(kept).catch(() => {});
  };

  const stops = [
    parts.time.every(BATCH_MS, () => void recorder.flush('relaxed')),
    parts.time.every(SNAPSHOT_MS, () => void snapshot()),
  ];

  return {
    add: (input) => {
      // The clock is told ten times a second and says nothing that the other lines do not.
      if (input.type === 'clock') return;
      const line = writeLogLine(input);
      count++;
      recorder.add(line);
      if (input.type === 'event') void recorder.flush('strict');
    },
    called: (calls) => {
      const strict = calls.some((call) => MILESTONES.includes(call.saying.kind));
      void recorder.flush(strict ? 'strict' : 'relaxed');
    },
    hidden: () => void recorder.flush('strict'),
    lines: async () => {
      await recorder.flush('relaxed');
      const { lines, from } = recorder.unsaved();
      // Where nothing can be read back, what could not be written is all there is.
      const batches = await parts.store.batches(parts.head.id).catch(() => []);
      return [...linesOf(batches).slice(0, from), ...lines];
    },
    end: () => {
      if (ended) return;
      ended = true;
      for (const stop of stops) stop();
      last = recorder.end();
    },
    ended: () => last,
  };
};
