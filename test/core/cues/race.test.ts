import { describe, expect, test } from 'vitest';
import { allowanceMs, spareTotalMs } from '../../../src/core/cues/allowance.ts';
import { isSaid, TALK, type Topic } from '../../../src/core/cues/talk.ts';
import { plan, racePlanned } from './moments.ts';

describe('the race as the rules know it', () => {
  test('a board where a call of its own stands is taken', () => {
    const taken = racePlanned({ opening: { untilM: 2000, quickerSPerKm: 5 } }).boards.filter((b) => b.taken);
    expect(taken.map((b) => b.count)).toEqual([2, 5, 10, 15, 20]);
  });

  test('a board just before the finish is silent', () => {
    expect(racePlanned({ distanceM: 5020, goalS: 1500, checkpointsM: [] }).boards.at(-1)).toEqual({
      atM: 5000,
      count: 5,
      taken: true,
    });
  });

  test('miles have their own boards', () => {
    const { boards } = racePlanned({ unit: 'mile' });
    expect(boards).toHaveLength(13);
    expect(boards[2]?.atM).toBeCloseTo(4828.032, 6);
  });
});

describe('speech to spare', () => {
  test('in a half marathon is enough for every board', () => {
    const race = racePlanned();
    const boardsS = race.boards.filter((b) => !b.taken).length * 6;
    expect(spareTotalMs(race) / 1000).toBeGreaterThan(boardsS);
  });

  test('in a quick five kilometres it is not', () => {
    const race = racePlanned({
      ...plan,
      distanceM: 5000,
      goalS: 960,
      checkpointsM: [2500],
      stations: [],
      fuel: [],
    });
    expect(spareTotalMs(race)).toBe(0);
  });

  test('is spread over the course, with a little in advance', () => {
    const race = racePlanned();
    expect(allowanceMs(race, 100_000, 0)).toBe(10_000);
    expect(allowanceMs(race, 100_000, race.plan.distanceM / 2)).toBeCloseTo(60_000, 6);
    expect(allowanceMs(race, 100_000, race.plan.distanceM)).toBe(100_000);
  });
});

test('a fuller talk level says everything that a sparser one says', () => {
  const topics: readonly Topic[] = [
    'start',
    'checkpoint',
    'ease',
    'marker',
    'station',
    'signalBack',
    'freePush',
    'finish',
  ];
  for (const topic of topics) {
    // Tones alone are another way of saying, beside the scale.
    const said = TALK.filter((talk) => talk !== 'tones').map((talk) => isSaid(talk, topic));
    expect([...said].sort()).toEqual(said);
    expect(said.at(-1)).toBe(true);
  }
  expect(isSaid('sparse', 'marker')).toBe(false);
  expect(isSaid('normal', 'freePush')).toBe(false);
});
