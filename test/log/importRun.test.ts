import { describe, expect, it } from 'vitest';
import { parsePlanFile } from '../../src/core/plan/parseRacePlan.ts';
import { sayDoorError } from '../../src/core/units/result.ts';
import { importRuns } from '../../src/log/importRun.ts';

const T0 = 1_809_851_400_000;
const M_PER_DEGREE = 111_330;

/** A log that says where it was, metres north of one place, second by second. */
const logAt = (northM: readonly number[]): string =>
  northM
    .map((m, s) =>
      JSON.stringify({
        timestamp: T0 + s * 1000,
        coords: { latitude: 54 + m / M_PER_DEGREE, longitude: 7, accuracy: 5, speed: null },
      }),
    )
    .join('\n');
const steady = (seconds: number): number[] => Array.from({ length: seconds }, (_, s) => 3 * s);

const distanceOf = (text: string): number | string => {
  const got = importRuns(text, null);
  if (!got.ok) return sayDoorError(got.error);
  const plan = parsePlanFile(got.value.runs[0]?.planFile ?? '');
  return plan.ok ? plan.value.plan.distanceM : sayDoorError(plan.error);
};

describe('a run from elsewhere is held against its own way', () => {
  it('measures what was run', () => {
    expect(Math.abs(Number(distanceOf(logAt(steady(601)))) - 1800)).toBeLessThan(5);
  });

  it('without the place that the receiver remembered, and without points thrown aside', () => {
    const remembered = steady(601).with(0, 50_000);
    expect(Math.abs(Number(distanceOf(logAt(remembered))) - 1800)).toBeLessThan(10);
    const thrown = steady(601).with(300, 300_000);
    expect(Math.abs(Number(distanceOf(logAt(thrown))) - 1800)).toBeLessThan(10);
  });

  it('is refused where nobody can have run it', () => {
    expect(distanceOf(logAt(Array.from({ length: 200 }, (_, s) => 40 * s)))).toBe(
      'the file: expected a run at a pace that a human can run, found 8.0 km, 3.3 min',
    );
    expect(distanceOf(logAt(steady(100)))).toBe(
      'the file: expected a run of at least 500 m and a minute, found less',
    );
  });
});
