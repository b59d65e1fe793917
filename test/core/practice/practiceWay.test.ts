import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LinePoint } from '../../../src/core/course/line.ts';
import { planeAt, pointOn } from '../../../src/core/geo/ruler.ts';
import type { PracticeCourse } from '../../../src/core/plan/practiceCourse.ts';
import type { PracticePlan } from '../../../src/core/plan/practicePlan.ts';
import { beginPractice, goingOf, type Practice } from '../../../src/core/practice/practice.ts';
import { practiceStep } from '../../../src/core/practice/step.ts';
import { layCourse } from '../../../src/core/practice/way/lay.ts';
import type { RunInput } from '../../../src/core/run/settings.ts';
import { chanceOf } from '../../../src/core/units/chance.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const voice = voiceOf(english.pack, english.words);
const HARBOUR = planeAt({ latitudeDeg: 55.3, longitudeDeg: 5.1 });

type Place = readonly [eastM: number, northM: number];

const ground = ([e, n]: Place): LinePoint => ({ ...pointOn(HARBOUR, e, n), elevationM: null });

const lengthOf = (places: readonly Place[]): number =>
  places.slice(1).reduce((sum, [e, n], i) => {
    const [e0, n0] = places[i] as Place;
    return sum + Math.hypot(e - e0, n - n0);
  }, 0);

/** The place after so many metres of a way. */
const along = (places: readonly Place[], atM: number): Place => {
  let left = atM;
  for (const [i, [e, n]] of places.slice(1).entries()) {
    const [e0, n0] = places[i] as Place;
    const legM = Math.hypot(e - e0, n - n0);
    if (left <= legM) return [e0 + ((e - e0) * left) / legM, n0 + ((n - n0) * left) / legM];
    left -= legM;
  }
  return places.at(-1) as Place;
};

/** A way as somebody recorded it: a point every eight metres. */
const recorded = (places: readonly Place[], lengthM: number | null = null): PracticeCourse => ({
  name: 'by the harbour',
  lengthM,
  points: Array.from({ length: Math.floor(lengthOf(places) / 8) + 1 }, (_, i) =>
    ground(along(places, 8 * i)),
  ).concat(ground(places.at(-1) as Place)),
});

/** A round of 1600 m. */
const ROUND: readonly Place[] = [
  [0, 0],
  [300, 40],
  [420, 380],
  [60, 520],
  [-160, 240],
  [0, 0],
];
const ROUND_M = lengthOf(ROUND);
/** A road of 1000 m with a bend. */
const ROAD: readonly Place[] = [
  [0, 0],
  [600, 0],
  [600, 400],
];

const MPS = 3.4;
const LEG = {
  kind: 'easy',
  target: { by: 'free' },
  rampS: 0,
  rep: null,
  heartMostBpm: null,
  take: [],
} as const;

const planOn = (course: PracticeCourse | undefined, extent = { by: 'press' } as const): PracticePlan => ({
  version: 1,
  kind: 'practice',
  name: 'By the harbour',
  unit: 'km',
  place: 'road',
  penClosesMs: null,
  ...(course === undefined ? {} : { course }),
  legs: [{ ...LEG, extent }],
});

/** A run along a way at an even speed, received well: metres off by one or two, for a minute in the same direction. */
const received = (places: readonly Place[], seed = 3): RunInput[] => {
  const chance = chanceOf(seed);
  let [offE, offN] = [0, 0];
  const startMs = 1_804_008_600_000;
  return Array.from({ length: Math.floor(lengthOf(places) / MPS) }, (_, s): RunInput[] => {
    offE = 0.98 * offE + 0.25 * chance.normal();
    offN = 0.98 * offN + 0.25 * chance.normal();
    const [e, n] = along(places, s * MPS);
    const atMs = startMs + 1000 * s;
    const { latitudeDeg, longitudeDeg } = ground([e + offE, n + offN]);
    const fix = {
      timestampMs: atMs,
      latitudeDeg,
      longitudeDeg,
      accuracyM: 4,
      speedMps: MPS + 0.15 * chance.normal(),
      altitudeM: null,
    };
    const start: RunInput[] = s === 0 ? [{ type: 'event', atMs, event: 'start' }] : [];
    return [...start, { type: 'fix', atMs, fix }];
  }).flat();
};

