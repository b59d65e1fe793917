import { describe, expect, test } from 'vitest';
import type { Fix } from '../../../src/core/estimate/input.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { playOut, START_MS, startS, tapeOf } from './tape.ts';

/** From one second to another the receiver repeats its last place with new times. */
const frozen = (fromS: number, toS: number, speedMps?: (last: Fix) => number | null): RunInput[] => {
  let last: Fix | null = null;
  return tapeOf().inputs.map((input) => {
    const ownS = (input.atMs - START_MS) / 1000;
    if (input.type !== 'fix') return input;
    if (ownS < fromS || ownS > toS || last === null) {
      last = input.fix;
      return input;
    }
    const { latitudeDeg, longitudeDeg } = last;
    const speed = speedMps ? speedMps(last) : input.fix.speedMps;
    return { ...input, fix: { ...input.fix, latitudeDeg, longitudeDeg, speedMps: speed } };
  });
};
const signalsOf = (inputs: readonly RunInput[]) =>
  playOut(tapeOf(), inputs).calls.flatMap((c) =>
    c.saying.kind === 'signal' ? [{ what: c.saying.what, atS: startS(c) }] : [],
  );

describe('a receiver that is stuck', () => {
  test.each([
    ['and keeps its speed', undefined],
    ['and says that it stands', () => 0],
  ])('in mid-run %s is lost as soon as one that is silent', (_, speedMps) => {
    const [lost, back] = signalsOf(frozen(430, 460, speedMps));
    expect(lost?.what).toBe('lost');
    expect(lost?.atS).toBeGreaterThan(440);
    expect(lost?.atS).toBeLessThan(450);
    expect(back?.what).toBe('back');
  });

  test('is told from a runner who stands, and whose receiver holds its place', () => {
    const stands = frozen(430, 470).map((input) => {
      const ownS = (input.atMs - START_MS) / 1000;
      if (input.type !== 'fix' || ownS < 425 || ownS > 470) return input;
      return { ...input, fix: { ...input.fix, speedMps: Math.max(0, 3.3 - (ownS - 425)) } };
    });
    expect(signalsOf(stands).filter((s) => s.atS < 470)).toEqual([]);
  });
});
