import { describe, expect, test } from 'vitest';
import { type Race, raceOf } from '../../../src/core/cues/race.ts';
import { parseRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { scheduleOf } from '../../../src/core/plan/schedule.ts';

const raceFor = (fields: object): Race => {
  const got = parseRacePlan(JSON.stringify(fields));
  if (!got.ok) throw new Error('refused');
  return raceOf(got.value, scheduleOf(got.value, null), false);
};
const boardsOf = (fields: object): readonly number[] => raceFor(fields).boards.map((board) => board.atM);

describe('the boards of a race', () => {
  test('stand at whole kilometres or miles short of the finish', () => {
    expect(boardsOf({ distanceM: 3500, goalS: 1000 })).toEqual([1000, 2000, 3000]);
    expect(boardsOf({ distanceM: 5000, goalS: 1500, unit: 'mile' })).toHaveLength(3);
  });

  test('leave the finish, and whatever else is said where they stand, its own call', () => {
    const race = raceFor({ distanceM: 3010, goalS: 1000, checkpointsM: [1000, 1500] });
    expect(race.boards.map(({ atM, taken }) => [atM, taken])).toEqual([
      [1000, true],
      [2000, false],
      [3000, true],
    ]);
    // Where time is to be told as the runner passes; the line has its own way.
    expect(race.placesM).toEqual([1000, 1500, 2000]);
  });
});
