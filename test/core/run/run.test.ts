import { describe, expect, test } from 'vitest';
import type { Call } from '../../../src/core/cues/call.ts';
import { QUIET_MS } from '../../../src/core/cues/scheduler.ts';
import { beginRun, driftOf, phaseOf, progressOf } from '../../../src/core/run/run.ts';
import { step } from '../../../src/core/run/step.ts';
import { plainVoice } from '../cues/voices.ts';
import { plan, play, playOut, START_MS, startS, tapeOf } from './tape.ts';

const kinds = (calls: readonly Call[]): string[] => calls.map((c) => c.saying.kind);
const ofKind = (calls: readonly Call[], kind: Call['saying']['kind']): readonly Call[] =>
  calls.filter((c) => c.saying.kind === kind);
const one = (calls: readonly Call[], kind: Call['saying']['kind']): Call => {
  const [call, ...more] = ofKind(calls, kind);
  if (!call || more.length > 0)
    throw new Error(`${more.length + Number(call !== undefined)} calls of ${kind}`);
  return call;
};

describe('three kilometres run as planned', () => {
  const tape = tapeOf();
  const { run, calls } = playOut(tape, undefined, { talk: 'full', quietUntilMs: null });

  test('are called from the start to the finish', () => {
    expect(kinds(calls)).toEqual([
      'start',
      'opening',
      'settle',
      'marker',
      'station',
      'checkpoint',
      'fuel',
      'marker',
      'push',
      'checkpoint',
      'finish',
    ]);
  });

  test('each checkpoint once, beginning on the crossing, with the drift of the crossing', () => {
    const checkpoints = ofKind(calls, 'checkpoint');
    expect(checkpoints.map((c) => c.atM)).toEqual([1500, 2500]);
    for (const call of checkpoints) {
      const trueS = tape.crossingS(call.atM ?? 0);
      expect(Math.abs(startS(call) - trueS)).toBeLessThan(1);
      const planS = run.race.schedule.timeAtS(call.atM ?? 0);
      expect(Math.abs((call.aheadS ?? 99) - (planS - trueS))).toBeLessThan(1);
      expect((call.aheadS ?? 0) + startS(call)).toBeCloseTo(planS, 6);
    }
  });

  test('on a normal talk level so short a race has no speech to spare for boards and stations', () => {
    const usual = playOut(tape).calls;
    expect([...ofKind(usual, 'marker'), ...ofKind(usual, 'station')]).toEqual([]);
    expect(ofKind(usual, 'checkpoint')).toHaveLength(2);
  });

  test('a checkpoint and a board at one place are one call', () => {
    const places = calls
      .filter((c) => c.saying.kind === 'marker' || c.saying.kind === 'checkpoint')
      .map((c) => c.atM);
    expect(new Set(places).size).toBe(places.length);
  });

  test('ends at the line', () => {
    const phase = phaseOf(run);
    if (phase.phase !== 'finished') throw new Error(phase.phase);
    expect(Math.abs(phase.finishS - tape.crossingS(3000))).toBeLessThan(1);
    expect(phase.startMs).toBe(START_MS);
    expect(phase.finishByGunS).toBeNull();
    expect(startS(one(calls, 'finish'))).toBeCloseTo(phase.finishS, 3);
  });

  test('no two calls overlap, routine ones keep their distance, nothing is late', () => {
    calls.forEach((call, i) => {
      const before = calls[i - 1];
      expect(call.startMs).toBeGreaterThan(call.decidedMs);
      expect(call.startMs).toBeLessThanOrEqual(call.expiresMs);
      if (before) expect(call.startMs).toBeGreaterThanOrEqual(before.endMs);
      if (before && !['checkpoint', 'finish', 'start'].includes(call.saying.kind))
        expect(call.startMs - before.endMs).toBeGreaterThanOrEqual(QUIET_MS);
    });
  });
});

