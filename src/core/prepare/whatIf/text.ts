import { type Message, message, written } from '../../units/message.ts';
import type { DistanceUnit } from '../../units/units.ts';
import { distanceText, roughDurationText } from '../format.ts';
import { chanceText } from '../normal.ts';
import type { OpeningTally, Tally } from './whatIf.ts';

/** A change smaller than this, or than twice its error, is no change (the model is no better than that). */
const NOTICEABLE_S = 3;

/** Whole minutes would put the quick end, which lies at the plan's own finish, behind a goal of the same minute. */
const FINISH_STEP_S = 30;

/** A finish of these runs, as roughly as it is known. */
export const finishText = (finishS: number): string => roughDurationText(finishS, FINISH_STEP_S);

/** A sentence or two on the whole plan. */
export const tallyText = (t: Tally, unit: DistanceUnit): Message => {
  const odds = chanceText(t.chance);
  const [quick, slow] = [finishText(t.finishS.quick), finishText(t.finishS.slow)];
  if (t.lost === null)
    return message('Every run of this plan made the goal. Four in five finish between {quick} and {slow}.', {
      quick,
      slow,
    });
  const from = distanceText(t.lost.fromM, unit, 0);
  const to = distanceText(t.lost.toM, unit, 0);
  return written(from) === written(to)
    ? message(
        'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost about {place}.',
        { odds, quick, slow, place: to },
      )
    : message(
        'Chance of the goal: {odds}. Four in five finish between {quick} and {slow}. Where it is missed, it is mostly lost between {from} and {to}.',
        { odds, quick, slow, from, to },
      );
};

/** One sentence on an opening. */
export const openingText = (t: OpeningTally, unit: DistanceUnit): Message => {
  const seconds = Math.round(Math.abs(t.changeS));
  const values = { quicker: t.quickerSPerKm, distance: distanceText(t.untilM, unit), n: seconds };
  if (seconds < NOTICEABLE_S || Math.abs(t.changeS) < 2 * t.changeSdS)
    return message(
      '{quicker} s per km quicker for {distance}: neither wins nor costs anything to speak of.',
      values,
    );
  return t.changeS < 0
    ? message('{quicker} s per km quicker for {distance}: wins about {n} s on average.', values)
    : message('{quicker} s per km quicker for {distance}: costs about {n} s on average.', values);
};
