import type { Durability, LogStore, RunHead } from './store.ts';

/** `stored`: everything up to the last few seconds is on the device. `full`: no room. `failing`: it will not take it. */
export type Keeping = 'stored' | 'full' | 'failing';

/** Writes one run's log behind the run's back: it never throws, never blocks, and holds on to what is not yet taken. */
export interface StoreRecorder {
  readonly add: (line: string) => void;
  /** Hands over what is held; resolves when it was taken or refused. */
  readonly flush: (durability: Durability) => Promise<void>;
  /** The last flush. */
  readonly end: () => Promise<void>;
  readonly keeping: () => Keeping;
  /** Lines that the store has not acknowledged, and how many came before them. */
  readonly unsaved: () => { readonly lines: readonly string[]; readonly from: number };
}

export interface RecorderParts {
  readonly store: Pick<LogStore, 'begin' | 'append'>;
  readonly head: RunHead;
  /** The run's own clock and the phone's, read at one instant. */
  readonly clocks: () => { readonly engineMs: number; readonly wallMs: number };
  readonly onKeeping: (keeping: Keeping) => void;
  /** Lines that are there already, where a run is taken up again. */
  readonly stored?: number;
}

const isFull = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'QuotaExceededError';

export const createRecorder = (parts: RecorderParts): StoreRecorder => {
  const { store, head, clocks } = parts;
  let held: string[] = [];
  let begun = parts.stored !== undefined;
  let stored = parts.stored ?? 0;
  let over = false;
  /** That it is over stands on the device. */
  let closed = false;
  let keeping: Keeping = 'stored';
  let writing: Promise<void> = Promise.resolve();

  const become = (next: Keeping): void => {
    if (next === keeping) return;
    keeping = next;
    parts.onKeeping(next);
  };

  const write = async (durability: Durability): Promise<void> => {
    if (held.length === 0 && (!over || closed)) return;
    const lines = held;
    // As it is now: the run may end while this batch is being written.
    const closing = over;
    try {
      if (!begun) {
        await store.begin(head);
        begun = true;
      }
      await store.append({ run: head.id, lines, from: stored, ...clocks(), over: closing }, durability);
      held = held.slice(lines.length);
      stored += lines.length;
      closed = closing;
      become('stored');
    } catch (error) {
      // Kept in memory and tried again with the next batch: a full disk may be cleared in the middle of a race.
      become(isFull(error) ? 'full' : 'failing');
    }
  };

  /** One write after the other, so that batches lie in the order of their lines. */
  const flush = (durability: Durability): Promise<void> => {
    writing = writing.then(() => write(durability));
    return writing;
  };

  return {
    add: (line) => {
      held = [...held, line];
    },
    flush,
    end: () => {
      over = true;
      return flush('strict');
    },
    keeping: () => keeping,
    unsaved: () => ({ lines: held, from: stored }),
  };
};
