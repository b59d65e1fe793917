import type { DistanceUnit } from '../../units/units.ts';
import { distanceText, roughDurationText } from '../format.ts';
import { chanceText } from '../normal.ts';
import type { OpeningTally, Tally } from './whatIf.ts';

/** A change smaller than this, or than twice its error, is no change (the model is no better than that). */
const NOTICEABLE_S = 3;

/** One sentence on the whole plan. */
export const tallyText = (t: Tally, unit: DistanceUnit): string => {
  const odds = chanceText(t.chance);
  const spread = `Four in five finish between ${roughDurationText(t.finishS.quick)} and ${roughDurationText(t.finishS.slow)}`;
  if (t.lost === null) return `Every run of this plan made the goal. ${spread}.`;
  const from = distanceText(t.lost.fromM, unit, 0);
  const to = distanceText(t.lost.toM, unit, 0);
  const where = from === to ? `about ${to}` : `between ${from} and ${to}`;
  return `Chance of the goal: ${odds}. ${spread}. Where it is missed, it is mostly lost ${where}.`;
};

/** One sentence on an opening. */
export const openingText = (t: OpeningTally, unit: DistanceUnit): string => {
  const name = `${t.quickerSPerKm} s per km quicker for ${distanceText(t.untilM, unit)}`;
  const seconds = Math.round(Math.abs(t.changeS));
  if (seconds < NOTICEABLE_S || Math.abs(t.changeS) < 2 * t.changeSdS)
    return `${name}: neither wins nor costs anything to speak of.`;
  return t.changeS < 0
    ? `${name}: wins about ${seconds} s on average.`
    : `${name}: costs about ${seconds} s on average.`;
};
