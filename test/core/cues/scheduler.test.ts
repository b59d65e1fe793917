import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Call } from '../../../src/core/cues/call.ts';
import { type Cue, IMPORTANCE, type Manner } from '../../../src/core/cues/cue.ts';
import {
  type Ear,
  offer,
  QUIET_MS,
  type Reservation,
  type Speech,
  silence,
  speak,
} from '../../../src/core/cues/scheduler.ts';
import type { Voice } from '../../../src/core/cues/voicePort.ts';
import { message } from '../../../src/core/units/message.ts';
import { plainVoice } from './voices.ts';

const GRID_MS = 500;

const cueOf = (change: Partial<Cue>): Cue => ({
  topic: 'marker',
  saying: { kind: 'ease', byS: 5, unit: 'km', ahead: { side: 'even', seconds: 0, sure: true } },
  importance: IMPORTANCE.marker,
  manner: 'routine',
  dueMs: 0,
  expiresMs: 10_000,
  onlyShort: false,
  spare: false,
  atM: null,
  aheadS: null,
  aheadSdS: null,
  distanceM: null,
  why: message('rule'),
  ...change,
});

const earOf = (reserved: readonly Reservation[] = [], voice: Voice = plainVoice): Ear => ({
  voice,
  reserved,
  allowanceMs: Number.POSITIVE_INFINITY,
});

const checkpointAt = (atMs: number): Reservation => ({
  atMs,
  earlyMs: 800,
  importance: IMPORTANCE.checkpoint,
  quiet: false,
});

/** Offers each cue at its instant and walks the grid; marks still to come are reserved. */
const walk = (arrivals: readonly { readonly atMs: number; readonly cue: Cue }[], untilMs: number): Call[] => {
  const calls: Call[] = [];
  let speech: Speech = silence;
  for (let nowMs = 0; nowMs <= untilMs; nowMs += GRID_MS) {
    for (const { atMs, cue } of arrivals)
      if (atMs > nowMs - GRID_MS && atMs <= nowMs) speech = offer(speech, cue);
    const reserved = arrivals
      .filter(({ atMs, cue }) => cue.manner === 'mark' && atMs > nowMs)
      .map(({ cue }) => checkpointAt(cue.dueMs));
    const spoken = speak(speech, nowMs, earOf(reserved));
    speech = spoken.speech;
    if (spoken.call) calls.push(spoken.call);
  }
  return calls;
};

/** Whichever cue a call came from: its number stands in `why`. */
const arrival = (manner: Manner) =>
  fc.record({
    atMs: fc.nat({ max: 300_000 }),
    importance: fc.constantFrom(30, 35, 40, 45, 50, 55, 60, 70),
    shelfMs: fc.integer({ min: 0, max: 40_000 }),
    onlyShort: fc.boolean(),
    manner: fc.constant(manner),
  });

interface Arrival {
  readonly atMs: number;
  readonly cue: Cue;
}

const arrivalsOf = fc
  .tuple(
    fc.array(arrival('routine'), { maxLength: 30 }),
    fc.array(arrival('answer'), { maxLength: 5 }),
    fc.array(fc.nat({ max: 300_000 }), { maxLength: 6 }),
  )
  .map(([routine, answers, marks]): Arrival[] => {
    const markMs = [...marks].sort((a, b) => a - b).filter((ms, i, all) => ms - (all[i - 1] ?? -1e9) > 8000);
    return [
      ...[...routine, ...answers].map((a) => ({
        atMs: a.atMs,
        cue: cueOf({
          topic: 'marker',
          importance: a.manner === 'answer' ? IMPORTANCE.answer : a.importance,
          manner: a.manner,
          dueMs: a.atMs,
          expiresMs: a.atMs + a.shelfMs,
          onlyShort: a.onlyShort,
        }),
      })),
      ...markMs.map((ms) => ({
        atMs: Math.max(0, ms - 1000),
        cue: cueOf({
          topic: 'checkpoint',
          importance: IMPORTANCE.checkpoint,
          manner: 'mark',
          dueMs: ms,
          expiresMs: ms + 120_000,
        }),
      })),
    ].map(({ atMs, cue }, i) => ({ atMs, cue: { ...cue, why: { text: String(i), values: {} } } }));
  });

const cueFor = (arrivals: readonly Arrival[], call: Call): Cue => {
  const found = arrivals[Number(call.why.text)];
  if (!found) throw new Error(`a call from nowhere: ${call.why.text}`);
  return found.cue;
};

