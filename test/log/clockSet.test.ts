import { describe, expect, it } from 'vitest';
import { parseFixLog } from '../../src/log/fixLog.ts';

const T0 = 1_809_851_400_000;
const HOUR_MS = 3_600_000;

/** A fix at metres north of a place. */
const fixAt = (timestamp: number, northM: number): string =>
  JSON.stringify({
    timestamp,
    coords: { latitude: 54.1 + northM / 111_300, longitude: 7.3, accuracy: 4.8, speed: 4 },
  });
/** Seconds of running at 4 m/s, from a place on, by a clock that is off by so much. */
const run = (fromS: number, toS: number, offMs = 0, metresAt = (s: number): number => 4 * s): string[] =>
  Array.from({ length: toS - fromS }, (_, i) => fixAt(T0 + (fromS + i) * 1000 + offMs, metresAt(fromS + i)));
const arrivalsS = (lines: readonly string[]): number[] => {
  const got = parseFixLog(lines.join('\n'));
  if (!got.ok) throw new Error(got.error.place);
  return got.value.inputs.map((i) => (i.atMs - T0) / 1000);
};
const everySecond = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

describe('a clock that is set in mid-run, in a log without arrival times', () => {
  it.each([
    ['on by an hour', HOUR_MS],
    ['back by an hour', -HOUR_MS],
    ['on by two minutes', 120_000],
  ])('%s takes no time: the next place is one step on', (_, setMs) => {
    expect(arrivalsS([...run(0, 60), ...run(60, 120, setMs)])).toEqual(everySecond(120));
  });

  it('leaves alone what was never on the other clock, and can be set again', () => {
    const press = JSON.stringify({ timestamp: T0 + 70_000, event: 'ask' });
    const lines = [...run(0, 60), ...run(60, 71, HOUR_MS), press, ...run(71, 90, HOUR_MS), ...run(90, 120)];
    expect(arrivalsS(lines)).toEqual([...everySecond(71), 70, ...everySecond(120).slice(71)]);
  });

  it('is no true gap: that moves the runner, or finds them standing, or brings them back the other way', () => {
    const dark = [...run(0, 60), ...run(660, 720)];
    expect(arrivalsS(dark).at(-1)).toBe(719);
    const stood = [...run(0, 60), ...run(660, 720, 0, () => 240)];
    expect(arrivalsS(stood).at(-1)).toBe(719);
    const back = [...run(0, 60), ...run(660, 720, 0, (s) => 236 - 4 * (s - 660))];
    expect(arrivalsS(back).at(-1)).toBe(719);
  });
});