interface Seen {
  readonly by: string;
  readonly toldM: number;
  readonly ranM: number;
  readonly which: number;
}

/** What is told of the way after each second. */
const follow = (course: PracticeCourse | undefined, way: readonly Place[], seed = 3): Seen[] => {
  let practice: Practice = beginPractice({ plan: planOn(course), voice });
  const seen: Seen[] = [];
  for (const input of received(way, seed)) {
    practice = practiceStep(practice, input).practice;
    if (input.type !== 'fix') continue;
    const going = goingOf(practice, practice.atMs);
    seen.push({
      by: going?.by ?? '',
      toldM: going?.distanceM ?? Number.NaN,
      ranM: MPS * seen.length,
      which: practice.way?.course.lines.findIndex(({ line }) => line === practice.way?.on?.laid.line) ?? -1,
    });
  }
  return seen;
};

/** Metres by which what is told ever leaps beyond what can be run in a second. */
const worstLeapM = (seen: readonly Seen[]): number =>
  Math.max(...seen.slice(10).map((s, i) => Math.abs(s.toldM - (seen[i + 9]?.toldM ?? 0) - MPS)));

const share = (seen: readonly Seen[], by: string): number =>
  seen.filter((s) => s.by === by).length / seen.length;

const last = (seen: readonly Seen[]): Seen => seen.at(-1) as Seen;

/** The round begun at a place of it, so many times. */
const roundFrom = (fromM: number, times: number): Place[] => {
  const stops = Array.from({ length: 200 * times + 1 }, (_, i) => fromM + (i * ROUND_M) / 200);
  return stops.map((m) => along(ROUND, m % ROUND_M));
};

describe('a round', () => {
  const course = recorded(ROUND);

  test('is known to come again, and for as long as it is', () => {
    const laid = layCourse(course);
    expect(laid?.lapM).toBeCloseTo(ROUND_M, -1);
    expect(laid?.lines).toHaveLength(2);
  });

  test('has the length that the file knows', () => {
    expect(layCourse({ ...course, lengthM: 1650 })?.lapM).toBe(1650);
  });

  test.each([0, 130, 700, 1400])('is joined by who starts %i m along, either way', (fromM) => {
    for (const [which, way] of [roundFrom(fromM, 1), roundFrom(fromM, 1).reverse()].entries()) {
      const seen = follow(course, way);
      expect(seen.slice(30).every((s) => s.by === 'line' && s.which === which)).toBe(true);
      expect(Math.abs(last(seen).toldM - last(seen).ranM)).toBeLessThan(6);
      expect(worstLeapM(seen)).toBeLessThan(4);
    }
  });

  test('is run again and again', () => {
    const seen = follow(course, roundFrom(200, 5));
    expect(share(seen, 'line')).toBeGreaterThan(0.98);
    expect(Math.abs(last(seen).toldM / last(seen).ranM - 1)).toBeLessThan(0.003);
    expect(worstLeapM(seen)).toBeLessThan(4);
  });

  test('is left for a street of houses and joined again', () => {
    const [before, after] = [roundFrom(200, 0.5), roundFrom(200 + ROUND_M / 2, 0.5)];
    const [e, n] = before.at(-1) as Place;
    const aside: Place[] = [
      [e + 5, n + 260],
      [e - 180, n + 300],
      [e - 180, n + 40],
    ];
    const seen = follow(course, [...before, ...aside, ...after]);
    expect(share(seen, 'free')).toBeGreaterThan(0.2);
    expect(last(seen).by).toBe('line');
    expect(Math.abs(last(seen).toldM / last(seen).ranM - 1)).toBeLessThan(0.01);
    expect(worstLeapM(seen)).toBeLessThan(15);
  });

  test('is turned round on', () => {
    const there = roundFrom(100, 0.6);
    const seen = follow(course, [...there, ...there.toReversed().slice(1)]);
    expect(seen[60]?.which).toBe(0);
    expect(last(seen).which).toBe(1);
    expect(Math.abs(last(seen).toldM / last(seen).ranM - 1)).toBeLessThan(0.01);
  });

  test('of a stop a little behind its begin is closed where it began', () => {
    const over = [...ROUND, along(ROUND, 60)];
    expect(layCourse(recorded(over))?.lapM).toBeCloseTo(ROUND_M, -1);
  });

  test('is nothing to a run in another town: its way is that of a session without a course', () => {
    const elsewhere = ROUND.map(([e, n]): Place => [e + 30_000, n - 8000]);
    const [withIt, without] = [follow(course, elsewhere), follow(undefined, elsewhere)];
    expect(withIt.map((s) => s.toldM)).toEqual(without.map((s) => s.toldM));
    expect(share(withIt, 'free')).toBe(1);
  });
});

