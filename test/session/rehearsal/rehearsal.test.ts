import { describe, expect, test } from 'vitest';
import type { Input } from '../../../src/core/estimate/input.ts';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { beginRun, type RunConfig } from '../../../src/core/run/run.ts';
import { flush, step } from '../../../src/core/run/step.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { startRehearsal } from '../../../src/session/rehearsal/rehearsal.ts';
import { practiceTape } from '../../../src/session/run/tape.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { pretendEar, pretendTime } from '../pretend.ts';

const planOf = (file: object): RacePlan => {
  const got = readRacePlan(file);
  if (!got.ok) throw new Error(got.error.place);
  return got.value;
};

const plan = planOf({
  version: 1,
  kind: 'race',
  distanceM: 3000,
  goalS: 840,
  opening: { untilM: 600, quickerSPerKm: 5 },
  checkpointsM: [1500],
});
const config: RunConfig = { plan, course: null, voice: voiceOf(english.pack, english.words) };
const tape = practiceTape(plan, null);

/** What the engine says of a tape by itself. */
const foldedTexts = (inputs: readonly Input[]): string[] => {
  let run = beginRun(config);
  const texts: string[] = [];
  for (const input of inputs) {
    const stepped = step(run, input);
    run = stepped.run;
    texts.push(...stepped.calls.map((c) => c.utterance.text));
  }
  return [...texts, ...flush(run).calls.map((c) => c.utterance.text)];
};

/** Long enough for the whole race at true speed. */
const WHOLE_MS = 1_200_000;

describe('a rehearsal', () => {
  test.each([1, 5, 20, 60])('says at %ix what the engine says, and no two calls at once', (rate) => {
    const time = pretendTime();
    const ear = pretendEar(time);
    const run = startRehearsal(config, tape, rate, ear, time);
    time.pass(WHOLE_MS);
    expect(run.phase.value).toBe('over');
    const said = ear.said();
    expect(said.length).toBeGreaterThan(4);
    expect(said.map((s) => s.text)).toEqual(foldedTexts(tape));
    expect(run.cell.calls.value.map((c) => c.utterance.text)).toEqual(said.map((s) => s.text));
    for (const [i, call] of said.entries()) expect(call.atMs).toBeGreaterThanOrEqual(said[i - 1]?.endMs ?? 0);
  });

  test('takes as long as it promises: calls at true speed, the rest at the rate', () => {
    const time = pretendTime();
    const ear = pretendEar(time);
    const run = startRehearsal(config, tape, 60, ear, time);
    const beganMs = time.nowMs();
    while (run.phase.value !== 'over') time.pass(100);
    const talkMs = ear.said().reduce((sum, s) => sum + s.endMs - s.atMs, 0);
    const raceMs = (tape.at(-1)?.atMs ?? 0) - (tape[0]?.atMs ?? 0);
    const promisedMs = talkMs + (raceMs - talkMs) / 60;
    expect(time.nowMs() - beganMs).toBeGreaterThan(promisedMs * 0.95);
    expect(time.nowMs() - beganMs).toBeLessThan(promisedMs * 1.1 + 3000);
  });

  test('stands still while paused and goes on where it was', () => {
    const time = pretendTime();
    const ear = pretendEar(time);
    const run = startRehearsal(config, tape, 20, ear, time);
    time.pass(8000);
    run.pause();
    const { elapsedS } = run.view.value;
    const count = ear.said().length;
    time.pass(60_000);
    expect(run.view.value.elapsedS).toBe(elapsedS);
    expect(ear.said()).toHaveLength(count);
    run.goOn();
    time.pass(WHOLE_MS);
    expect(ear.said().map((s) => s.text)).toEqual(foldedTexts(tape));
  });

  test('goes over to another rate without losing or doubling a call', () => {
    const time = pretendTime();
    const ear = pretendEar(time);
    const run = startRehearsal(config, tape, 60, ear, time);
    for (let i = 0; i < 2000 && run.phase.value !== 'over'; i++) {
      time.pass(370);
      run.setRate([1, 5, 20, 60][i % 4] ?? 1);
    }
    run.setRate(60);
    time.pass(WHOLE_MS);
    expect(ear.said().map((s) => s.text)).toEqual(foldedTexts(tape));
    const said = ear.said();
    for (const [i, call] of said.entries())
      expect(call.atMs).toBeGreaterThanOrEqual((said[i - 1]?.endMs ?? 0) - 1);
  });

  test('answers a question within a second of the race', () => {
    const time = pretendTime();
    const ear = pretendEar(time);
    const run = startRehearsal(config, tape, 5, ear, time);
    time.pass(30_000);
    const askedMs = run.view.value.atMs;
    run.press('ask');
    const answer = run.cell.calls.value.find((c) => c.saying.kind === 'answer');
    expect(answer).toBeDefined();
    expect((answer?.startMs ?? Number.POSITIVE_INFINITY) - askedMs).toBeLessThan(1500);
  });

  test('ends when told to, and says nothing more', () => {
    const time = pretendTime();
    const ear = pretendEar(time);
    const run = startRehearsal(config, tape, 20, ear, time);
    time.pass(10_000);
    run.end();
    const count = ear.said().length;
    time.pass(WHOLE_MS);
    expect(ear.said().length).toBe(count);
    expect(run.phase.value).toBe('over');
  });
});
