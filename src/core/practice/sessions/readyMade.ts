import type { Leg, PracticePlan } from '../../plan/practicePlan.ts';
import type { RacePlan } from '../../plan/racePlan.ts';
import type { Item } from '../../plan/supplies.ts';
import { type Message, message, written } from '../../units/message.ts';
import { practicePaces } from './paces.ts';
import { atPace, EASY, leg, metres, minutes, repeats, seconds, session, strides } from './parts.ts';

/**
 * Sessions of the trade, computed from the goal of a race (common practice, no source: what coaches of road runners have
 * set for a long time, in no one's name).
 */
export const READY_MADE = [
  'threshold',
  'twice15',
  'thrice10',
  'twice20',
  'easyStrides',
  'long',
  'openings',
  'raceWarmUp',
] as const;
export type ReadyMade = (typeof READY_MADE)[number];

export interface ReadyMadeText {
  readonly title: Message;
  /** What it is good for and how it should feel, one or two sentences. */
  readonly about: Message;
}

export const READY_MADE_TEXT: Readonly<Record<ReadyMade, ReadyMadeText>> = {
  threshold: {
    title: message('Threshold, in one piece'),
    about: message(
      'Ten to twenty minutes comfortably hard. You could say a short sentence, and would rather not.',
    ),
  },
  twice15: {
    title: message('2 × 15 min'),
    about: message(
      'At about half-marathon pace with three minutes easy. The second one should be as even as the first.',
    ),
  },
  thrice10: {
    title: message('3 × 10 min'),
    about: message('The same work in smaller pieces, with two minutes easy.'),
  },
  twice20: {
    title: message('2 × 20 min'),
    about: message('The long one, four minutes easy between. For when 2 × 15 has become calm.'),
  },
  easyStrides: {
    title: message('Easy run with strides'),
    about: message(
      'Easy all the way; towards the end six times twenty seconds, quick and loose, never strained.',
    ),
  },
  long: {
    title: message('Long run with race pace'),
    about: message('Easy, with three stretches at goal pace, and gels and water at the race’s own rhythm.'),
  },
  openings: {
    title: message('The opening, three times'),
    about: message(
      'One kilometre 6 s/km quicker than goal pace, then settle to it at once. Learn what capped feels like.',
    ),
  },
  raceWarmUp: {
    title: message('Before the race'),
    about: message(
      'Easy, four strides, and done in time for the pen. The shorter the race, the more it matters.',
    ),
  },
};

type Goal = Pick<RacePlan, 'distanceM' | 'goalS' | 'unit' | 'fuel'>;

const OPENING_QUICKER_S_PER_KM = 6;
const warmUp = (min: number): Leg => leg('warm-up', minutes(min), EASY);
const coolDown = (min: number): Leg => leg('cool-down', minutes(min), EASY);
const rest = (min: number): Leg => leg('recovery', minutes(min), EASY);

/** Every half an hour is what most carry gels for in a long race; the goal plan's own item where it has one. */
const GEL_EVERY_MIN = 35;
const usualGel = (goal: Goal): Item => goal.fuel[0]?.item ?? 'gel';

/**
 * The long run: easy, three stretches of goal pace in the second half, easy to the end. Its items are counted from the
 * begin of each leg that they fall into.
 */
const longLegs = (goal: Goal, paceSPerKm: number, longMin: number): readonly Leg[] => {
  const easyMin = Math.round(longMin * 0.5);
  const paceMin = Math.max(5, Math.round((longMin * 0.3) / 3));
  const legs = [
    leg('easy', minutes(easyMin), EASY),
    ...repeats(3, leg('goal pace', minutes(paceMin), atPace(paceSPerKm)), rest(4)),
    leg('cool-down', minutes(Math.max(5, longMin - easyMin - 3 * paceMin - 8)), EASY),
  ];
  let fromS = 0;
  return legs.map((l) => {
    const lengthS = l.extent.by === 'time' ? l.extent.timeS : 0;
    const untilS = fromS + lengthS;
    const take = [];
    for (let atS = GEL_EVERY_MIN * 60; atS < longMin * 60 - 300; atS += GEL_EVERY_MIN * 60) {
      if (atS < fromS || atS >= untilS) continue;
      take.push({ item: usualGel(goal), at: { timeS: atS - fromS } });
      take.push({ item: 'water' as const, at: { timeS: Math.min(lengthS, atS - fromS + 30) } });
    }
    fromS = untilS;
    return { ...l, take };
  });
};

export interface ReadyMadeWish {
  /** Minutes of the continuous threshold, 10 to 20. */
  readonly thresholdMin?: number;
  /** Minutes of the long run, 60 to 180. */
  readonly longMin?: number;
  /** Epoch ms at which the pen closes. */
  readonly penClosesMs?: number | null;
  /** A ceiling for the threshold legs, beats a minute, as the runner knows it from their own tests. */
  readonly heartMostBpm?: number | null;
}

const withCeiling = (legs: readonly Leg[], bpm: number | null): readonly Leg[] =>
  legs.map((l) => (l.kind === 'work' ? { ...l, heartMostBpm: bpm } : l));

/** A session of the trade for this goal. Same goal and wish, same session; `name` in the runner's language. */
export const readyMade = (
  which: ReadyMade,
  goal: Goal,
  wish: ReadyMadeWish = {},
  name: string = written(READY_MADE_TEXT[which].title),
): PracticePlan => {
  const paces = practicePaces(goal.distanceM, goal.goalS);
  const threshold = atPace(paces.thresholdSPerKm);
  const half = atPace(Math.max(paces.halfSPerKm, paces.thresholdSPerKm));
  const made = (legs: readonly Leg[]): PracticePlan =>
    session(name, goal.unit, withCeiling(legs, wish.heartMostBpm ?? null));
  switch (which) {
    case 'threshold':
      return made([warmUp(12), leg('work', minutes(wish.thresholdMin ?? 15), threshold), coolDown(8)]);
    case 'twice15':
      return made([warmUp(12), ...repeats(2, leg('work', minutes(15), half), rest(3)), coolDown(8)]);
    case 'thrice10':
      return made([warmUp(12), ...repeats(3, leg('work', minutes(10), threshold), rest(2)), coolDown(8)]);
    case 'twice20':
      return made([warmUp(12), ...repeats(2, leg('work', minutes(20), half), rest(4)), coolDown(8)]);
    case 'easyStrides':
      return made([leg('easy', minutes(30), EASY), ...strides(6), leg('easy', minutes(5), EASY)]);
    case 'long':
      return made(longLegs(goal, paces.goalSPerKm, wish.longMin ?? 100));
    case 'openings': {
      const quick = atPace(paces.goalSPerKm - OPENING_QUICKER_S_PER_KM);
      const once = [
        leg('opening', metres(1000), quick),
        leg('goal pace', metres(600), atPace(paces.goalSPerKm)),
      ];
      return made([warmUp(12), ...once, rest(4), ...once, rest(4), ...once, coolDown(8)]);
    }
    case 'raceWarmUp': {
      const legs = [leg('warm-up', minutes(8), EASY), ...strides(4), leg('easy', seconds(120), EASY)];
      return { ...made(legs), penClosesMs: wish.penClosesMs ?? null };
    }
  }
};
