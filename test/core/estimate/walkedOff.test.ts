import { describe, expect, test } from 'vitest';
import { town } from './roads.ts';
import { type Part, play, scripted, setupOf } from './script.ts';

const setup = setupOf(town, town.officialM);
const played = (parts: readonly Part[], seed: number) => {
  const script = scripted(town, -10, parts, seed);
  return { script, ...play(setup, script.inputs) };
};

describe('a race begun at a walk, and no press', () => {
  test.each([1, 2, 3])('is found to have begun at the line, seed %i', (seed) => {
    const { script, state, progress } = played(
      [{ stand: 90 }, { to: 0, mps: 1.6 }, { to: 400, mps: 1.6 }],
      seed,
    );
    const crossedMs = script.partMs[2] ?? 0;
    expect(Math.abs((state.startMs ?? 0) - crossedMs)).toBeLessThan(3500);
    expect(progress.find((p) => p.startMs !== null)?.atMs).toBeLessThan(crossedMs + 75_000);
  });

  test('is not taken from who walks about in the pen, or towards it', () => {
    const about: Part[] = [
      { stand: 60 },
      ...[1, 2, 3].flatMap((): Part[] => [
        { to: 15, mps: 1.4 },
        { to: -15, mps: 1.4 },
      ]),
    ];
    expect(played([...about, { stand: 30 }], 1).state.startMs).toBeNull();
    expect(
      played([{ aside: [0, -140], mps: 1.4 }, { stand: 20 }, { aside: [0, 0], mps: 1.4 }, { stand: 60 }], 1)
        .state.startMs,
    ).toBeNull();
  });

  test('is taken back from who walks along the course and stands in the pen again', () => {
    const { state } = played(
      [{ stand: 60 }, { to: 130, mps: 1.5 }, { to: -10, mps: 1.5 }, { stand: 120 }],
      1,
    );
    expect(state.startMs).toBeNull();
  });
});
