import { describe, expect, it, test } from 'vitest';
import type { CourseLine } from '../../../src/core/course/line.ts';
import { easeAt, easeOver, hillsAlong } from '../../../src/core/estimate/hills.ts';
import { TOWN } from '../../../src/sensors/simulatedReceiver.ts';
import { type Followed, follow, type Wish } from './follow.ts';
import { outAndBack } from './roads.ts';

const withHeights = (road: CourseLine, heightM: (m: number) => number): CourseLine => ({
  ...road,
  elevationM: road.alongM.map(heightM),
});

/** Hills of 900 and 2100 m from foot to foot, up to 5 % steep; `shiftM` makes other ones of them. */
const hilly = (shiftM: number) => (m: number) =>
  3.6 * Math.sin((2 * Math.PI * (m + shiftM)) / 900) + 7 * Math.sin((2 * Math.PI * (m - 2 * shiftM)) / 2100);

const road = withHeights(outAndBack, hilly(0));
const flat: CourseLine = { ...outAndBack, elevationM: null };

describe('the ease of a road', () => {
  const steady = hillsAlong(withHeights(outAndBack, (m) => 0.04 * m));

  it('is nothing without heights and on the level', () => {
    expect(hillsAlong(flat)).toBeNull();
    expect(easeAt(null, 1000)).toBe(0);
    const level = hillsAlong(withHeights(outAndBack, () => 31));
    for (const m of [-50, 0, 1234, 7000]) expect(easeAt(level, m)).toBeCloseTo(0, 12);
  });

  it('goes on beyond the ends of the course', () => {
    for (const m of [-40, 1000, outAndBack.officialM + 40])
      expect(easeAt(steady, m)).toBeCloseTo(easeAt(steady, 2000), 6);
    // 4 % up at even effort: about a fifth slower (core/course/effort.ts).
    expect(easeAt(steady, 2000)).toBeGreaterThan(-0.25);
    expect(easeAt(steady, 2000)).toBeLessThan(-0.15);
  });

  it('is the mean of a stretch', () => {
    const hills = hillsAlong(road);
    const pieces = Array.from({ length: 16 }, (_, i) => easeOver(hills, 1000 + 25 * i, 1025 + 25 * i));
    expect(easeOver(hills, 1000, 1400)).toBeCloseTo(pieces.reduce((a, b) => a + b, 0) / 16, 9);
  });
});

const SEEDS = [1, 2, 3];
const errorsOf = (wish: Omit<Wish, 'road'>): { readonly speed: number; readonly place: number } => {
  const runs = SEEDS.map((seed) => follow({ road, receiver: TOWN, ...wish, seed }));
  const mean = (of: (run: Followed) => number): number =>
    runs.reduce((sum, run) => sum + of(run), 0) / runs.length;
  return { speed: mean((r) => r.rmsMps), place: mean((r) => r.rmsM) };
};

/** How a runner takes the hills, what the course file has of them, and what is asked against no heights at all. */
const rows: readonly (readonly [string, Omit<Wish, 'road'>, speed: number, place: number])[] = [
  ['even effort', { pacing: 'effort' }, 0.5, 0.95],
  ['slower uphill than even effort', { pacing: 'effort', runner: { hillLossPerPercent: 0.035 } }, 0.5, 0.95],
  ['even pace', { pacing: 'pace' }, 1.15, 1.05],
  [
    'even effort, heights of another place',
    { pacing: 'effort', given: withHeights(outAndBack, hilly(310)) },
    1.05,
    1.05,
  ],
  [
    'even pace, heights of another place',
    { pacing: 'pace', given: withHeights(outAndBack, hilly(310)) },
    1.15,
    1.05,
  ],
];

describe('on hills the estimate follows a runner better, or no worse, than without their heights', () => {
  test.each(rows)('%s', (_, wish, speed, place) => {
    const seen = errorsOf(wish);
    const blind = errorsOf({ ...wish, given: flat });
    expect(seen.speed).toBeLessThan(speed * blind.speed);
    expect(seen.place).toBeLessThan(place * blind.place);
  });

  it('knows nothing else where the heights are all the same', () => {
    const level = follow({ road: flat, given: withHeights(outAndBack, () => 12) });
    const none = follow({ road: flat, given: flat });
    expect(level.rmsM).toBeCloseTo(none.rmsM, 9);
    expect(level.rmsMps).toBeCloseTo(none.rmsMps, 9);
  });
});
