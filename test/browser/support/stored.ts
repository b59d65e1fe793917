import type { Page } from 'playwright-core';
import type { RunBatch } from '../../../src/log/store.ts';

/** Everything in one store of a database on the page's device. */
const allIn = <Kept>(page: Page, database: string, store: string): Promise<readonly Kept[]> =>
  page.evaluate(
    ([name, of]) =>
      new Promise<Kept[]>((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const all = opening.result.transaction(of).objectStore(of).getAll();
          all.onsuccess = () => {
            opening.result.close();
            resolve(all.result);
          };
        };
      }),
    [database, store] as const,
  );

/** What the page has written of its runs. */
export const storedBatches = (page: Page): Promise<readonly RunBatch[]> =>
  allIn(page, 'soundline', 'batches');

/** How much lies in the stores that a run leaves something in; the database must be there. */
export const leftOfRuns = async (page: Page): Promise<readonly number[]> => [
  (await allIn(page, 'soundline', 'heads')).length,
  (await allIn(page, 'soundline', 'batches')).length,
  (await allIn(page, 'soundline', 'snapshots')).length,
];

/** How many reviews are kept; one must have been made. */
export const leftOfReviews = async (page: Page): Promise<number> =>
  (await allIn(page, 'soundline-reviews', 'reviews')).length;
