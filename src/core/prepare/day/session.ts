import { type Message, message } from '../../units/message.ts';
import type { DistanceUnit } from '../../units/units.ts';
import { distanceText, paceText, raceText } from '../format.ts';

/** `sharp` keeps the intensity; `primer` is the short run of the day before. */
export type SessionKind = 'rest' | 'easy' | 'long' | 'sharp' | 'primer' | 'race';

/** What the sessions are for. */
export interface SessionGoal {
  readonly goalPaceSPerKm: number;
  readonly raceDistanceM: number;
  readonly unit: DistanceUnit;
}

/** Title and detail of a day of the taper. All amounts: common practice, no source; what is kept is the intensity. */
interface SessionText {
  readonly title: Message;
  readonly detail: Message;
}

/** Of a sharp day, this much at most is run at goal pace, in pieces of this length. */
const SHARP_PART = 0.5;
const LONG_REP_M = 1000;
const SHORT_REP_M = 400;
const MOST_REPS = 5;
/** Races up to this are sharpened with the short pieces. */
const SHORT_RACE_M = 12_000;

const reps = (
  distanceM: number,
  raceDistanceM: number,
): { readonly count: number; readonly repM: number } => {
  const repM =
    raceDistanceM <= SHORT_RACE_M || SHARP_PART * distanceM < 2 * LONG_REP_M ? SHORT_REP_M : LONG_REP_M;
  const most = repM === SHORT_REP_M ? MOST_REPS + 3 : MOST_REPS;
  return { count: Math.max(1, Math.min(most, Math.floor((SHARP_PART * distanceM) / repM))), repM };
};

const sharpDetail = (distanceM: number, goal: SessionGoal): Message => {
  const { count, repM } = reps(distanceM, goal.raceDistanceM);
  const values = { n: count, pace: paceText(goal.goalPaceSPerKm, goal.unit) };
  return repM === LONG_REP_M
    ? message('In it {n} times 1 km at goal pace, {pace}, two minutes easy between. Stop fresh.', values)
    : message('In it {n} times 400 m at goal pace, {pace}, two minutes easy between. Stop fresh.', values);
};

/** Texts for one day; `hasSharp` = another day of this week keeps the intensity. */
export const sessionText = (
  kind: SessionKind,
  distanceM: number,
  hasSharp: boolean,
  goal: SessionGoal,
): SessionText => {
  const far = distanceText(distanceM, goal.unit, 1);
  switch (kind) {
    case 'rest':
      return { title: message('Rest||day'), detail: message('As in your usual week. A walk is fine.') };
    case 'easy':
      return {
        title: message('{distance} easy', { distance: far }),
        detail: hasSharp
          ? message('You can talk in sentences.')
          : message('Easy, with four strides at the end.'),
      };
    case 'long':
      return {
        title: message('{distance} steady, the longest of the week', { distance: far }),
        detail: hasSharp
          ? message('Easy. Practise breakfast, gel and water once more.')
          : message('Easy, the last ten minutes at goal pace, {pace}.', {
              pace: paceText(goal.goalPaceSPerKm, goal.unit),
            }),
      };
    case 'sharp':
      return {
        title: message('{distance} with goal pace in it', { distance: far }),
        detail: sharpDetail(distanceM, goal),
      };
    case 'primer':
      return {
        title: message('{distance} very easy', { distance: far }),
        detail: message('Then three strides of 20 seconds. Lay out kit, number and breakfast.'),
      };
    case 'race':
      return {
        title: message('Race: {race}', { race: raceText(distanceM) }),
        detail: message('By the plan.'),
      };
  }
};
