import { type IDBPDatabase, unwrap } from 'idb';

/**
 * One write in a transaction of its own; resolves when it is complete, rejects with the reason it was aborted for.
 *
 * By the browser's own objects: idb remembers each transaction, store, request and promise that it wraps in maps which
 * grow to what was wrapped between two collections of garbage and never shrink. At a write a second that was 80 kB after
 * two hours of a run, half of all that its heap of data grew by.
 */
export const writeTo = <Schema>(
  db: IDBPDatabase<Schema>,
  store: string,
  durability: IDBTransactionDurability,
  write: (to: IDBObjectStore) => unknown,
): Promise<void> =>
  new Promise((resolve, reject) => {
    const tx = unwrap(db).transaction(store, 'readwrite', { durability });
    tx.oncomplete = () => resolve();
    // An error that nobody answers for aborts, and so does a disk that turns out to be full at the end.
    tx.onabort = () => reject(tx.error ?? new DOMException('given up', 'AbortError'));
    write(tx.objectStore(store));
  });
