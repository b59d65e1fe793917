import { normalBelow } from '../../units/normal.ts';
import type { CautionKey } from '../cautions.ts';
import { durationText, raceText, roughDurationText } from '../format.ts';
import { chanceText, Z_FOUR_FIFTHS, Z_HALF } from '../normal.ts';
import type { Prediction } from './predict.ts';

/**
 * Where a goal lies in the range of a prediction:
 * `roomy`: slower than nine in ten such runners; `inside`: within the likely range or slower;
 * `ambitious`: between the quick end of the likely range (1 in 4) and that of the wide one (1 in 10); `beyond`: quicker.
 */
export type Grade = 'roomy' | 'inside' | 'ambitious' | 'beyond';

export interface Verdict {
  readonly grade: Grade;
  readonly goalS: number;
  /** How much quicker (+) or slower (-) than the middle of the range the goal is, per cent of time. */
  readonly quickerPercent: number;
  /** Share of runners with such results who would make this goal on a normal day and a flat course, 0 to 1. */
  readonly chance: number;
  /** One or two sentences for the runner. */
  readonly text: string;
  readonly cautions: readonly CautionKey[];
}

const gradeOf = (z: number): Grade => {
  if (z > Z_FOUR_FIFTHS) return 'roomy';
  if (z >= -Z_HALF) return 'inside';
  return z >= -Z_FOUR_FIFTHS ? 'ambitious' : 'beyond';
};

const sentence = (grade: Grade, goal: string, odds: string, p: Prediction): string => {
  const likely = `${roughDurationText(p.likely.quickS)} to ${roughDurationText(p.likely.slowS)}`;
  const wide = `${roughDurationText(p.wide.quickS)} to ${roughDurationText(p.wide.slowS)}`;
  switch (grade) {
    case 'roomy':
      return `${goal} is gentle: your results point to ${likely}. A calm race, or room for a quicker goal.`;
    case 'inside':
      return `${goal} fits your results, which point to ${likely}. The chance on a normal day: ${odds}.`;
    case 'ambitious':
      return `${goal} is ambitious: your results point to ${likely}. It can happen on a very good day: ${odds}. Keep a second goal nearer to ${roughDurationText(p.middleS)}.`;
    case 'beyond':
      return `${goal} is beyond what your results show now, ${wide} (chance: ${odds}). Keep it for a later race, and run this one for about ${roughDurationText(p.middleS)}.`;
  }
};

/** `a half marathon`, `10 miles`, `12 km`. */
const article = (distanceM: number): string => {
  const race = raceText(distanceM);
  return /^\d/.test(race) ? race : `a ${race}`;
};

/** How a goal time compares with what the results say about the same distance. */
export const judgeGoal = (goalS: number, prediction: Prediction): Verdict => {
  const z = Math.log(goalS / prediction.middleS) / prediction.sdLog;
  const grade = gradeOf(z);
  const chance = normalBelow(z);
  return {
    grade,
    goalS,
    quickerPercent: 100 * (1 - goalS / prediction.middleS),
    chance,
    text: sentence(
      grade,
      `${durationText(goalS)} for ${article(prediction.distanceM)}`,
      chanceText(chance),
      prediction,
    ),
    cautions:
      grade === 'beyond' || grade === 'ambitious' ? ['estimate', 'training', 'general'] : ['estimate'],
  };
};
