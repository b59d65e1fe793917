import { describe, expect, test } from 'vitest';
import type { Call } from '../../../src/core/cues/call.ts';
import type { Talk } from '../../../src/core/cues/talk.ts';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { beginRun, type Run } from '../../../src/core/run/run.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { step } from '../../../src/core/run/step.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { readLogLine, writeLogLine } from '../../../src/log/logLine.ts';
import type { FixWatchPorts } from '../../../src/sensors/geolocation.ts';
import { type LiveRun, startLiveRun } from '../../../src/session/run/liveRun.ts';
import { createRunChoices } from '../../../src/session/run/runChoices.ts';
import { runClockOf } from '../../../src/session/run/runClock.ts';
import { practiceTape } from '../../../src/session/run/tape.ts';
import { aloneOf } from '../../../src/voice/tones/alone.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { pretendEar, pretendTime } from '../pretend.ts';

const got = readRacePlan({
  version: 1,
  kind: 'race',
  distanceM: 5000,
  goalS: 1650,
  checkpointsM: [2500],
});
if (!got.ok) throw new Error(got.error.place);
const plan = got.value;
const tape = practiceTape(plan, null);
const ORIGIN_MS = (tape[0]?.atMs ?? 0) - 1000;

/** A race lived from its tape, with something done at a time of it. */
const raced = (talk: Talk | undefined, doAtMs = Number.POSITIVE_INFINITY, act?: (run: LiveRun) => void) => {
  const time = pretendTime();
  const recorded: RunInput[] = [];
  const given: Pick<FixWatchPorts, 'onFix'>[] = [];
  const run = startLiveRun({
    config: { plan, course: null, voice: voiceOf(english.pack, english.words) },
    ear: pretendEar(time),
    buzz: () => {},
    clock: runClockOf(time, ORIGIN_MS),
    time,
    watch: (ports) => {
      given.push(ports);
      return { renew: () => {}, stop: () => {} };
    },
    record: (input) => recorded.push(input),
    onOver: () => {},
    ...(talk === undefined ? {} : { talk }),
  });
  let done = false;
  for (const input of tape) {
    time.pass(Math.max(0, input.atMs - ORIGIN_MS - time.nowMs()));
    if (input.type === 'fix') given[0]?.onFix(input.fix, ORIGIN_MS + time.nowMs());
    if (input.type === 'event') run.press(input.event);
    if (!done && input.atMs - ORIGIN_MS > doAtMs) {
      done = true;
      act?.(run);
    }
  }
  time.pass(20_000);
  return { run, recorded, kinds: run.cell.calls.value.map((call) => call.saying.kind) };
};

describe('how much is said', () => {
  test('is an input of the run, so that its log says it, and changes what is called', () => {
    const sparse = raced('sparse');
    expect(sparse.recorded.filter((i) => i.type === 'setting')).toMatchObject([{ talk: 'sparse' }]);
    expect(sparse.kinds).not.toContain('marker');
    expect(sparse.kinds).toEqual(expect.arrayContaining(['checkpoint', 'finish']));
    expect(raced('full').kinds).toContain('marker');
  });

  test('may be tones alone: no word where a tone can tell, and the log folds to the same', () => {
    const { run, recorded } = raced('tones');
    const calls = run.cell.calls.value;
    expect(recorded.filter((i) => i.type === 'setting')).toMatchObject([{ talk: 'tones' }]);
    const silent = calls.filter((call) => call.utterance.text === '').map((call) => call.saying.kind);
    expect(silent).toEqual(expect.arrayContaining(['start', 'checkpoint', 'finish']));
    for (const call of calls)
      expect(call.utterance.text === '', call.saying.kind).toBe(aloneOf(call.saying) !== null);
    // Through the very lines that are kept.
    const lines = recorded.filter((i) => i.type !== 'clock').map(writeLogLine);
    const setting = lines.map(readLogLine).find((line) => 'type' in line && line.type === 'setting');
    expect(setting).toMatchObject({ talk: 'tones' });
    const again = recorded.reduce<{ run: Run; calls: Call[] }>(
      (sofar, input) => {
        const next = step(sofar.run, input);
        return { run: next.run, calls: [...sofar.calls, ...next.calls] };
      },
      { run: beginRun(run.cell.config), calls: [] },
    );
    expect(again.calls.map((c) => [c.startMs, c.utterance.text, c.utterance.durationS])).toEqual(
      calls.map((c) => [c.startMs, c.utterance.text, c.utterance.durationS]),
    );
  });

  test('is kept between visits, and as usual where nothing sensible was kept', () => {
    const kept = new Map<string, string>();
    const keep = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
      removeItem: (key: string) => void kept.delete(key),
    };
    expect(createRunChoices(keep).talk.value).toBe('normal');
    createRunChoices(keep).talk.value = 'full';
    expect(createRunChoices(keep).talk.value).toBe('full');
    for (const key of kept.keys()) kept.set(key, '{"talk":"shouting"}');
    expect(createRunChoices(keep).talk.value).toBe('normal');
  });
});

describe('a quiet stretch on demand', () => {
  test('is seen, silences all but the end, and is over after ten minutes', () => {
    const { run, kinds } = raced('full', 300_000, (live) => {
      live.hush();
      const { quietUntilMs, atMs } = live.view.value;
      expect((quietUntilMs ?? 0) - atMs).toBe(600_000);
    });
    const said = run.cell.calls.value;
    const quietFrom = said.findIndex((c) => c.saying.kind === 'notice');
    const [notice, next] = said.slice(quietFrom);
    expect(notice?.saying).toMatchObject({ what: 'quiet' });
    expect((next?.startMs ?? 0) - (notice?.startMs ?? 0)).toBeGreaterThan(590_000);
    expect(kinds.at(-1)).toBe('finish');
    expect(run.view.value.quietUntilMs).toBeNull();
  });

  test('ends by the same press', () => {
    const { run } = raced('full', 300_000, (live) => {
      live.hush();
      live.hush();
      expect(live.view.value.quietUntilMs).toBeNull();
    });
    const notices = run.cell.calls.value.flatMap((c) => (c.saying.kind === 'notice' ? [c.saying.what] : []));
    expect(notices).toContain('talking');
  });
});
