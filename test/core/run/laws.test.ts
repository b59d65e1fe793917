import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Call } from '../../../src/core/cues/call.ts';
import { QUIET_MS } from '../../../src/core/cues/scheduler.ts';
import type { EventName } from '../../../src/core/estimate/input.ts';
import { beginRun, type Run } from '../../../src/core/run/run.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { step } from '../../../src/core/run/step.ts';
import { plainVoice } from '../cues/voices.ts';
import { plan, play, playOut, START_MS, type Tape, tapeOf } from './tape.ts';

/** A kilometre and a half in 6 to 11 minutes, by runners who wave, stop, lose the sky and press. */
const short = {
  ...plan,
  distanceM: 1500,
  goalS: 450,
  opening: { untilM: 300, quickerSPerKm: 5 },
  push: { fromM: 1200, quickerSPerKm: 4 },
  checkpointsM: [500, 750, 1490],
  stations: [{ atM: 900, offers: ['water' as const] }],
  fuel: [{ item: 'gel' as const, atM: 640 }],
};

const worlds = fc
  .record({
    seed: fc.integer({ min: 1, max: 10_000 }),
    mean: fc.double({ min: 0.85, max: 1.15, noNaN: true }),
    wave: fc.double({ min: 0, max: 0.15, noNaN: true }),
    stopAtS: fc.option(fc.integer({ min: 60, max: 300 }), { nil: null }),
    darkFromS: fc.integer({ min: 30, max: 500 }),
    darkForS: fc.integer({ min: 0, max: 120 }),
    events: fc.array(
      fc.record({
        atS: fc.integer({ min: -10, max: 480 }).map((s) => s + 0.37),
        event: fc.constantFrom<EventName>('ask', 'marker', 'gun'),
      }),
      { maxLength: 4 },
    ),
    hasStart: fc.boolean(),
  })
  .map(
    (w): Tape =>
      tapeOf({
        plan: short,
        seed: w.seed,
        penS: 40,
        speedAt: (s) =>
          w.stopAtS !== null && s > w.stopAtS && s < w.stopAtS + 30
            ? 0
            : (10 / 3) * w.mean * (1 + w.wave * Math.sin(s / 20)),
        heard: (s) => s < w.darkFromS || s > w.darkFromS + w.darkForS,
        events: [...(w.hasStart ? [{ atS: 0, event: 'start' as const }] : []), ...w.events],
      }),
  );

const law = (numRuns: number, holds: (tape: Tape) => void): void =>
  fc.assert(fc.property(worlds, holds), { numRuns });

describe('laws of the run', () => {
  test('telling the clock changes nothing: any number of times, anywhere', () => {
    fc.assert(
      fc.property(
        worlds,
        fc.array(fc.integer({ min: -40_000, max: 500_000 }), { maxLength: 200 }),
        (tape, clockMs) => {
          const lastMs = tape.inputs.at(-1)?.atMs ?? 0;
          const clocks: RunInput[] = clockMs
            .map((ms) => START_MS + ms)
            .filter((atMs) => atMs <= lastMs)
            .map((atMs) => ({ type: 'clock', atMs }));
          const mixed = [...tape.inputs, ...clocks].sort((a, b) => a.atMs - b.atMs);
          expect(play(tape, mixed).calls).toEqual(play(tape).calls);
        },
      ),
      { numRuns: 25 },
    );
  });

  test('what was said of a beginning is the beginning of what is said of the whole', () => {
    fc.assert(
      fc.property(worlds, fc.double({ min: 0, max: 1, noNaN: true }), (tape, share) => {
        const inputs = tape.inputs.slice(0, Math.floor(share * tape.inputs.length));
        const early = play(tape, inputs).calls;
        expect(play(tape).calls.slice(0, early.length)).toEqual(early);
      }),
      { numRuns: 25 },
    );
  });

  test('the same log gives the same calls, and a step leaves the run before it as it was', () => {
    law(15, (tape) => {
      const config = { plan: tape.plan, course: tape.course, voice: plainVoice };
      let run: Run = beginRun(config);
      const calls: Call[] = [];
      for (const input of tape.inputs) {
        // A side branch: taken and thrown away.
        step(step(run, { type: 'event', atMs: input.atMs, event: 'ask' }).run, {
          type: 'clock',
          atMs: input.atMs + 9000,
        });
        const next = step(run, input);
        run = next.run;
        calls.push(...next.calls);
      }
      expect(calls).toEqual(play(tape).calls);
    });
  });

  test('calls do not overlap, are numbered, begin after they are decided and before they are stale', () => {
    law(25, (tape) => {
      const { calls } = playOut(tape);
      calls.forEach((call, i) => {
        const before = calls[i - 1];
        expect(call.id).toBe(i);
        if (before) expect(call.startMs).toBeGreaterThanOrEqual(before.endMs);
        if (before) expect(call.decidedMs).toBeGreaterThanOrEqual(before.decidedMs);
        expect(call.startMs).toBeGreaterThan(call.decidedMs);
        expect(call.startMs).toBeLessThanOrEqual(call.expiresMs);
        expect(call.endMs - call.startMs).toBeCloseTo(call.utterance.durationS * 1000, 6);
        for (const n of [call.aheadS, call.aheadSdS, call.distanceM])
          expect(n === null || Number.isFinite(n)).toBe(true);
      });
    });
  });

  test('routine calls keep twelve seconds, pace calls thirty unless worse', () => {
    const routine = ['opening', 'settle', 'station', 'fuel', 'push', 'ease', 'quicken', 'signal'];
    law(25, (tape) => {
      const said = playOut(tape).calls.filter((c) => !('what' in c.saying && c.saying.what === 'noBoard'));
      said.forEach((call, i) => {
        const before = said[i - 1];
        if (!before || before.saying.kind === 'answer' || !routine.includes(call.saying.kind)) return;
        expect(call.startMs - before.endMs).toBeGreaterThanOrEqual(QUIET_MS);
      });
    });
  });

  test('a runner who comes to the finish hears each checkpoint once, in order, and the finish last', () => {
    law(25, (tape) => {
      const { run, calls } = playOut(tape);
      const checkpoints = calls.filter(
        (c) => c.saying.kind === 'checkpoint' && c.why.text.startsWith('crossing'),
      );
      const places = checkpoints.map((c) => c.atM);
      expect(places).toEqual(short.checkpointsM.slice(0, places.length));
      if (run.finishMs === null) return;
      expect(places).toEqual(short.checkpointsM);
      expect(calls.at(-1)?.saying.kind).toBe('finish');
    });
  });
});
