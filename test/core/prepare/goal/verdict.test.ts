import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { goalMeaning } from '../../../../src/core/prepare/goal/marks.ts';
import { predict } from '../../../../src/core/prepare/goal/predict.ts';
import type { RaceResult } from '../../../../src/core/prepare/goal/raceResult.ts';
import { reasonsToRevise as reasonsToReviseMessage } from '../../../../src/core/prepare/goal/revise.ts';
import {
  trainingFor as trainingForMessage,
  trainingText as trainingTextMessage,
} from '../../../../src/core/prepare/goal/training.ts';
import { judgeGoal as judgeGoalMessage } from '../../../../src/core/prepare/goal/verdict.ts';
import { english, inEnglish } from '../../../support/english.ts';

const trainingFor = inEnglish(trainingForMessage);
const trainingText = inEnglish(trainingTextMessage);
const judgeGoal = inEnglish(judgeGoalMessage);
const reasonsToRevise = inEnglish(reasonsToReviseMessage);

const HALF_M = 21_097.5;
const results: [RaceResult] = [{ distanceM: 10_000, timeS: 2700, daysAgo: 20 }];
const prediction = predict(results, HALF_M, 45);

describe('the verdict on a goal', () => {
  test.each([
    [
      6600,
      'roomy',
      '1:50:00 for a half marathon is gentle: your results point to 1:36:00 to 1:43:00. A calm race, or room for a quicker goal.',
    ],
    [
      5940,
      'inside',
      '1:39:00 for a half marathon fits your results, which point to 1:36:00 to 1:43:00. The chance on a normal day: about even.',
    ],
    [
      5640,
      'ambitious',
      '1:34:00 for a half marathon is ambitious: your results point to 1:36:00 to 1:43:00. It can happen on a very good day: about 2 in 10. Keep a second goal nearer to 1:39:00.',
    ],
    [
      5400,
      'beyond',
      '1:30:00 for a half marathon is beyond what your results show now, 1:32:00 to 1:47:00 (chance: less than 1 in 20). Keep it for a later race, and run this one for about 1:39:00.',
    ],
  ] as const)('%d s is %s', (goalS, grade, text) => {
    const verdict = judgeGoal(goalS, prediction);
    expect(verdict.grade).toBe(grade);
    expect(verdict.text).toBe(text);
    expect(verdict.cautions).toContain('estimate');
  });

  test('follows the edges of the ranges', () => {
    expect(judgeGoal(prediction.likely.quickS * 1.0001, prediction).grade).toBe('inside');
    expect(judgeGoal(prediction.likely.quickS * 0.9999, prediction).grade).toBe('ambitious');
    expect(judgeGoal(prediction.wide.quickS * 0.9999, prediction).grade).toBe('beyond');
    expect(judgeGoal(prediction.wide.slowS * 1.0001, prediction).grade).toBe('roomy');
    expect(judgeGoal(prediction.middleS, prediction).chance).toBeCloseTo(0.5, 6);
    expect(judgeGoal(prediction.likely.quickS, prediction).chance).toBeCloseTo(0.25, 5);
    expect(judgeGoal(prediction.wide.quickS, prediction).chance).toBeCloseTo(0.1, 5);
  });

  test('chance grows with the time allowed', () => {
    const goal = fc.double({ min: 3000, max: 12_000, noNaN: true });
    void fc.assert(
      fc.property(goal, (goalS) => {
        const { chance } = judgeGoal(goalS, prediction);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(judgeGoal(goalS + 60, prediction).chance);
      }),
    );
  });
});

describe('the training that a goal asks for', () => {
  test('is a tune-up race, weeks and steps for a goal beyond', () => {
    const need = trainingForMessage(5400, results, prediction, 30);
    expect(need.tuneUp.distanceM).toBe(10_000);
    // The tune-up, once run, puts the goal in the middle of the range.
    const then = predict([{ distanceM: 10_000, timeS: need.tuneUp.needS, daysAgo: 20 }], HALF_M, 45);
    expect(Math.abs(then.middleS - 5400)).toBeLessThan(10);
    expect(need.weeks).toEqual({ fewest: 24, most: 36 });
    expect(english(need.steps)[0]).toContain('towards 45 km');
    expect(trainingText(need)).toContain('10 km in about 41:00');
  });

  test('is nothing for a goal in the likely range', () => {
    const need = trainingForMessage(5900, results, prediction, 30);
    expect(need).toMatchObject({ weeks: null, steps: [] });
    expect(trainingText(need)).toBe('It asks for nothing more than you have shown.');
  });

  test('sends a far goal to a goal in between', () => {
    expect(trainingFor(4500, results, prediction, 60).steps.at(-1)).toContain('in between');
    expect(trainingFor(4500, results, prediction, 60).steps[0]).toContain('Keep your 60 km');
  });
});

describe('what a goal means', () => {
  // Common practice, no source: 90 min for a half is 4:16 per km and 6:52 per mile.
  test('pace and marks of a half in 1:30:00', () => {
    const meaning = goalMeaning(HALF_M, 5400);
    expect(Math.round(meaning.paceSPerKm)).toBe(256);
    expect(Math.round(meaning.paceSPerMile)).toBe(412);
    expect(meaning.marks.map((m) => [m.name, Math.round(m.timeS)])).toEqual([
      ['5K', 1280],
      ['10K', 2560],
      ['half-way', 2700],
      ['finish', 5400],
    ]);
  });

  test('marks of a 10K and a 5K say a place once', () => {
    expect(goalMeaning(10_000, 2400).marks.map((m) => m.name)).toEqual(['half-way', 'finish']);
    expect(goalMeaning(5000, 1200).marks.map((m) => m.name)).toEqual(['half-way', 'finish']);
  });

  test('follows a schedule where there is one', () => {
    expect(goalMeaning(HALF_M, 5400, (d) => d).marks[0]?.timeS).toBe(5000);
  });
});

describe('reasons to revise', () => {
  const ask = (temperatureC: number | null, climbM: number | null) =>
    reasonsToRevise({ temperatureC, climbM, distanceM: HALF_M }).map((r) => `${r.kind} ${r.weight}`);

  test.each([
    [null, null, []],
    [12, 50, []],
    [18, null, ['heat consider']],
    [27, 400, ['heat revise', 'hills revise']],
    [-3, 150, ['cold consider', 'hills consider']],
  ])('%s degrees, %s m of climb', (temperatureC, climbM, expected) => {
    expect(ask(temperatureC, climbM)).toEqual(expected);
  });

  test('heat always carries its caution', () => {
    const [heat] = reasonsToRevise({ temperatureC: 30, climbM: null, distanceM: HALF_M });
    expect(heat?.cautions).toContain('heat');
    expect(heat?.cautions).toContain('thirst');
  });
});