describe('laws of the ear', () => {
  const law = (holds: (arrivals: readonly Arrival[], calls: readonly Call[]) => void): void =>
    fc.assert(
      fc.property(arrivalsOf, (arrivals) => holds(arrivals, walk(arrivals, 340_000))),
      { numRuns: 300 },
    );

  test('no two calls overlap, and they come in order', () => {
    law((_, calls) => {
      calls.forEach((call, i) => {
        const before = calls[i - 1];
        if (before) expect(call.startMs).toBeGreaterThanOrEqual(before.endMs);
        expect(call.id).toBe(i);
      });
    });
  });

  test('a routine call keeps twelve seconds from whatever was said before, but for answers', () => {
    law((arrivals, calls) => {
      calls.forEach((call, i) => {
        if (cueFor(arrivals, call).manner !== 'routine') return;
        for (const before of calls.slice(0, i))
          if (cueFor(arrivals, before).manner !== 'answer')
            expect(call.startMs - before.endMs).toBeGreaterThanOrEqual(QUIET_MS);
      });
    });
  });

  test('nothing stale, nothing early, nothing in the past', () => {
    law((arrivals, calls) => {
      for (const call of calls) {
        const cue = cueFor(arrivals, call);
        expect(call.startMs).toBeLessThanOrEqual(cue.expiresMs);
        expect(call.startMs).toBeGreaterThanOrEqual(cue.dueMs);
        expect(call.startMs).toBeGreaterThan(call.decidedMs);
      }
    });
  });

  test('no cue is said twice', () => {
    law((_, calls) => {
      expect(new Set(calls.map((c) => c.why.text)).size).toBe(calls.length);
    });
  });

  test('every mark is said, and begins on its moment', () => {
    law((arrivals, calls) => {
      for (const [i, { cue, atMs }] of arrivals.entries()) {
        if (cue.manner !== 'mark') continue;
        const call = calls.find((c) => c.why.text === String(i));
        expect(call).toBeDefined();
        // The first half second of the walk leaves no time to foresee anything.
        if (atMs > 0) expect(call?.startMs).toBe(cue.dueMs);
      }
    });
  });
});

describe('the ear', () => {
  const decide = (cues: readonly Cue[], nowMs: number, ear: Ear = earOf(), from: Speech = silence) =>
    speak(cues.reduce(offer, from), nowMs, ear);

  test('says the important first and lets the other wait', () => {
    const { call, speech } = decide(
      [cueOf({ why: message('board') }), cueOf({ why: message('fuel'), importance: IMPORTANCE.fuel })],
      0,
    );
    expect(call?.why.text).toBe('fuel');
    expect(speech.waiting.map((c) => c.why.text)).toEqual(['board']);
  });

  test('shortens a routine call that would run into a checkpoint', () => {
    expect(decide([cueOf({})], 0, earOf([checkpointAt(6800)])).call?.form).toBe('long');
    expect(decide([cueOf({})], 0, earOf([checkpointAt(5000)])).call?.form).toBe('short');
  });

  test('moves it behind the checkpoint where not even the short form fits, and drops it when stale by then', () => {
    const { call, speech } = decide([cueOf({ expiresMs: 40_000 })], 0, earOf([checkpointAt(3000)]));
    expect(call).toBeNull();
    const busy: Speech = { ...speech, busyUntilMs: 8000, quietFromMs: 8000 };
    expect(speak(busy, 19_500, earOf()).call?.startMs).toBe(20_000);
    const stale = speak({ ...busy, waiting: [cueOf({ expiresMs: 15_000 })] }, 8500, earOf()).speech;
    expect(stale.waiting).toEqual([]);
    expect(stale.dropped).toBe(1);
    expect(busy.dropped).toBe(0);
  });

  test('keeps the quiet before a change of target as well', () => {
    const settle: Reservation = { atMs: 20_000, earlyMs: 800, importance: IMPORTANCE.settle, quiet: true };
    expect(decide([cueOf({ expiresMs: 20_000 })], 0, earOf([settle])).call?.form).toBe('long');
    expect(decide([cueOf({ expiresMs: 20_000 })], 4000, earOf([settle])).call?.form).toBe('short');
    expect(decide([cueOf({ expiresMs: 20_000 })], 7000, earOf([settle])).call).toBeNull();
  });

  test('answers at once after the call that sounds', () => {
    const answer = cueOf({ manner: 'answer', importance: IMPORTANCE.answer, dueMs: 100, expiresMs: 15_000 });
    expect(decide([answer], 100).call?.startMs).toBe(250);
    const busy: Speech = { ...silence, busyUntilMs: 700, quietFromMs: 700 };
    expect(decide([answer], 100, earOf(), busy).call?.startMs).toBe(1000);
  });

  test('a mark does not wait for room: it is said short', () => {
    const checkpoint = cueOf({ manner: 'mark', importance: IMPORTANCE.checkpoint, dueMs: 800 });
    const line: Reservation = { atMs: 2000, earlyMs: 800, importance: IMPORTANCE.finish, quiet: false };
    const { call } = decide([checkpoint], 0, earOf([line]));
    expect(call?.form).toBe('short');
    expect(call?.startMs).toBe(800);
  });

  test('of two marks the earlier comes first, whatever the importance', () => {
    const finish = cueOf({
      why: message('finish'),
      manner: 'mark',
      importance: IMPORTANCE.finish,
      dueMs: 900,
    });
    const checkpoint = cueOf({
      why: message('checkpoint'),
      manner: 'mark',
      importance: IMPORTANCE.checkpoint,
      dueMs: 600,
    });
    expect(decide([finish, checkpoint], 0).call?.why.text).toBe('checkpoint');
  });

  test('what is said while there is speech to spare stops when there is none, and is short before that', () => {
    const board = cueOf({ spare: true });
    const with_ = (allowanceMs: number) => decide([board], 0, { ...earOf(), allowanceMs });
    expect(with_(6000).call?.form).toBe('long');
    expect(with_(6000).speech.spareMs).toBe(5000);
    expect(with_(4000).call?.form).toBe('short');
    expect(with_(1000).call).toBeNull();
    expect(decide([cueOf({})], 0, { ...earOf(), allowanceMs: 0 }).call?.form).toBe('long');
  });

  test('a newer answer replaces one that still waits', () => {
    const waiting = [1, 2]
      .map((n) => cueOf({ topic: 'answer', manner: 'answer', why: { text: String(n), values: {} } }))
      .reduce(offer, silence).waiting;
    expect(waiting.map((c) => c.why.text)).toEqual(['2']);
  });
});