describe('phases', () => {
  test('before, running, stopped', () => {
    const tape = tapeOf({
      events: [
        { atS: 0, event: 'start' },
        { atS: 300, event: 'stop' },
      ],
    });
    const config = { plan, course: tape.course, voice: plainVoice };
    expect(phaseOf(beginRun(config))).toEqual({ phase: 'before', gunMs: null });
    const until = (s: number) =>
      play(
        tape,
        tape.inputs.filter((i) => i.atMs <= START_MS + s * 1000),
      ).run;
    expect(phaseOf(until(100))).toEqual({ phase: 'running', gunMs: null, startMs: START_MS });
    expect(phaseOf(until(301))).toEqual({
      phase: 'stopped',
      gunMs: null,
      startMs: START_MS,
      stopMs: START_MS + 300_000,
    });
    expect(driftOf(beginRun(config), START_MS)).toBeNull();
    expect(driftOf(until(100), START_MS + 100_500)?.aheadS).toBeCloseTo(0, -1);
    expect(progressOf(until(100), START_MS + 100_500).distanceM).toBeCloseTo(335, -1);
  });

  test('after a stop nothing is said', () => {
    const tape = tapeOf({
      events: [
        { atS: 0, event: 'start' },
        { atS: 300, event: 'stop' },
        { atS: 320, event: 'ask' },
      ],
    });
    expect(playOut(tape).calls.every((c) => startS(c) < 300)).toBe(true);
  });

  test('a stop pressed a moment behind the line is the finish', () => {
    const tape = tapeOf();
    const lineS = tape.crossingS(3000);
    // The receiver falls silent 6 m before the line; the runner presses just behind it.
    const before = tape.inputs.filter((i) => i.atMs < START_MS + (lineS - 1.8) * 1000);
    const stop = { type: 'event', atMs: START_MS + Math.round((lineS + 0.3) * 1000), event: 'stop' } as const;
    const { run, calls } = playOut(tape, [...before, stop]);
    const phase = phaseOf(run);
    expect(phase.phase).toBe('finished');
    expect(phase.phase === 'finished' && Math.abs(phase.finishS - lineS)).toBeLessThan(1.5);
    expect(kinds(calls).at(-1)).toBe('finish');
  });

  test('a recording that ends at the line is played to the finish', () => {
    const tape = tapeOf();
    const inputs = tape.inputs.filter((i) => i.atMs < START_MS + (tape.crossingS(3000) - 2) * 1000);
    expect(phaseOf(playOut(tape, inputs).run).phase).toBe('finished');
    const half = tape.inputs.filter((i) => i.atMs < START_MS + 500_000);
    expect(phaseOf(playOut(tape, half).run).phase).toBe('running');
  });

  test('after the finish there is nothing but the finish', () => {
    const tape = tapeOf({
      events: [
        { atS: 0, event: 'start' },
        { atS: 905, event: 'ask' },
        { atS: 908, event: 'stop' },
      ],
    });
    const { run, calls } = playOut(tape);
    expect(kinds(calls).at(-1)).toBe('finish');
    expect(phaseOf(run).phase).toBe('finished');
  });
});

describe('the start', () => {
  test('found by itself is said when it is found', () => {
    const { run, calls } = playOut(tapeOf({ events: [], penS: 90 }));
    const start = one(calls, 'start');
    expect(calls[0]).toBe(start);
    expect(startS(start)).toBeLessThan(25);
    expect(Math.abs((run.estimate.startMs ?? 0) - START_MS)).toBeLessThan(4000);
    expect(ofKind(calls, 'finish')).toHaveLength(1);
  });

  test('gun and own clock are kept apart', () => {
    const byGun = { ...plan, goalBy: 'gun' as const };
    const tape = tapeOf({
      plan: byGun,
      events: [
        { atS: -40, event: 'gun' },
        { atS: 0, event: 'start' },
      ],
      penS: 60,
    });
    const { run, calls } = playOut(tape);
    const phase = phaseOf(run);
    if (phase.phase !== 'finished') throw new Error(phase.phase);
    expect((phase.finishByGunS ?? 0) - phase.finishS).toBeCloseTo(40, 6);
    expect(one(calls, 'finish').saying).toMatchObject({
      timeS: Math.round(phase.finishS + 40),
      ownS: Math.round(phase.finishS),
    });
    expect(ofKind(calls, 'checkpoint')[0]?.aheadS).toBeLessThan(-35);
  });
});

