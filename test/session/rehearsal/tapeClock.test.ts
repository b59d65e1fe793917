import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  anchored,
  atRate,
  engineAtMs,
  pageAtMs,
  type TapeClock,
  withCall,
} from '../../../src/session/rehearsal/tapeClock.ts';

const FROM: TapeClock = { engineMs: 1_000_000, pageMs: 5000, rate: 20, calls: [] };

/** Clocks with up to three calls, one after the other. */
const clocks = fc
  .record({
    rate: fc.constantFrom(1, 5, 20, 60),
    gaps: fc.array(
      fc.record({
        waitMs: fc.integer({ min: 0, max: 60_000 }),
        lengthMs: fc.integer({ min: 100, max: 9000 }),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ rate, gaps }) => {
    let clock: TapeClock = { ...FROM, rate };
    let atMs = FROM.engineMs;
    for (const { waitMs, lengthMs } of gaps) {
      clock = withCall(clock, atMs + waitMs, atMs + waitMs + lengthMs);
      atMs += waitMs + lengthMs;
    }
    return clock;
  });

describe('the race clock of a rehearsal', () => {
  test('runs at the chosen rate between calls and at true speed while one sounds', () => {
    const clock = withCall(FROM, 1_010_000, 1_014_000);
    // 10 s of race at 20x are 500 ms; 4 s of call are 4 s.
    expect(pageAtMs(clock, 1_010_000)).toBe(5500);
    expect(pageAtMs(clock, 1_014_000)).toBe(9500);
    expect(pageAtMs(clock, 1_034_000)).toBe(10_500);
    expect(engineAtMs(clock, 7500)).toBe(1_012_000);
  });

  test('stands while paused', () => {
    const paused = atRate(FROM, 0, 6000);
    expect(engineAtMs(paused, 999_999)).toBe(1_020_000);
    expect(pageAtMs(paused, 1_020_001)).toBe(Number.POSITIVE_INFINITY);
    expect(pageAtMs(paused, 1_020_000)).toBe(6000);
  });

  test('goes there and back', () => {
    fc.assert(
      fc.property(clocks, fc.integer({ min: 0, max: 200_000 }), (clock, afterMs) => {
        const engineMs = clock.engineMs + afterMs;
        expect(engineAtMs(clock, pageAtMs(clock, engineMs))).toBeCloseTo(engineMs, 3);
      }),
    );
  });

  test('never runs backwards, nor faster than its rate, nor slower than true speed', () => {
    fc.assert(
      fc.property(clocks, fc.nat(30_000), fc.nat(30_000), (clock, a, b) => {
        const [first, second] = [Math.min(a, b), Math.max(a, b)];
        const ran = engineAtMs(clock, FROM.pageMs + second) - engineAtMs(clock, FROM.pageMs + first);
        expect(ran).toBeGreaterThanOrEqual(second - first - 1e-6);
        expect(ran).toBeLessThanOrEqual(clock.rate * (second - first) + 1e-6);
      }),
    );
  });

  test('is the same clock from a later anchor and keeps its place at a change of rate', () => {
    fc.assert(
      fc.property(clocks, fc.nat(20_000), fc.nat(20_000), (clock, a, b) => {
        const anchorMs = FROM.pageMs + a;
        const later = anchored(clock, engineAtMs(clock, anchorMs), anchorMs);
        expect(engineAtMs(later, anchorMs + b)).toBeCloseTo(engineAtMs(clock, anchorMs + b), 3);
        const other = atRate(clock, 5, anchorMs);
        expect(engineAtMs(other, anchorMs)).toBeCloseTo(engineAtMs(clock, anchorMs), 3);
      }),
    );
  });
});
