import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createLogStore } from '../../src/log/store.ts';
import { writeTo } from '../../src/log/writeTo.ts';

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});
afterEach(() => {
  vi.restoreAllMocks();
});

const drawer = () => openDB('drawer', 1, { upgrade: (db) => void db.createObjectStore('things') });

test('what was written is there when the write is said to be done', async () => {
  const db = await drawer();
  await writeTo(db, 'things', 'relaxed', (store) => store.add('a batch', 1));
  expect(await db.get('things', 1)).toBe('a batch');
});

test('a write that the store refuses rejects with its reason, and leaves nothing', async () => {
  const db = await drawer();
  await writeTo(db, 'things', 'strict', (store) => store.add('first', 1));
  const twice = writeTo(db, 'things', 'strict', (store) => store.add('second', 1));
  await expect(twice).rejects.toMatchObject({ name: 'ConstraintError' });
  expect(await db.get('things', 1)).toBe('first');
});

test('a write that is broken off rejects', async () => {
  const db = await drawer();
  const broken = writeTo(db, 'things', 'strict', (store) => {
    store.add('half', 1);
    store.transaction.abort();
  });
  await expect(broken).rejects.toMatchObject({ name: 'AbortError' });
  expect(await db.count('things')).toBe(0);
});

test('a closed connection rejects, as one that can be opened anew', async () => {
  const db = await drawer();
  db.close();
  const late = writeTo(db, 'things', 'strict', (store) => store.add('late', 1));
  await expect(late).rejects.toMatchObject({ name: 'InvalidStateError' });
});

test('hundreds of batches and snapshots are entered into no map of what was wrapped', async () => {
  const store = createLogStore();
  const batch = { run: 1, lines: ['a'], engineMs: 1, wallMs: 1, over: false };
  const write = async (from: number): Promise<void> => {
    await store.append({ ...batch, from }, 'relaxed');
    await store.keepSnapshot({ run: 1, build: 'this', lines: from, folded: {} });
  };
  // The first opens the connection, which is wrapped once.
  await write(0);
  const entered = vi.spyOn(WeakMap.prototype, 'set');
  for (let from = 1; from <= 200; from++) await write(from);
  const entries = entered.mock.calls.length;
  vi.restoreAllMocks();
  expect(entries).toBe(0);
  expect(await store.batches(1)).toHaveLength(201);
});