describe('presses', () => {
  const withEvents = (...events: readonly { atS: number; event: 'ask' | 'marker' }[]) =>
    playOut(tapeOf({ events: [{ atS: 0, event: 'start' }, ...events] })).calls;

  test('ask is answered at once', () => {
    const answer = one(withEvents({ atS: 400.3, event: 'ask' }), 'answer');
    expect(startS(answer)).toBeCloseTo(400.45, 2);
    expect(answer.saying).toMatchObject({ kind: 'answer', unit: 'km' });
  });

  test('or after the call that sounds, or after the checkpoint that is about to', () => {
    const calls = withEvents({ atS: 1.0, event: 'ask' });
    expect(startS(one(calls, 'answer'))).toBeCloseTo((one(calls, 'start').endMs - START_MS) / 1000 + 0.3, 2);
    const late = withEvents({ atS: 447, event: 'ask' });
    const checkpoint = ofKind(late, 'checkpoint')[0];
    expect(Math.abs(startS(checkpoint as Call) - 447.5)).toBeLessThan(3);
    expect(one(late, 'answer').startMs).toBeGreaterThan(checkpoint?.endMs ?? 0);
  });

  test('in the pen too', () => {
    const calls = playOut(
      tapeOf({
        events: [
          { atS: -10, event: 'ask' },
          { atS: 0, event: 'start' },
        ],
      }),
    ).calls;
    expect(calls[0]?.saying).toEqual({
      kind: 'answer',
      distanceM: 0,
      unit: 'km',
      ahead: null,
      finishS: null,
    });
  });
});

describe('settings', () => {
  test('sparse leaves out boards and stations', () => {
    const { calls } = playOut(tapeOf(), undefined, { talk: 'sparse', quietUntilMs: null });
    expect(kinds(calls)).toEqual([
      'start',
      'opening',
      'settle',
      'checkpoint',
      'fuel',
      'push',
      'checkpoint',
      'finish',
    ]);
  });

  test('a quiet stretch on demand, in which the runner may still ask', () => {
    const tape = tapeOf({
      events: [
        { atS: 0, event: 'start' },
        { atS: 400, event: 'ask' },
      ],
    });
    const quiet = { type: 'setting', atMs: START_MS + 100_000, quietUntilMs: START_MS + 700_000 } as const;
    const inputs = [...tape.inputs, quiet].sort((a, b) => a.atMs - b.atMs);
    const during = playOut(tape, inputs).calls.filter((c) => startS(c) > 100 && startS(c) < 700);
    expect(kinds(during)).toEqual(['answer']);
  });
});

describe('a tunnel', () => {
  const tunnel = { heard: (s: number) => s < 420 || s > 480 };

  test('over a checkpoint: it is called by dead reckoning, never as sure, and the runner told before and after', () => {
    const tape = tapeOf(tunnel);
    const { calls } = playOut(tape);
    const [first] = ofKind(calls, 'checkpoint');
    expect(first?.why.text).toBe('crossing by dead reckoning');
    expect(first?.saying).toMatchObject({ ahead: { sure: false } });
    expect(Math.abs(startS(first as Call) - tape.crossingS(1500))).toBeLessThan(2);
    const signals = ofKind(calls, 'signal').map((c) => ('what' in c.saying ? c.saying.what : ''));
    expect(signals).toEqual(['lost', 'back']);
  });

  test('an outage of five minutes loses no checkpoint', () => {
    const { calls } = playOut(tapeOf({ heard: (s) => s < 400 || s > 700 }));
    expect(ofKind(calls, 'checkpoint').map((c) => c.atM)).toEqual([1500, 2500]);
  });
});

test('inputs that claim an earlier instant count as now', () => {
  const tape = tapeOf();
  const { run } = play(tape, tape.inputs.slice(0, 200));
  const stepped = step(run, { type: 'event', atMs: START_MS - 5000, event: 'ask' });
  expect(stepped.calls[0]?.decidedMs).toBe(run.atMs);
});

test('hours of nothing but the clock after the race are no work and no words', () => {
  const tape = tapeOf();
  const { run } = playOut(tape);
  expect(step(run, { type: 'clock', atMs: run.atMs + 86_400_000 }).calls).toEqual([]);
  const { run: running } = play(tape, tape.inputs.slice(0, 200));
  const abandoned = step(running, { type: 'clock', atMs: running.atMs + 86_400_000 });
  expect(abandoned.calls.every((c) => c.startMs < running.atMs + 3_601_000)).toBe(true);
});
