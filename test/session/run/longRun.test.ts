import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { expect, test } from 'vitest';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import type { LogStore } from '../../../src/log/store.ts';
import type { FixWatchPorts } from '../../../src/sensors/geolocation.ts';
import { type LiveRun, startLiveRun } from '../../../src/session/run/liveRun.ts';
import { runClockOf } from '../../../src/session/run/runClock.ts';
import { startRecord } from '../../../src/session/run/runRecord.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { pretendEar, pretendTime } from '../pretend.ts';

const HOURS = 6;
const SPEED_MPS = 2.6;
const M_PER_DEG = 111_300;
const ORIGIN_MS = 1_790_000_000_000;

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
const heapMB = (): number => {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
};

/** A store that takes everything and keeps nothing, as the device's own is not in the page's memory. */
const elsewhere = (): LogStore & { readonly lines: () => number } => {
  let lines = 0;
  return {
    begin: async () => {},
    append: async (batch) => {
      lines += batch.lines.length;
    },
    heads: async () => [],
    batches: async () => [],
    lastBatch: async () => null,
    keepSnapshot: async (snapshot) => {
      structuredClone(snapshot);
    },
    snapshot: async () => null,
    remove: async () => {},
    lines: () => lines,
  };
};

test('six hours at a fix a second leave no more behind than one', async () => {
  const read = readRacePlan({ version: 1, kind: 'race', distanceM: 60_000, goalS: 23_000 });
  if (!read.ok) throw new Error(read.error.place);
  const time = pretendTime();
  const clock = runClockOf(time, ORIGIN_MS);
  const store = elsewhere();
  let ports: Omit<FixWatchPorts, 'geolocation'> | null = null;
  let run: LiveRun | null = null;
  const record = startRecord({
    store,
    head: { id: ORIGIN_MS, version: 1, planFile: '{}' },
    clocks: () => ({ engineMs: clock.nowMs(), wallMs: clock.nowMs() }),
    time,
    build: 'this',
    foldedNow: () => run?.cell.folded() ?? null,
    onKeeping: () => {},
    storedLines: null,
  });
  const ear = pretendEar(time);
  run = startLiveRun({
    config: { plan: read.value, course: null, voice: voiceOf(english.pack, english.words) },
    ear: { ...ear, say: () => 'scheduled' },
    buzz: () => {},
    clock,
    time,
    watch: (given) => {
      ports = given;
      return { renew: () => {}, stop: () => {} };
    },
    record: record.add,
    onCalls: record.called,
    onOver: () => {},
  });
  run.press('start');
  const heaps: number[] = [];
  for (let s = 1; s <= HOURS * 3600; s++) {
    time.pass(1000);
    (ports as Omit<FixWatchPorts, 'geolocation'> | null)?.onFix(
      {
        timestampMs: clock.nowMs(),
        latitudeDeg: 54 + (SPEED_MPS * s + 3 * Math.sin(s / 9)) / M_PER_DEG,
        longitudeDeg: 7 + (3 * Math.cos(s / 13)) / M_PER_DEG,
        accuracyM: 5,
        speedMps: null,
        altitudeM: null,
      },
      clock.nowMs(),
    );
    // The promises of the recorder want their turn.
    if (s % 10 === 0) await Promise.resolve();
    if (s % 3600 === 0) {
      await new Promise((done) => setTimeout(done, 0));
      heaps.push(heapMB());
    }
  }
  console.info(`heap after each hour: ${heaps.map((h) => h.toFixed(1)).join(' ')} MB`);
  expect(store.lines()).toBeGreaterThan(HOURS * 3600);
  expect((heaps.at(-1) ?? 0) / (heaps[0] ?? 1)).toBeLessThan(1.05);
}, 120_000);
