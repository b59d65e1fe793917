import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { createLogStore, type LogStore, linesOf, type RunBatch } from '../../src/log/store.ts';
import { createRecorder, type Keeping } from '../../src/log/storeRecorder.ts';

const RUN = 1_789_290_000_000;
const HEAD = { id: RUN, version: 1, planFile: '{}' } as const;
const batch = (lines: readonly string[], from: number, over = false): RunBatch => ({
  run: RUN,
  lines,
  from,
  engineMs: RUN + 1000 * from,
  wallMs: RUN + 1000 * from,
  over,
});

beforeEach(() => {
  vi.stubGlobal('indexedDB', new IDBFactory());
});

describe('the store', () => {
  test('gives back what it was given, in order, across connections', async () => {
    const store = createLogStore();
    await store.begin(HEAD);
    await store.append(batch(['a', 'b'], 0), 'relaxed');
    await store.append(batch(['c'], 2), 'strict');
    const later = createLogStore();
    expect(await later.heads()).toEqual([HEAD]);
    expect(linesOf(await later.batches(RUN))).toEqual(['a', 'b', 'c']);
    expect((await later.lastBatch(RUN))?.lines).toEqual(['c']);
  });

  test('has the latest run first, and keeps runs apart', async () => {
    const store = createLogStore();
    await store.begin(HEAD);
    await store.begin({ ...HEAD, id: RUN + 5 });
    await store.append({ ...batch(['other'], 0), run: RUN + 5 }, 'relaxed');
    expect((await store.heads()).map((h) => h.id)).toEqual([RUN + 5, RUN]);
    expect(await store.lastBatch(RUN)).toBeNull();
  });

  test('a batch that was written twice counts once', () => {
    expect(linesOf([batch(['a', 'b'], 0), batch(['a', 'b'], 0), batch(['c'], 2)])).toEqual(['a', 'b', 'c']);
  });

  test('removes a run with all that belongs to it', async () => {
    const store = createLogStore();
    await store.begin(HEAD);
    await store.append(batch(['a'], 0), 'relaxed');
    await store.keepSnapshot({ run: RUN, build: 'b', lines: 1, folded: { x: 1 } });
    await store.remove(RUN);
    expect(await store.heads()).toEqual([]);
    expect(await store.batches(RUN)).toEqual([]);
    expect(await store.snapshot(RUN)).toBeNull();
  });

  test('opens anew when the system has ended the connection', async () => {
    await createLogStore().begin(HEAD);
    // As iOS does to a hidden page: the handle stays, and every use of it throws.
    let opened = 0;
    const flaky = createLogStore(async () => {
      opened++;
      const db = await openDB('soundline', 1);
      if (opened === 1) db.close();
      return db as never;
    });
    await flaky.append(batch(['a'], 0), 'relaxed');
    expect(opened).toBe(2);
    expect(linesOf(await flaky.batches(RUN))).toEqual(['a']);
  });
});

test('a store that does not answer fails, once, and is asked anew the next time', async () => {
  vi.useFakeTimers();
  const open = vi.fn(() => new Promise<never>(() => {}));
  const store = createLogStore(open);
  const failed = expect(store.begin(HEAD)).rejects.toThrow('no answer');
  await vi.advanceTimersByTimeAsync(11_000);
  await failed;
  expect(open).toHaveBeenCalledTimes(1);
  const again = expect(store.heads()).rejects.toThrow('no answer');
  await vi.advanceTimersByTimeAsync(11_000);
  await again;
  expect(open).toHaveBeenCalledTimes(2);
  vi.useRealTimers();
});

describe('the recorder', () => {
  const rig = (store: Pick<LogStore, 'begin' | 'append'>) => {
    const states: Keeping[] = [];
    const recorder = createRecorder({
      store,
      head: HEAD,
      clocks: () => ({ engineMs: RUN, wallMs: RUN }),
      onKeeping: (k) => states.push(k),
    });
    return { recorder, states };
  };
  const full = () => Promise.reject(new DOMException('no room', 'QuotaExceededError'));

  test('holds on to lines while there is no room, says so once, and writes them all when there is', async () => {
    const store = createLogStore();
    let room = false;
    const { recorder, states } = rig({
      begin: store.begin,
      append: (b, durability) => (room ? store.append(b, durability) : full()),
    });
    for (const line of ['a', 'b', 'c']) {
      recorder.add(line);
      await recorder.flush('relaxed');
    }
    expect(states).toEqual(['full']);
    expect(recorder.unsaved().lines).toHaveLength(3);
    room = true;
    recorder.add('d');
    await recorder.flush('relaxed');
    expect(states).toEqual(['full', 'stored']);
    expect(linesOf(await store.batches(RUN))).toEqual(['a', 'b', 'c', 'd']);
  });

  test('never throws where there is no storage at all', async () => {
    const { recorder, states } = rig({
      begin: () => Promise.reject(new DOMException('no', 'SecurityError')),
      append: () => Promise.reject(new Error('not reached')),
    });
    recorder.add('a');
    await recorder.flush('strict');
    await recorder.end();
    expect(states).toEqual(['failing']);
    expect(recorder.unsaved().lines).toHaveLength(1);
  });

  test('lines that come while a batch is written go with the next, in order', async () => {
    const store = createLogStore();
    const { recorder } = rig(store);
    recorder.add('a');
    const first = recorder.flush('relaxed');
    recorder.add('b');
    await first;
    await recorder.end();
    const batches = await store.batches(RUN);
    expect(linesOf(batches)).toEqual(['a', 'b']);
    expect(batches.at(-1)?.over).toBe(true);
  });

  test('says that the run is over though it ends while a batch is on its way', async () => {
    const overs: boolean[] = [];
    const { recorder } = rig({
      begin: async () => {},
      append: async ({ over }) => {
        overs.push(over);
      },
    });
    recorder.add('a');
    const onItsWay = recorder.flush('relaxed');
    await Promise.resolve();
    await Promise.all([onItsWay, recorder.end()]);
    expect(overs.at(-1)).toBe(true);
    expect(overs.filter(Boolean)).toHaveLength(1);
  });

  test('writes that the run is over once, and nothing after it', async () => {
    const append = vi.fn(async () => {});
    const recorder = createRecorder({
      store: { begin: async () => {}, append },
      head: HEAD,
      clocks: () => ({ engineMs: RUN, wallMs: RUN }),
      onKeeping: () => {},
    });
    recorder.add('a');
    await recorder.end();
    expect(append).toHaveBeenCalledTimes(1);
    // The page is put out of sight afterwards, again and again.
    await recorder.flush('strict');
    await recorder.flush('strict');
    expect(append).toHaveBeenCalledTimes(1);
  });
});
