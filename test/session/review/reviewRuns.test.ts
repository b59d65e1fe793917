import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, test } from 'vitest';
import { practiceFile } from '../../../src/core/plan/parsePracticePlan.ts';
import { readyMade } from '../../../src/core/practice/sessions/readyMade.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { runFile } from '../../../src/log/exportBackup.ts';
import { writeLogLine } from '../../../src/log/logLine.ts';
import { createReviewStore } from '../../../src/log/reviewStore.ts';
import { createLogStore } from '../../../src/log/store.ts';
import { SESSION_STEADY, simulateSession } from '../../../src/sensors/simulatedPractice.ts';
import { OPEN_SKY } from '../../../src/sensors/simulatedReceiver.ts';
import { foldForReview, isPractice, readRun } from '../../../src/session/review/reviewFold.ts';
import { createRunShelf, type RunShelf } from '../../../src/session/review/reviewRuns.ts';
import { inputsOf } from '../../../src/session/run/recovery.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

/** A browser's small storage. */
const createKeep = () => {
  const texts = new Map<string, string>();
  return {
    get length() {
      return texts.size;
    },
    key: (i: number) => [...texts.keys()][i] ?? null,
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => void texts.set(key, text),
  };
};

const plan = readyMade('easyStrides', demoPlan);
const session = simulateSession({
  plan,
  runner: SESSION_STEADY,
  receiver: OPEN_SKY,
  penS: 5,
  seed: 2,
  podShare: null,
});
const run = {
  id: 1_800_000_000_000,
  planFile: practiceFile(plan, (ms) => new Date(ms).toISOString()),
  lines: session.inputs.slice(0, 400).map(writeLogLine),
};

let shelf: RunShelf;
let keep: ReturnType<typeof createKeep>;
const fresh = (): void => {
  globalThis.indexedDB = new IDBFactory();
  keep = createKeep();
  shelf = createRunShelf({
    store: createLogStore(),
    reviews: createReviewStore(),
    build: 'b',
    keep,
    language: () => 'de',
  });
};
beforeEach(fresh);

describe('runs on this device', () => {
  test('come in from a file, once', async () => {
    expect(await shelf.addFile(runFile(run))).toEqual({ ok: true, value: { added: 1, skipped: 0 } });
    expect(await shelf.addFile(runFile(run))).toEqual({ ok: true, value: { added: 0, skipped: 0 } });
    expect((await shelf.rows()).map((r) => r.id)).toEqual([run.id]);
    expect(await shelf.load(run.id)).toEqual(run);
  });

  test('a track from elsewhere is called in the language of the page', async () => {
    const points = Array.from(
      { length: 300 },
      (_, i) =>
        `<trkpt lat="${(54 + (i * 3) / 111_300).toFixed(6)}" lon="7.3"><time>${new Date(1e12 + 1000 * i).toISOString()}</time></trkpt>`,
    );
    const gpx = `<gpx version="1.1"><trk><trkseg>${points.join('')}</trkseg></trk></gpx>`;
    expect(await shelf.addFile(gpx)).toEqual({ ok: true, value: { added: 1, skipped: 0 } });
    const [row] = await shelf.rows();
    const kept = row && (await shelf.load(row.id));
    expect(JSON.parse(kept?.planFile ?? '{}')).toMatchObject({ name: 'Imported run', language: 'de' });
  });

  test('a file that is none is refused by its place', async () => {
    expect((await shelf.addFile('<gpx>')).ok).toBe(false);
    expect((await shelf.addFile('')).ok).toBe(false);
    expect(await shelf.rows()).toEqual([]);
  });

  test('everything goes out as one file and comes back on another device, settings and all', async () => {
    await shelf.addFile(runFile(run));
    keep.setItem('soundline.plan', '{"a":1}');
    keep.setItem('somebody.else', 'x');
    const file = await shelf.backup();
    fresh();
    expect(await shelf.restore(file)).toEqual({ ok: true, value: { added: 1, cut: false } });
    expect(keep.getItem('soundline.plan')).toBe('{"a":1}');
    expect(keep.getItem('somebody.else')).toBeNull();
    expect(await shelf.backup()).toBe(file);
  });

  test('a review is kept until the log grows or the build changes, and goes with its run', async () => {
    await shelf.addFile(runFile(run));
    const read = readRun(run.planFile);
    if (read === null) throw new Error('not read');
    const digest = await foldForReview(read, inputsOf(run.lines), {
      voice: voiceOf(english.pack, english.words),
      nowMs: () => 0,
      breathe: async () => {},
      onShare: () => {},
    });
    expect(isPractice(digest)).toBe(true);
    await shelf.keepDigest(run.id, digest, run.lines.length);
    expect(await shelf.digest(run.id)).toEqual(digest);
    await shelf.keepDigest(run.id, digest, run.lines.length - 1);
    expect(await shelf.digest(run.id)).toBeNull();
    await shelf.keepDigest(run.id, digest, run.lines.length);
    await shelf.remove(run.id);
    expect(await shelf.digest(run.id)).toBeNull();
    expect(await shelf.load(run.id)).toBeNull();
  });
});
