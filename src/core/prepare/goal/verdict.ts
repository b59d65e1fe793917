import { presetAt } from '../../plan/presets.ts';
import { type Message, message } from '../../units/message.ts';
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
  readonly text: Message;
  readonly cautions: readonly CautionKey[];
}

const gradeOf = (z: number): Grade => {
  if (z > Z_FOUR_FIFTHS) return 'roomy';
  if (z >= -Z_HALF) return 'inside';
  return z >= -Z_FOUR_FIFTHS ? 'ambitious' : 'beyond';
};

const sentence = (grade: Grade, goal: Message, odds: Message, p: Prediction): Message => {
  const likely = { quick: roughDurationText(p.likely.quickS), slow: roughDurationText(p.likely.slowS) };
  const wide = { quick: roughDurationText(p.wide.quickS), slow: roughDurationText(p.wide.slowS) };
  const middle = roughDurationText(p.middleS);
  switch (grade) {
    case 'roomy':
      return message(
        '{goal} is gentle: your results point to {quick} to {slow}. A calm race, or room for a quicker goal.',
        { goal, ...likely },
      );
    case 'inside':
      return message(
        '{goal} fits your results, which point to {quick} to {slow}. The chance on a normal day: {odds}.',
        { goal, odds, ...likely },
      );
    case 'ambitious':
      return message(
        '{goal} is ambitious: your results point to {quick} to {slow}. It can happen on a very good day: {odds}. Keep a second goal nearer to {middle}.',
        { goal, odds, middle, ...likely },
      );
    case 'beyond':
      return message(
        '{goal} is beyond what your results show now, {quick} to {slow} (chance: {odds}). Keep it for a later race, and run this one for about {middle}.',
        { goal, odds, middle, ...wide },
      );
  }
};

/** `1:44:00 for a half marathon`, `… for 10 miles`, `… for 12 km`. */
const goalText = (goalS: number, distanceM: number): Message => {
  const time = durationText(goalS);
  switch (presetAt(distanceM)?.name) {
    case 'Half marathon':
      return message('{time} for a half marathon', { time });
    case 'Marathon':
      return message('{time} for a marathon', { time });
    default:
      return message('{time} for {distance}', { time, distance: raceText(distanceM) });
  }
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
    text: sentence(grade, goalText(goalS, prediction.distanceM), chanceText(chance), prediction),
    cautions:
      grade === 'beyond' || grade === 'ambitious' ? ['estimate', 'training', 'general'] : ['estimate'],
  };
};
