import type { RacePlan } from '../../plan/racePlan.ts';
import type { DistanceUnit } from '../../units/units.ts';
import { distanceText, paceText } from '../format.ts';

const quickerText = (quickerSPerKm: number): string =>
  `${Number(Math.abs(quickerSPerKm).toFixed(1))} s per km ${quickerSPerKm < 0 ? 'slower' : 'quicker'} than goal pace`;

/** The plan in sentences, one a leg, by the places and paces of a level course. */
export const legTexts = (plan: RacePlan, unit: DistanceUnit): readonly string[] => {
  const { opening, push, distanceM } = plan;
  const paceSPerKm = (plan.goalS / distanceM) * 1000;
  const settledTo = push === null ? 'the finish' : distanceText(push.fromM, unit);
  const texts: string[] = [];
  if (opening !== null)
    texts.push(
      `Opening: to ${distanceText(opening.untilM, unit)} at ${paceText(paceSPerKm - opening.quickerSPerKm, unit)}, ${quickerText(opening.quickerSPerKm)}. No more than that.`,
    );
  texts.push(
    `${opening === null ? 'From the line' : 'Then settle'}: ${paceText(paceSPerKm, unit)} to ${settledTo}.`,
  );
  if (push !== null)
    texts.push(
      `Push: from ${distanceText(push.fromM, unit)} at ${paceText(paceSPerKm - push.quickerSPerKm, unit)}, if the legs allow it.`,
    );
  if (plan.pacing === 'effort')
    texts.push('On hills keep the effort, not the pace; the times at the checkpoints know the hills.');
  return texts;
};
