import { expect, test } from 'vitest';
import { practiceFile } from '../../../src/core/plan/parsePracticePlan.ts';
import { readyMade } from '../../../src/core/practice/sessions/readyMade.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { writeLogLine } from '../../../src/log/logLine.ts';
import { readRun } from '../../../src/session/review/reviewFold.ts';
import { createReviewModel } from '../../../src/session/review/reviewModel.ts';
import type { RunRow, RunShelf } from '../../../src/session/review/reviewRuns.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const planFile = practiceFile({ ...readyMade('twice15', demoPlan), place: 'indoors' }, String);
const inputs: readonly RunInput[] = [
  { type: 'event', atMs: 1_800_000_000_000, event: 'start' },
  ...Array.from(
    { length: 3200 },
    (_, s): RunInput => ({ type: 'clock', atMs: 1_800_000_000_000 + 1000 * s }),
  ),
];
const lines = inputs.map(writeLogLine);

/** A shelf of two runs that counts how often each was put together. */
const shelfOf = (made: number[]): RunShelf => {
  const row = (id: number): RunRow => ({ id, plan: readRun(planFile)?.plan ?? null, digest: null });
  const nothing = async (): Promise<never> => Promise.reject(new Error('not asked for here'));
  return {
    rows: async () => [row(2), row(1)],
    load: async (id) => ({ id, planFile, lines }),
    digest: async () => null,
    keepDigest: async (id) => {
      made.push(id);
    },
    remove: async () => {},
    addFile: nothing,
    backup: nothing,
    restore: nothing,
  };
};

const modelOf = (made: number[]) => {
  // Each look at the clock is a slice over: the page may draw between any two inputs.
  let nowMs = 0;
  return createReviewModel({
    shelf: shelfOf(made),
    voice: voiceOf(english.pack, english.words),
    ear: { say: () => {}, hush: () => {} } as never,
    wake: async () => {},
    time: { nowMs: () => (nowMs += 1), every: () => () => {} } as never,
    keep: { getItem: () => null, setItem: () => {} },
    wallMs: () => 0,
  });
};

test('a run that is put together behind the list is not put together twice when it is opened', async () => {
  const made: number[] = [];
  const model = modelOf(made);
  await model.refresh();
  const behind = model.prepareAll();
  await model.look(2);
  expect(model.open.value?.id).toBe(2);
  expect(made).toEqual([2]);
  await behind;
});

test('what the runner wants to see comes before what is put together behind the list', async () => {
  const made: number[] = [];
  const model = modelOf(made);
  await model.refresh();
  const behind = model.prepareAll();
  await model.look(1);
  expect(model.open.value?.id).toBe(1);
  expect(made).toEqual([1]);
  await behind;
  expect(made).toEqual([1, 2]);
});

test('of two runs asked for one after the other the later one opens', async () => {
  const model = modelOf([]);
  await model.refresh();
  await Promise.all([model.look(1), model.look(2)]);
  expect(model.open.value?.id).toBe(2);
});
