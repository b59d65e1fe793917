import { goalPaceSPerKm, type Race } from '../cues/race.ts';
import { paceFor, timeFor } from '../cues/rounding.ts';
import { placeOf } from '../cues/rules/checkpoint.ts';
import type { Saying } from '../cues/saying.ts';
import { suppliesAhead } from './ahead.ts';
import { atMoment, IMPORTANCE, type Wish } from './wish.ts';

/** Where the runner is told that they should be: at checkpoints alone, or at every kilometre or mile board too. */
export type Places = 'checkpoints' | 'boards';

/** After the countdown's last note. */
const START_AT_S = 1.5;
const OPENING_AT_S = 12;
/** The opening's pace is worth saying for its first part alone. */
const FIRST_PART = 0.5;
/** A change of pace may be told so much later: what belongs to the moment goes first. */
const TURN_LATE_S = 30;
/** Nearer than this a board and a checkpoint are one place, and the checkpoint is told. */
const SAME_PLACE_M = 50;

const due = (race: Race, atM: number): Saying => ({ kind: 'due', place: placeOf(race, atM) });

const start = (race: Race): Wish => {
  const { goalS, unit, opening } = race.plan;
  const saying: Saying = {
    kind: 'start',
    goalS: timeFor(goalS, 0),
    pace: paceFor(goalPaceSPerKm(race), unit),
  };
  // Two paces in one breath would be mixed up: the opening's comes next.
  const longest = opening === null ? 'long' : 'short';
  return atMoment(START_AT_S, saying, IMPORTANCE.start, 0, longest);
};

const turn = (race: Race, atM: number, saying: Saying, longest: Wish['longest']): Wish => {
  const atS = race.schedule.timeAtS(atM);
  return {
    ...atMoment(atS, saying, IMPORTANCE.turn, atM, longest),
    untilS: Math.min(atS + TURN_LATE_S, race.totalS),
  };
};

const opening = (race: Race): readonly Wish[] => {
  const { opening: first, unit } = race.plan;
  if (first === null) return [];
  const goal = goalPaceSPerKm(race);
  const pace = paceFor(goal - first.quickerSPerKm, unit);
  const hold: Saying = { kind: 'opening', what: 'hold', pace, untilM: first.untilM };
  const lastS = race.schedule.timeAtS(FIRST_PART * first.untilM);
  const settle: Saying = {
    kind: 'settle',
    pace: paceFor(goal, unit),
    ahead: { side: 'even', seconds: 0, sure: true },
  };
  return [
    {
      ...atMoment(Math.min(OPENING_AT_S, lastS), hold, IMPORTANCE.turn, 0),
      untilS: Math.max(OPENING_AT_S, lastS),
    },
    // Short: the long form tells how the runner stands, and nobody knows.
    turn(race, first.untilM, settle, 'short'),
  ];
};

const push = (race: Race): readonly Wish[] => {
  const { push: last, unit, distanceM } = race.plan;
  if (last === null) return [];
  const saying: Saying = {
    kind: 'push',
    pace: paceFor(goalPaceSPerKm(race) - last.quickerSPerKm, unit),
    remainingM: distanceM - last.fromM,
    ahead: { side: 'even', seconds: 0, sure: true },
  };
  return [turn(race, last.fromM, saying, 'short')];
};

const places = (race: Race, which: Places): readonly Wish[] => {
  const { plan, schedule } = race;
  const checkpointsM = plan.checkpointsM.filter((m) => m < plan.distanceM);
  const own = [...checkpointsM, plan.distanceM];
  const boardsM = which === 'checkpoints' ? [] : race.boards.map((board) => board.atM);
  const free = boardsM.filter((m) => own.every((atM) => Math.abs(atM - m) > SAME_PLACE_M));
  return [
    ...checkpointsM.map((m) => atMoment(schedule.timeAtS(m), due(race, m), IMPORTANCE.mark, m)),
    ...free.map((m) => atMoment(schedule.timeAtS(m), due(race, m), IMPORTANCE.board, m)),
  ];
};

/** The last call: the plan's time at the line. What the runner's own time is, nobody knows. */
const finish = (race: Race): Wish =>
  atMoment(race.totalS, due(race, race.plan.distanceM), IMPORTANCE.start, race.plan.distanceM);

/** All that a race plan has to say by the clock, in no order. */
export const raceWishes = (race: Race, which: Places): readonly Wish[] => [
  start(race),
  ...opening(race),
  ...places(race, which),
  ...suppliesAhead(race),
  ...push(race),
  finish(race),
];