describe('a road there and back', () => {
  const both = [...ROAD, ...ROAD.toReversed().slice(1)];

  test('is turned again at both ends, and told on the line all the while', () => {
    const seen = follow(recorded(both), [...both, ...both.slice(1), ...both.slice(1)]);
    expect(share(seen, 'line')).toBeGreaterThan(0.9);
    expect(Math.abs(last(seen).toldM / last(seen).ranM - 1)).toBeLessThan(0.01);
  });
});

describe('a road one way', () => {
  const course = recorded(ROAD);

  test('does not come again', () => {
    expect(layCourse(course)?.lapM).toBeNull();
  });

  test('ends before the session does: the way goes on without a leap, and without the line', () => {
    const onward: Place[] = [
      [600, 700],
      [200, 900],
    ];
    const seen = follow(course, [...ROAD, ...onward]);
    const endS = Math.floor(lengthOf(ROAD) / MPS);
    expect(seen[endS - 5]?.by).toBe('line');
    expect(seen[endS + 10]?.by).toBe('free');
    expect(last(seen).by).toBe('free');
    expect(worstLeapM(seen.slice(endS - 20, endS + 30))).toBeLessThan(2);
    expect(Math.abs(last(seen).toldM / last(seen).ranM - 1)).toBeLessThan(0.01);
  });

  test('is run back from its end', () => {
    const seen = follow(course, [...ROAD, ...ROAD.toReversed().slice(1)]);
    expect(last(seen)).toMatchObject({ by: 'line', which: 1 });
    expect(Math.abs(last(seen).toldM / last(seen).ranM - 1)).toBeLessThan(0.01);
  });

  test('is joined in its middle by who comes from a side street', () => {
    const seen = follow(course, [[300, -300], [300, 0], ...ROAD.slice(1)]);
    expect(seen[60]?.by).toBe('free');
    expect(seen.at(-20)?.by).toBe('line');
    expect(Math.abs(last(seen).toldM / last(seen).ranM - 1)).toBeLessThan(0.01);
  });
});

test('a leg by distance ends where the line says so', () => {
  const plan: PracticePlan = {
    ...planOn(recorded(ROUND)),
    legs: [
      { ...LEG, extent: { by: 'time', timeS: 120 } },
      { ...LEG, extent: { by: 'distance', distanceM: 1000 } },
    ],
  };
  let practice = beginPractice({ plan, voice });
  for (const input of received(roundFrom(50, 2))) practice = practiceStep(practice, input).practice;
  const [, leg] = practice.results;
  expect(leg?.distanceM).toBeCloseTo(1000, 0);
  expect(Math.abs(((leg?.endMs ?? 0) - (leg?.startMs ?? 0)) / 1000 - 1000 / MPS)).toBeLessThan(1);
});

test('any walk over any course: what is told is a number, and sure to some extent', () => {
  const place = fc.tuple(fc.integer({ min: -600, max: 600 }), fc.integer({ min: -600, max: 600 }));
  const places = fc.array(place, { minLength: 2, maxLength: 6 });
  void fc.assert(
    fc.property(places, places, (line, way) => {
      const course = recorded(line);
      if (layCourse(course) === null) return;
      let practice = beginPractice({ plan: planOn(course), voice });
      for (const input of received(way).slice(0, 400)) {
        practice = practiceStep(practice, input).practice;
        const going = goingOf(practice, practice.atMs);
        expect(Number.isFinite(going?.distanceM)).toBe(true);
        expect(going?.distanceSdM).toBeGreaterThanOrEqual(0);
      }
    }),
    { numRuns: 25 },
  );
});
