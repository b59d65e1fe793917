import { describe, expect, test } from 'vitest';
import { readPracticePlan } from '../../../src/core/plan/parsePracticePlan.ts';
import { beginPracticeDigest } from '../../../src/core/review/practiceDigest.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const ZERO_MS = 1_800_000_000_000;

const digestOf = (legs: readonly object[], untilS: number, bpmAt: (s: number) => number | null) => {
  const plan = readPracticePlan({ version: 1, kind: 'practice', place: 'indoors', legs });
  if (!plan.ok) throw new Error('no plan');
  const digest = beginPracticeDigest({ plan: plan.value, voice: voiceOf(english.pack, english.words) });
  digest.take({ type: 'event', atMs: ZERO_MS, event: 'start' });
  for (let s = 1; s <= untilS; s++) {
    const atMs = ZERO_MS + 1000 * s;
    const input: RunInput = { type: 'heart', atMs, bpm: bpmAt(s) };
    digest.take(input);
  }
  return digest.end();
};

describe('a session put together for review', () => {
  const legs = [
    { kind: 'warm-up', for: { timeS: 60 }, target: { effort: 'easy' } },
    { kind: 'work', for: { timeS: 120 }, target: { paceSPerKm: 290 } },
    { kind: 'cool-down', for: { timeS: 30 } },
  ];

  test('has each leg with its own time and the heart rate of its own beats', () => {
    const digest = digestOf(legs, 220, (s) => (s < 60 ? 120 : s < 180 ? 160 : 130));
    expect(
      digest.legs.map((leg) => [leg.kind, Math.round(leg.timeS), Math.round(leg.heartBpm ?? 0)]),
    ).toEqual([
      ['warm-up', 60, 120],
      ['work', 120, 160],
      ['cool-down', 30, 130],
    ]);
    expect([digest.startMs, digest.endS]).toEqual([ZERO_MS, 210]);
    // Nothing measured the way.
    expect(digest.legs.map((leg) => leg.distanceM)).toEqual([null, null, null]);
  });

  test('is looked at every five seconds up to its end, with what was asked there', () => {
    const { samples } = digestOf(legs, 220, () => null);
    const times = samples.map((s) => s.atS);
    expect(times.slice(1).every((t, i) => t - (times[i] ?? 0) >= 5)).toBe(true);
    expect(times.length).toBeGreaterThan(35);
    expect(times.at(-1)).toBeLessThanOrEqual(210);
    expect(samples.filter((s) => s.askedSPerKm === 290).map((s) => s.atS)).toEqual(
      times.filter((t) => t >= 60 && t < 180),
    );
    expect(samples.every((s) => s.heartBpm === null && s.paceSPerKm === null)).toBe(true);
  });

  test('that was broken off has the legs that were run, and no end', () => {
    const digest = digestOf(legs, 100, () => null);
    expect(digest.endS).toBeNull();
    expect(digest.legs.map((leg) => leg.kind)).toEqual(['warm-up']);
    expect(digest.calls.length).toBeGreaterThan(0);
  });
});
