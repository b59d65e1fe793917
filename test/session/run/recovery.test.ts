import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { writeLogLine } from '../../../src/log/logLine.ts';
import { createLogStore } from '../../../src/log/store.ts';
import { findUnfinished, refoldRun } from '../../../src/session/run/recovery.ts';
import { createRunCell } from '../../../src/session/run/runCell.ts';
import { practiceTape } from '../../../src/session/run/tape.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const got = readRacePlan({
  version: 1,
  kind: 'race',
  distanceM: 1200,
  goalS: 320,
  checkpointsM: [300, 600, 900],
});
if (!got.ok) throw new Error(got.error.place);
const config = { plan: got.value, course: null, voice: voiceOf(english.pack, english.words) };
const tape = practiceTape(got.value, null);
const lines = tape.map(writeLogLine);
const HEAD = { id: 1, version: 1, planFile: '{}' } as const;

const whole = createRunCell(config);
for (const input of tape) whole.feed(input);
const texts = (cell: typeof whole) => cell.calls.value.map((c) => `${c.startMs} ${c.utterance.text}`);

const lastOf = (n: number) => {
  const engineMs = tape[n - 1]?.atMs ?? 0;
  return { engineMs, wallMs: engineMs };
};

describe('a run taken up from its log', () => {
  test('at any moment, with or without a snapshot, calls what the unbroken run calls', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: tape.length - 1 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (n, share) => {
          const snapAt = Math.floor(n * share);
          const before = createRunCell(config);
          before.refold(tape.slice(0, snapAt));
          // As the device keeps it: what cannot be cloned would be lost here.
          const folded = structuredClone(before.folded());
          for (const snapshot of [null, { run: 1, build: 'this', lines: snapAt, folded }]) {
            const cell = createRunCell(config);
            refoldRun({ head: HEAD, lines: lines.slice(0, n), last: lastOf(n), snapshot }, 'this', cell);
            for (const input of tape.slice(n)) cell.feed(input);
            expect(texts(cell)).toEqual(texts(whole));
            expect(cell.viewAt(tape.at(-1)?.atMs ?? 0)).toEqual(whole.viewAt(tape.at(-1)?.atMs ?? 0));
          }
        },
      ),
      { numRuns: 12 },
    );
  });

  test('leaves the snapshot of another build alone', () => {
    const cell = createRunCell(config);
    const snapshot = { run: 1, build: 'other', lines: 10, folded: { nonsense: true } };
    refoldRun({ head: HEAD, lines, last: lastOf(tape.length), snapshot }, 'this', cell);
    expect(texts(cell)).toEqual(texts(whole));
  });
});

describe('which run is taken up', () => {
  beforeEach(() => {
    vi.stubGlobal('indexedDB', new IDBFactory());
  });
  const WALL_MS = 9_000_000;
  const kept = async (part: { lines?: readonly string[]; over?: boolean }) => {
    const store = createLogStore();
    await store.begin(HEAD);
    await store.append(
      {
        run: 1,
        lines: part.lines ?? lines,
        from: 0,
        engineMs: WALL_MS,
        wallMs: WALL_MS,
        over: part.over ?? false,
      },
      'strict',
    );
    return store;
  };

  test('the latest that has begun and has no end', async () => {
    const found = await findUnfinished(await kept({}), WALL_MS + 60_000);
    expect(found?.lines).toEqual(lines);
  });

  test('none that is over', async () => {
    expect(await findUnfinished(await kept({ over: true }), WALL_MS)).toBeNull();
  });

  test('none whose runner only stood there', async () => {
    expect(await findUnfinished(await kept({ lines: lines.slice(0, 5) }), WALL_MS)).toBeNull();
  });

  test('none that everybody has forgotten', async () => {
    expect(await findUnfinished(await kept({}), WALL_MS + 24 * 3_600_000)).toBeNull();
  });

  test('nothing where nothing was ever kept', async () => {
    expect(await findUnfinished(createLogStore(), WALL_MS)).toBeNull();
  });
});
