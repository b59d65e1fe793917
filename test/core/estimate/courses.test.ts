import { describe, expect, test } from 'vitest';
import { chanceOf } from '../../../src/core/units/chance.ts';
import { TOWN } from '../../../src/sensors/simulatedReceiver.ts';
import { follow, type Wish } from './follow.ts';
import * as roads from './roads.ts';

const { town, outAndBack, fourLaps, oneLap, figureOfEight, parallel, redrawn, moved, measured } = roads;
const { lollipop, trackLap, track5k } = roads;

/** Two laps and a half of the park: fourLaps, cut. */
const halfLaps = measured(
  roads.pointsOf(fourLaps).filter((_, i) => (fourLaps.alongM[i] ?? 0) <= 2.5 * oneLap.officialM),
  2.5 * oneLap.officialM,
);

/** Course lines as they come, and how far off the estimate may be on them: RMS in metres over three seeds. */
const rows: readonly (readonly [string, Wish, rmsM: number])[] = [
  ['blocks of a town', { road: town }, 2],
  ['the same in town reception', { road: town, receiver: TOWN }, 4],
  ['out and back on the same road', { road: outAndBack, receiver: TOWN }, 4.5],
  ['four laps', { road: fourLaps, receiver: TOWN }, 4.5],
  [
    'four laps, given the line of one',
    { road: fourLaps, given: measured(roads.pointsOf(oneLap), fourLaps.officialM), receiver: TOWN },
    4.5,
  ],
  ['a figure of eight', { road: figureOfEight, receiver: TOWN }, 4.5],
  ['streets 15 m apart, a turn-round at each end', { road: parallel }, 2],
  ['the same in town reception', { road: parallel, receiver: TOWN }, 4.5],
  [
    'a spike in the line',
    { road: town, given: redrawn(town, (p) => p.map((q, i) => (i === 150 ? moved(q, 300, 200) : q))) },
    2,
  ],
  [
    'a line with few points and its corners cut',
    { road: town, given: redrawn(town, (p) => p.filter((_, i) => i % 5 === 0 || i === p.length - 1)) },
    12,
  ],
  ['a line that begins 200 m after the start', { road: town, given: redrawn(town, (p) => p.slice(17)) }, 4],
  [
    'a line that begins 200 m before the start',
    {
      road: town,
      given: redrawn(town, (p) => [-200, -150, -100, -50].map((e) => moved(p[0] ?? never(), e, 0)).concat(p)),
    },
    4,
  ],
  [
    'a line that begins 200 m aside',
    { road: town, given: redrawn(town, (p) => [moved(p[0] ?? never(), 0, 200), ...p.slice(8)]) },
    4,
  ],
  [
    'a line that ends 150 m before the finish',
    { road: outAndBack, given: redrawn(outAndBack, (p) => p.slice(0, -13)) },
    45,
  ],
  [
    'a line that shakes by 4 m over a kilometre and is 3 % too long by that',
    {
      road: town,
      given: redrawn(town, (p) =>
        p.map((q, i) => (i > 200 && i < 290 ? moved(q, i % 2 ? 4 : -4, i % 3 ? -3 : 3) : q)),
      ),
    },
    23,
  ],
  ['a lollipop', { road: lollipop, receiver: TOWN }, 5],
  [
    'two and a half laps, given the line of one',
    { road: halfLaps, given: measured(roads.pointsOf(oneLap), halfLaps.officialM) },
    6,
  ],
  [
    '5 km on a track, given one lap that begins elsewhere',
    { road: track5k, given: measured(roads.pointsOf(trackLap), track5k.officialM) },
    8,
  ],
  [
    'a line that leaves out a kilometre and a half of winding road',
    { road: town, given: redrawn(town, (p) => p.filter((_, i) => i < 150 || i > 280)) },
    12,
  ],
  [
    'points thrown aside in pairs',
    {
      road: town,
      given: redrawn(town, (p) => p.map((q, i) => (i > 1 && i % 150 <= 1 ? moved(q, 300, 200) : q))),
    },
    4,
  ],
];

const never = (): never => {
  throw new Error('a line without points');
};

describe('follows the course', () => {
  test.each(rows)('%s', (_, wish, rmsM) => {
    for (const seed of [1, 2, 3]) {
      const followed = follow({ ...wish, seed });
      expect(followed.rmsM).toBeLessThan(rmsM);
      expect(followed.backwards).toBe(0);
      expect(followed.state.lineReversed).toBe(false);
    }
  });

  test('a line that shakes in its second half only', () => {
    const chance = chanceOf(5);
    const given = redrawn(town, (p) =>
      p.map((q, i) => (i > 100 && i < 250 ? moved(q, 2.2 * chance.normal(), 2.2 * chance.normal()) : q)),
    );
    for (const seed of [1, 2, 3]) expect(follow({ road: town, given, seed }).rmsM).toBeLessThan(8);
  });

  test.each([
    ['through a town', town],
    ['in laps', fourLaps],
    ['in a figure of eight', figureOfEight],
    ['on a track', track5k],
  ])('finds out that a line %s was given in the wrong direction', (_, road) => {
    for (const seed of [1, 2, 3]) {
      const followed = follow({ road, given: redrawn(road, (p) => p.reverse()), seed });
      expect(followed.state.lineReversed).toBe(true);
      expect(followed.rmsM).toBeLessThan(3);
    }
  });

  test('finds out only where the loop of a lollipop begins, and loses nothing by it', () => {
    for (const seed of [1, 2, 3]) {
      const followed = follow({ road: lollipop, given: redrawn(lollipop, (p) => p.reverse()), seed });
      expect(followed.state.lineReversed).toBe(true);
      expect(followed.rmsM).toBeLessThan(4);
    }
  });

  test('an out-and-back is the same road both ways: nothing is turned round', () => {
    const given = redrawn(outAndBack, (p) => p.reverse());
    const followed = follow({ road: outAndBack, given });
    expect(followed.state.lineReversed).toBe(false);
    expect(followed.rmsM).toBeLessThan(3);
  });
});
