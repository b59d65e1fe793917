import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { writeLogLine } from '../../../src/log/logLine.ts';
import type { LogStore, RunSnapshot } from '../../../src/log/store.ts';
import { handOver } from '../../../src/session/run/handOver.ts';
import { createRunChoices } from '../../../src/session/run/runChoices.ts';
import { createRunModel, type RunParts } from '../../../src/session/run/runModel.ts';
import { practiceTape } from '../../../src/session/run/tape.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { pretendTime } from '../pretend.ts';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

test('what is handed over is handed over once', () => {
  const taken = handOver('a log');
  expect(taken()).toBe('a log');
  expect(taken()).toBeNull();
});

const read = readRacePlan({ version: 1, kind: 'race', distanceM: 3000, goalS: 800 });
if (!read.ok) throw new Error(read.error.place);
const plan = read.value;
const lines = practiceTape(plan, null).slice(0, 200).map(writeLogLine);
const AT_MS = 1_790_000_000_000;

/** A store with a run that was broken off, which knows by a weak reference alone what it gave. */
const storeOfBroken = (): LogStore & { readonly isHeld: () => boolean } => {
  let given: WeakRef<RunSnapshot> | null = null;
  const last = { run: 1, engineMs: AT_MS, wallMs: AT_MS, over: false };
  return {
    begin: async () => {},
    append: async () => {},
    heads: async () => [{ id: 1, version: 1, planFile: '{}' }],
    batches: async () => [{ ...last, lines: [...lines], from: 0 }],
    lastBatch: async () => ({ ...last, lines: [], from: lines.length }),
    keepSnapshot: async () => {},
    snapshot: async () => {
      const snapshot = { run: 1, build: 'another', lines: 10, folded: {} };
      given = new WeakRef(snapshot);
      return snapshot;
    },
    remove: async () => {},
    isHeld: () => given?.deref() !== undefined,
  };
};

const partsOf = (store: LogStore): RunParts => {
  const time = pretendTime();
  return {
    planFileNow: () => '{}',
    readConfig: () => ({ plan, course: null, voice: voiceOf(english.pack, english.words) }),
    speaker: {
      state: signal('ready' as const),
      trouble: signal(null),
      wake: async () => true,
      use: async () => true,
      say: () => 'scheduled',
      takeBack: () => {},
      hush: () => {},
    },
    buzz: () => {},
    lock: {
      state: signal('held' as const),
      hold: async () => {},
      release: () => {},
      seenAgain: async () => {},
    },
    geolocation: { watchPosition: () => 1, clearWatch: () => {} } as unknown as Geolocation,
    time,
    originMs: AT_MS,
    wallMs: () => AT_MS + time.nowMs(),
    store,
    lead: { take: async () => true, give: () => {} },
    choices: createRunChoices({ getItem: () => null, setItem: () => {}, removeItem: () => {} }),
    buttons: { take: async () => true, show: () => {}, give: () => {} },
    click: () => {},
    build: 'this',
    tell: () => {},
  };
};

test('a run that was taken up from its log folds it, and then does not hold it for the rest of the race', async () => {
  const store = storeOfBroken();
  const model = createRunModel(partsOf(store));
  expect(await model.recover()).toBe(true);
  const distanceM = model.current.value?.view.value.progress.distanceM ?? 0;
  expect(distanceM).toBeGreaterThan(300);
  // A weak reference holds until the end of the turn that looked at it.
  await new Promise((done) => setTimeout(done, 0));
  collect();
  expect(store.isHeld()).toBe(false);
  expect(model.current.value?.phase.value).not.toBe('over');
  model.leave();
});
