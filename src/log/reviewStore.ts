import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** A review that was put together before: a cache, which may be thrown away at any time. */
export interface KeptReview {
  readonly run: number;
  /** Which build made it; another one's is of no use. */
  readonly build: string;
  /** Lines of the log that it contains: a log that has grown since makes it worthless. */
  readonly lines: number;
  readonly digest: unknown;
}

interface Schema extends DBSchema {
  reviews: { key: number; value: KeptReview };
}

const NAME = 'soundline-reviews';

/** Every function may reject where there is no storage; a review is then put together anew. */
export const createReviewStore = () => {
  let connection: Promise<IDBPDatabase<Schema>> | null = null;
  const db = (): Promise<IDBPDatabase<Schema>> => {
    connection ??= openDB<Schema>(NAME, 1, {
      upgrade: (made) => {
        made.createObjectStore('reviews', { keyPath: 'run' });
      },
      terminated: () => {
        connection = null;
      },
    });
    connection.catch(() => {
      connection = null;
    });
    return connection;
  };
  return {
    keep: async (review: KeptReview): Promise<void> => {
      await (await db()).put('reviews', review);
    },
    find: async (run: number): Promise<KeptReview | null> => (await (await db()).get('reviews', run)) ?? null,
    remove: async (run: number): Promise<void> => (await db()).delete('reviews', run),
  };
};

export type ReviewStore = ReturnType<typeof createReviewStore>;
