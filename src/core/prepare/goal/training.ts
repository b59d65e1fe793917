import { type Message, message } from '../../units/message.ts';
import type { CautionKey } from '../cautions.ts';
import { roughDurationText } from '../format.ts';
import { memory, PRACTICE, type Source } from '../source.ts';
import { runningIndex } from './danielsGilbert.ts';
import { type Prediction, predict } from './predict.ts';
import type { RaceResult } from './raceResult.ts';

/** What it would take to bring a goal into the range. */
export interface TrainingNeed {
  /** A shorter race run in this time would put the goal in the middle of the range. */
  readonly tuneUp: { readonly distanceM: number; readonly needS: number; readonly nowS: number };
  /** Weeks of steady training that such a step usually takes; null where the goal lies in the likely range already. */
  readonly weeks: { readonly fewest: number; readonly most: number } | null;
  readonly steps: readonly Message[];
  readonly sources: readonly Source[];
  readonly cautions: readonly CautionKey[];
}

/** Weeks for one point of the running index, for somebody in regular training (Daniels' book, recalled; many gain less). */
const WEEKS_PER_POINT = { fewest: 4, most: 6 };
/** Beyond half a year nobody can say: a goal in between is kinder (common practice, no source). */
const FAR_WEEKS = 26;
/** Weekly distance at which training for a race of this length is usual: a little over twice the race (no source). */
const USUAL_WEEKLY_PER_RACE = 2.2;
const TEN_K_M = 10_000;
const FIVE_K_M = 5000;
const LONG_RACE_M = 16_000;

const distanceStep = (toM: number, weeklyKm: number | null): Message => {
  const usualKm = Math.min(70, Math.max(25, 5 * Math.round((USUAL_WEEKLY_PER_RACE * toM) / 5000)));
  return weeklyKm !== null && weeklyKm >= usualKm
    ? message('Keep your {n} km a week steady: enough for this race.', { n: Math.round(weeklyKm) })
    : message(
        'Let the week grow towards {n} km, by no more than a tenth a week, and ease every fourth week.',
        { n: usualKm },
      );
};

const stepsFor = (toM: number, weeklyKm: number | null, weeks: TrainingNeed['weeks']): readonly Message[] => [
  distanceStep(toM, weeklyKm),
  message(
    'Once a week run 15 to 30 minutes in all at a pace that you could hold for an hour, in pieces with short rests.',
  ),
  toM > LONG_RACE_M
    ? message('Once a week run long and easy, and practise gel, water and breakfast on it.')
    : message('Once a week run short and quick: 6 to 10 times a minute, with full rest.'),
  message('All the rest easy: you can talk in sentences.'),
  weeks !== null && weeks.fewest > FAR_WEEKS
    ? message(
        'This step is more than half a year away. Choose a goal in between, race for it, and ask again.',
      )
    : message('Then race the shorter distance, and put its time in here.'),
];

/** What the goal asks for beyond what the results show. `weeklyKm` null = not given. */
export const trainingFor = (
  goalS: number,
  results: readonly [RaceResult, ...RaceResult[]],
  prediction: Prediction,
  weeklyKm: number | null,
): TrainingNeed => {
  const tuneUpM = prediction.distanceM > TEN_K_M ? TEN_K_M : FIVE_K_M;
  const nowS = predict(results, tuneUpM, weeklyKm).middleS;
  const points =
    runningIndex(prediction.distanceM, goalS) - runningIndex(prediction.distanceM, prediction.middleS);
  const whole = Math.max(1, Math.ceil(points));
  const missing = goalS < prediction.likely.quickS;
  const weeks = missing
    ? { fewest: whole * WEEKS_PER_POINT.fewest, most: whole * WEEKS_PER_POINT.most }
    : null;
  return {
    // The same step in per cent at both distances, so that every correction of the prediction stays in.
    tuneUp: { distanceM: tuneUpM, needS: nowS * Math.min(1, goalS / prediction.middleS), nowS },
    weeks,
    steps: weeks === null ? [] : stepsFor(prediction.distanceM, weeklyKm, weeks),
    sources: [
      memory(message('Daniels: at most one point of the running index in four to six weeks')),
      { ...PRACTICE, text: message('Kinds and amounts of training: common practice, no source') },
    ],
    cautions: ['training', 'ill', 'general'],
  };
};

/** One sentence that says what the goal asks for. */
export const trainingText = ({ tuneUp, weeks }: TrainingNeed): Message =>
  weeks === null
    ? message('It asks for nothing more than you have shown.')
    : message(
        'It asks for {km} km in about {need} (now about {now}): often {fewest} to {most} weeks of steady training, and not everybody gets there.',
        {
          km: tuneUp.distanceM / 1000,
          need: roughDurationText(tuneUp.needS),
          now: roughDurationText(tuneUp.nowS),
          fewest: weeks.fewest,
          most: weeks.most,
        },
      );
