import { describe, expect, test } from 'vitest';
import type { Fix, Input } from '../../../src/core/estimate/input.ts';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import type { FixWatchPorts } from '../../../src/sensors/geolocation.ts';
import { startLiveRun } from '../../../src/session/run/liveRun.ts';
import { runClockOf } from '../../../src/session/run/runClock.ts';
import { practiceTape } from '../../../src/session/run/tape.ts';
import { voiceOf } from '../../../src/voice/utter.ts';
import { pretendEar, pretendTime } from '../pretend.ts';

const got = readRacePlan({ version: 1, kind: 'race', distanceM: 1000, goalS: 270, checkpointsM: [500] });
if (!got.ok) throw new Error(got.error.place);
const plan = got.value;
const tape = practiceTape(plan, null);
const ORIGIN_MS = (tape[0]?.atMs ?? 0) - 1000;

const rig = () => {
  const time = pretendTime();
  const ear = pretendEar(time);
  const recorded: RunInput[] = [];
  let ports: Omit<FixWatchPorts, 'geolocation'> | null = null;
  const happened: string[] = [];
  const run = startLiveRun({
    config: { plan, course: null, voice: voiceOf(english.pack, english.words) },
    ear,
    buzz: () => {},
    clock: runClockOf(time, ORIGIN_MS),
    time,
    watch: (given) => {
      ports = given;
      return { renew: () => happened.push('renew'), stop: () => happened.push('stop') };
    },
    record: (input) => recorded.push(input),
    onOver: () => happened.push('over'),
  });
  const tell = (fix: Fix) => ports?.onFix(fix, ORIGIN_MS + time.nowMs());
  /** Lives the tape, in its own time. */
  const live = (inputs: readonly Input[]) => {
    for (const input of inputs) {
      time.pass(Math.max(0, input.atMs - ORIGIN_MS - time.nowMs()));
      if (input.type === 'fix') tell(input.fix);
      if (input.type === 'event') run.press(input.event);
    }
  };
  return { time, ear, recorded, run, happened, live };
};

describe('a live run', () => {
  test('goes from ready to running to over, and says what it decided at the time decided', () => {
    const { run, live, time, ear, happened } = rig();
    expect(run.phase.value).toBe('ready');
    live(tape);
    time.pass(20_000);
    expect(run.phase.value).toBe('over');
    expect(happened).toEqual(['stop', 'over']);
    const calls = run.cell.calls.value;
    expect(calls.map((c) => c.saying.kind)).toEqual(
      expect.arrayContaining(['start', 'checkpoint', 'finish']),
    );
    expect(ear.said().map((s) => [s.text, Math.round(s.atMs)])).toEqual(
      calls.map((c) => [c.utterance.text, Math.round(c.startMs - ORIGIN_MS)]),
    );
    // Known early enough for the device: no call is decided after it should sound.
    expect(calls.every((c) => c.startMs > c.decidedMs)).toBe(true);
    expect([...run.heard.values()].every((h) => h === 'scheduled')).toBe(true);
  });

  test('records everything before it is used, in order', () => {
    const { recorded, live } = rig();
    live(tape.slice(0, 60));
    const own = recorded.filter((i) => i.type !== 'clock');
    expect(own).toHaveLength(60);
    expect(own.every((i, n) => i.atMs >= (own[n - 1]?.atMs ?? 0))).toBe(true);
  });

  test('redraws once a second and not more', () => {
    const { run, live, time } = rig();
    live(tape.slice(0, 40));
    const views = new Set<unknown>();
    const unsubscribe = run.view.subscribe((view) => views.add(view));
    views.clear();
    time.pass(10_000);
    unsubscribe();
    expect(views.size).toBe(10);
  });

  test('shows the end though its clock then stands still', () => {
    const { run, live, time } = rig();
    live(tape);
    time.pass(20_000);
    expect(run.view.value.phase.phase).toBe('finished');
  });

  test('makes the watch anew when the page is seen again, and not after the end', () => {
    const { run, live, happened, time } = rig();
    live(tape.slice(0, 40));
    run.seenAgain();
    expect(happened).toEqual(['renew']);
    run.press('stop');
    time.pass(20_000);
    expect(run.phase.value).toBe('over');
    run.seenAgain();
    run.press('ask');
    expect(happened).toEqual(['renew', 'stop', 'over']);
  });
});
