import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { writeTo } from './writeTo.ts';

/** What a run began with; written once, never changed. */
export interface RunHead {
  /** Epoch ms on the run's own clock when it was made: its name, and the order of runs. */
  readonly id: number;
  readonly version: 1;
  /** The plan as a plan file, with its course in it. */
  readonly planFile: string;
  /** Practised at home by a simulated runner; absent for a run. */
  readonly simulated?: true;
}

/** Some lines of the log, in order, and both clocks at the instant of writing. */
export interface RunBatch {
  readonly run: number;
  readonly lines: readonly string[];
  /** How many lines of this run came before them. */
  readonly from: number;
  /** The run's own clock, epoch ms; never steps. */
  readonly engineMs: number;
  /** The phone's clock, epoch ms, at the same instant. */
  readonly wallMs: number;
  /** Nothing comes after this: finished, stopped or put away. */
  readonly over: boolean;
}

/** Where the fold stood at some instant: a cache, which may be thrown away at any time. */
export interface RunSnapshot {
  readonly run: number;
  /** Which build folded it; another one's is of no use. */
  readonly build: string;
  /** Lines of the log that it contains. */
  readonly lines: number;
  readonly folded: unknown;
}

interface Schema extends DBSchema {
  heads: { key: number; value: RunHead };
  batches: { key: number; value: RunBatch; indexes: { run: number } };
  snapshots: { key: number; value: RunSnapshot };
}

/** All lines of a run in order; a batch that was written twice, because its acknowledgement was lost, counts once. */
export const linesOf = (batches: readonly RunBatch[]): readonly string[] => {
  const lines: string[] = [];
  for (const batch of batches) lines.push(...batch.lines.slice(Math.max(0, lines.length - batch.from)));
  return lines;
};

/** `strict`: on the medium when it returns. `relaxed`: with the system, which outlives the browser but not the battery. */
export type Durability = 'strict' | 'relaxed';

/** The append-only record of all runs on this device. Every function may reject; nothing in here retries but once. */
export interface LogStore {
  readonly begin: (head: RunHead) => Promise<void>;
  readonly append: (batch: RunBatch, durability: Durability) => Promise<void>;
  /** All runs, the latest first. */
  readonly heads: () => Promise<readonly RunHead[]>;
  readonly batches: (run: number) => Promise<readonly RunBatch[]>;
  readonly lastBatch: (run: number) => Promise<RunBatch | null>;
  readonly keepSnapshot: (snapshot: RunSnapshot) => Promise<void>;
  readonly snapshot: (run: number) => Promise<RunSnapshot | null>;
  readonly remove: (run: number) => Promise<void>;
}

const NAME = 'soundline';
const VERSION = 1;

const connect = (onLost: () => void): Promise<IDBPDatabase<Schema>> =>
  openDB<Schema>(NAME, VERSION, {
    upgrade: (db) => {
      db.createObjectStore('heads', { keyPath: 'id' });
      db.createObjectStore('batches', { autoIncrement: true }).createIndex('run', 'run');
      db.createObjectStore('snapshots', { keyPath: 'run' });
    },
    // A newer page wants another version: let it have it; the next write opens anew.
    blocking: (_now, _next, event) => {
      (event.target as IDBDatabase).close();
      onLost();
    },
    terminated: onLost,
  });

const isFull = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'QuotaExceededError';

const isSilence = (error: unknown): boolean => error instanceof DOMException && error.name === 'TimeoutError';

/** A write takes some milliseconds, some hundred where it is forced to a slow medium. A long log is read in a second or two. What takes longer will not come. */
const ANSWER_WITHIN_MS = 10_000;

/**
 * WebKit lets a transaction that a page began while it was left hang for as long as it remembers that page, and everybody
 * else's on the same store behind it (seen in WebKitGTK 2.50). A store that does not answer is one that fails.
 */
const inTime = <T>(answer: Promise<T>): Promise<T> => {
  let timer: ReturnType<typeof setTimeout>;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new DOMException('no answer', 'TimeoutError')), ANSWER_WITHIN_MS);
  });
  return Promise.race([answer, late]).finally(() => clearTimeout(timer));
};

/** @param open  for tests: how a connection is made */
export const createLogStore = (open: typeof connect = connect): LogStore => {
  let connection: Promise<IDBPDatabase<Schema>> | null = null;
  const drop = (): void => {
    connection = null;
  };

  /**
   * iOS ends connections of hidden pages and the handle stays dead: drop it, open another, try once more
   * (webkit bugs 197050, 202705, 277615). A full disk is no dead handle, and a silence is not asked twice.
   */
  const withDb = async <T>(use: (db: IDBPDatabase<Schema>) => Promise<T>): Promise<T> => {
    try {
      connection ??= open(drop);
      return await inTime(connection.then(use));
    } catch (error) {
      const dead = connection;
      drop();
      if (isFull(error) || isSilence(error)) throw error;
      dead?.then((db) => db.close()).catch(() => {});
      connection = open(drop);
      connection.catch(drop);
      return await inTime(connection.then(use));
    }
  };

  return {
    begin: (head) =>
      withDb(async (db) => {
        const tx = db.transaction('heads', 'readwrite', { durability: 'strict' });
        await Promise.all([tx.store.put(head), tx.done]);
      }),
    append: (batch, durability) =>
      withDb((db) => writeTo(db, 'batches', durability, (store) => store.add(batch))),
    heads: () => withDb(async (db) => (await db.getAll('heads')).reverse()),
    batches: (run) => withDb((db) => db.getAllFromIndex('batches', 'run', run)),
    lastBatch: (run) =>
      withDb(async (db) => {
        const cursor = await db.transaction('batches').store.index('run').openCursor(run, 'prev');
        return cursor?.value ?? null;
      }),
    keepSnapshot: (snapshot) =>
      withDb((db) => writeTo(db, 'snapshots', 'relaxed', (store) => store.put(snapshot))),
    snapshot: (run) => withDb(async (db) => (await db.get('snapshots', run)) ?? null),
    remove: (run) =>
      withDb(async (db) => {
        const tx = db.transaction(['heads', 'batches', 'snapshots'], 'readwrite', { durability: 'strict' });
        const keys = await tx.objectStore('batches').index('run').getAllKeys(run);
        await Promise.all([
          ...keys.map((key) => tx.objectStore('batches').delete(key)),
          tx.objectStore('heads').delete(run),
          tx.objectStore('snapshots').delete(run),
          tx.done,
        ]);
      }),
  };
};
