import type { RacePlan } from '../../plan/racePlan.ts';
import { decimalUpTo, type Message, message } from '../../units/message.ts';
import type { DistanceUnit } from '../../units/units.ts';
import { distanceText, paceText } from '../format.ts';

/** The plan in sentences, one a leg, by the places and paces of a level course. */
export const legTexts = (plan: RacePlan, unit: DistanceUnit): readonly Message[] => {
  const { opening, push, distanceM } = plan;
  const paceSPerKm = (plan.goalS / distanceM) * 1000;
  const texts: Message[] = [];
  if (opening !== null) {
    const values = {
      place: distanceText(opening.untilM, unit),
      pace: paceText(paceSPerKm - opening.quickerSPerKm, unit),
      n: decimalUpTo(Math.abs(opening.quickerSPerKm), 1),
    };
    texts.push(
      opening.quickerSPerKm < 0
        ? message(
            'Opening: to {place} at {pace}, {n} s per km slower than goal pace. No more than that.',
            values,
          )
        : message(
            'Opening: to {place} at {pace}, {n} s per km quicker than goal pace. No more than that.',
            values,
          ),
    );
  }
  texts.push(settled(opening !== null, paceText(paceSPerKm, unit), push && distanceText(push.fromM, unit)));
  if (push !== null)
    texts.push(
      message('Push: from {place} at {pace}, if the legs allow it.', {
        place: distanceText(push.fromM, unit),
        pace: paceText(paceSPerKm - push.quickerSPerKm, unit),
      }),
    );
  if (plan.pacing === 'effort')
    texts.push(
      message('On hills keep the effort, not the pace; the times at the checkpoints know the hills.'),
    );
  return texts;
};

const settled = (afterOpening: boolean, pace: Message, place: Message | null): Message => {
  if (place === null)
    return afterOpening
      ? message('Then settle: {pace} to the finish.', { pace })
      : message('From the line: {pace} to the finish.', { pace });
  return afterOpening
    ? message('Then settle: {pace} to {place}.', { pace, place })
    : message('From the line: {pace} to {place}.', { pace, place });
};
