import { describe, expect, test } from 'vitest';
import { fourLaps, town } from './roads.ts';
import { type Part, play, scripted, setupOf } from './script.ts';

/** Runs a script over a road and gives error and claimed sd of each fix, with its second of the script. */
const errorsOf = (road: typeof town, parts: readonly Part[], seed: number) => {
  const script = scripted(road, -8, parts, seed);
  const setup = setupOf(road, road.officialM);
  const { progress, state } = play(setup, script.inputs);
  const beginMs = script.partMs[0] ?? 0;
  return {
    state,
    setup,
    script,
    samples: progress.map((p) => ({
      atS: (p.atMs - beginMs) / 1000,
      errorM: p.distanceM - script.alongAt(p.atMs),
      sdM: p.distanceSdM,
    })),
  };
};
const PEN: readonly Part[] = [{ stand: 30 }, { to: 0, mps: 4 }, { press: 'start' }];

describe('twenty minutes in the dark', () => {
  test.each([1, 2, 3])(
    'at a walk: the way is less and less sure, and found again in seconds, seed %i',
    (seed) => {
      const { samples, script } = errorsOf(
        town,
        [...PEN, { to: 1200, mps: 4 }, { to: 3240, mps: 1.7, dark: true }, { to: 4500, mps: 4 }],
        seed,
      );
      const lightS = ((script.partMs[5] ?? 0) - (script.partMs[0] ?? 0)) / 1000;
      const first = samples.find((s) => s.atS >= lightS);
      expect(Math.abs(first?.errorM ?? 9e9)).toBeLessThan(2.4 * (first?.sdM ?? 0));
      const after = samples.filter((s) => s.atS > lightS + 5);
      for (const s of after) expect(Math.abs(s.errorM)).toBeLessThan(15);
      expect(after.filter((s) => Math.abs(s.errorM) > 3 * s.sdM)).toEqual([]);
    },
  );

  test.each([1, 2, 3])('in laps, at the same pace: the lap is known afterwards, seed %i', (seed) => {
    const { samples } = errorsOf(
      fourLaps,
      [...PEN, { to: 700, mps: 4 }, { to: 5000, mps: 3.9, dark: true }, { to: 6000, mps: 4 }],
      seed,
    );
    for (const s of samples.filter((x) => x.atS > 32 + 175 + 1103 + 10))
      expect(Math.abs(s.errorM)).toBeLessThan(15);
  });
});

test.each([1, 2, 3])(
  'a minute of standing in the dark is seen within seconds, without speeds too, seed %i',
  (seed) => {
    const parts: Part[] = [
      ...PEN,
      { to: 1200, mps: 4 },
      { to: 1203, mps: 0.05, dark: true },
      { to: 1500, mps: 4 },
    ];
    const script = scripted(town, -8, parts, seed);
    const blind = script.inputs.map((i) =>
      i.type === 'fix' ? { ...i, fix: { ...i.fix, speedMps: null } } : i,
    );
    const lightMs = script.partMs[5] ?? 0;
    const { progress } = play(setupOf(town, town.officialM), blind);
    for (const p of progress.filter((x) => x.atMs > lightMs + 8000))
      expect(Math.abs(p.distanceM - script.alongAt(p.atMs))).toBeLessThan(15);
  },
);
