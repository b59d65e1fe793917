import { describe, expect, test } from 'vitest';
import type { LinePoint } from '../../../src/core/course/line.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';
import { fourLaps, moved, outAndBack, redrawn, town } from './roads.ts';
import type { Played, Scripted } from './script.ts';
import { type Part, play, scripted, setupOf } from './script.ts';

const RACE: readonly Part[] = [{ to: 2000, mps: 4 }];
const WARM_UP: readonly Part[] = [
  { stand: 20 },
  { to: 400, mps: 3 },
  { to: -15, mps: 2.8 },
  { to: 300, mps: 3.2 },
  { to: -15, mps: 2.8 },
];

/** Found or given start against when the last part began, less the way to the line: s. */
const startErrorS = ({ state }: Played, { partMs }: Scripted, toLineS: number): number =>
  state.startMs === null ? Number.NaN : (state.startMs - (partMs.at(-1) ?? 0)) / 1000 - toLineS;

const endErrorM = ({ progress }: Played): number => (progress.at(-1)?.distanceM ?? 0) - 1996;

describe('a warm-up on the course', () => {
  test.each([
    ['through a town', town],
    ['out and back', outAndBack],
  ])('%s is no start: back in the pen the runner waits for it', (_, road) => {
    for (const seed of [1, 2, 3]) {
      const script = scripted(road, -15, [...WARM_UP, { stand: 90 }, ...RACE], seed);
      const waiting = script.inputs.filter((i) => i.atMs < (script.partMs.at(-1) ?? 0));
      expect(play(setupOf(road, road.officialM), waiting).state.startMs).toBeNull();
      const played = play(setupOf(road, road.officialM), script.inputs);
      expect(Math.abs(startErrorS(played, script, 15 / 4))).toBeLessThan(2);
      expect(Math.abs(endErrorM(played))).toBeLessThan(8);
      expect(played.state.lineReversed).toBe(false);
    }
  });

  test('the gun, or a press on start, stands above a start that was found, however long ago', () => {
    const none: Part[] = [...WARM_UP, { stand: 400 }];
    for (const press of ['gun', 'start'] as const) {
      const parts: Part[] = [...WARM_UP.slice(0, 3), { stand: 8 }, { press }, { stand: 2 }, ...RACE];
      const script = scripted(town, -15, parts);
      const played = play(setupOf(town, town.officialM), script.inputs);
      const asked = press === 'gun' ? 15 / 4 : -2;
      expect(Math.abs(startErrorS(played, script, asked))).toBeLessThan(2);
      expect(Math.abs(endErrorM(played))).toBeLessThan(20);
    }
    const without = scripted(town, -15, [...none, { press: 'start' }, ...RACE]);
    const bare = play(setupOf(null, town.officialM), without.inputs);
    expect(bare.state.startMs).toBe(without.partMs.at(-2));
  });

  test('a press on start that comes late begins the own clock, and is no place', () => {
    const script = scripted(town, -10, [{ stand: 60 }, { to: 150, mps: 4 }, { press: 'start' }, ...RACE]);
    const played = play(setupOf(town, town.officialM), script.inputs);
    expect(played.state.startMs).toBe(script.partMs[2]);
    expect(Math.abs(endErrorM(played))).toBeLessThan(8);
  });

  test('a stop where a lap ends, or in the crowd behind the line, is no pen', () => {
    const lapM = fourLaps.officialM / 4;
    const atLap = scripted(fourLaps, -10, [
      { stand: 60 },
      { to: lapM - 2, mps: 4 },
      { stand: 90 },
      { to: 2500, mps: 4 },
    ]);
    const crowd = scripted(town, -10, [
      { stand: 60 },
      { to: 8, mps: 3 },
      { to: 60, mps: 3 },
      { stand: 40 },
      ...RACE,
    ]);
    for (const [road, script] of [
      [fourLaps, atLap],
      [town, crowd],
    ] as const) {
      const { state } = play(setupOf(road, road.officialM), script.inputs);
      expect(Math.abs((state.startMs ?? 0) - (script.partMs[1] ?? 0))).toBeLessThan(7000);
    }
  });

  test('a jog from elsewhere to the start ends in the pen', () => {
    const script = scripted(town, -12, [
      { aside: [-600, -500], mps: 30 },
      { stand: 30 },
      { aside: [0, 0], mps: 2.7 },
      { stand: 60 },
      ...RACE,
    ]);
    const played = play(setupOf(town, town.officialM), script.inputs);
    expect(Math.abs(startErrorS(played, script, 12 / 4))).toBeLessThan(2);
  });
});

describe('a receiver that wakes on the course', () => {
  test.each([
    [80, 2.5],
    [600, 8],
    [3000, 40],
  ])('at %d m knows where it is, and the start as well as the pace tells it', (wokeM, withinS) => {
    const script = scripted(town, -8, [
      { stand: 60 },
      { to: wokeM, mps: 4, dark: true },
      { to: 4500, mps: 4 },
    ]);
    const awake = script.inputs.filter((i) => i.atMs >= (script.partMs[2] ?? 0));
    const { state, progress } = play(setupOf(town, town.officialM), awake);
    const trueStartMs = (script.partMs[1] ?? 0) + 2000;
    expect(Math.abs((state.startMs ?? 0) - trueStartMs) / 1000).toBeLessThan(withinS);
    const late = progress.filter((p) => p.startMs !== null).slice(20);
    for (const p of late) expect(Math.abs(p.distanceM - script.alongAt(p.atMs))).toBeLessThan(12);
  });
});

test('a fix from a cache, kilometres away, just before the press on start moves no line', () => {
  const script = scripted(town, -8, [{ stand: 60 }, { to: 0, mps: 2 }, { press: 'start' }, ...RACE]);
  const pressed = script.inputs.findIndex((i) => i.type === 'event');
  const inputs = script.inputs.map((i, k) =>
    i.type === 'fix' && k === pressed - 1
      ? { ...i, fix: { ...i.fix, ...pointOn(planeAt(i.fix), 3000, 2000) } }
      : i,
  );
  expect(Math.abs(endErrorM(play(setupOf(town, town.officialM), inputs)))).toBeLessThan(12);
});

test('a recording begins where its runner pressed, even a hundred metres along the line', () => {
  const script = scripted(town, 100, [{ to: 2000, mps: 4 }]);
  const inputs = script.inputs.map((i) =>
    i.type === 'fix' ? { ...i, fix: { ...i.fix, accuracyM: null, speedMps: null } } : i,
  );
  const { state } = play(setupOf(town, town.officialM), inputs);
  expect(Math.abs((state.startMs ?? 0) - (script.partMs[0] ?? 0))).toBeLessThan(2000);
});

describe('a line whose first point is not the start', () => {
  test.each([
    [-50, 'before'],
    [-25, 'before'],
    [40, 'behind'],
  ])('but lies %d m along from it', (fromM) => {
    const given = redrawn(town, (p) =>
      fromM < 0
        ? [...Array.from({ length: 5 }, (_, i) => moved(p[0] as LinePoint, fromM * (1 - i / 5), 0)), ...p]
        : p.filter((_, i) => (town.alongM[i] ?? 0) >= fromM),
    );
    for (const seed of [1, 2, 3]) {
      const script = scripted(
        town,
        -8,
        [{ stand: 60 }, { to: 0, mps: 2 }, { press: 'start' }, { to: 2000, mps: 4 }],
        seed,
      );
      const played = play(setupOf(given, town.officialM), script.inputs);
      expect(Math.abs(endErrorM(played))).toBeLessThan(14);
    }
  });
});
