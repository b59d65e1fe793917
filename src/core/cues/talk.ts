import type { Saying } from './saying.ts';

/** How much is said. It changes which kinds of cue come, not how fast they are spoken. */
export const TALK = ['sparse', 'normal', 'full'] as const;
export type Talk = (typeof TALK)[number];

/** What a listener can tell apart, and so may want or not want. */
export type Topic = Saying['kind'] | 'tooQuick' | 'signalBack' | 'freePush';

/**
 * The level from which a topic is said.
 * sparse: what the plan asks for by name, and what needs an act: targets, checkpoints, ease and quicken, fuel, finish.
 * normal: also boards, stations, and the news that the signal is back.
 * full: also a push that the plan does not have, when there is time in hand.
 */
const FROM: Readonly<Record<Topic, Talk>> = {
  start: 'sparse',
  opening: 'sparse',
  tooQuick: 'sparse',
  settle: 'sparse',
  checkpoint: 'sparse',
  ease: 'sparse',
  quicken: 'sparse',
  fuel: 'sparse',
  push: 'sparse',
  signal: 'sparse',
  answer: 'sparse',
  finish: 'sparse',
  notice: 'sparse',
  byClock: 'sparse',
  due: 'sparse',
  leg: 'sparse',
  rep: 'sparse',
  heart: 'sparse',
  pen: 'sparse',
  done: 'sparse',
  pacer: 'sparse',
  noPacer: 'sparse',
  rival: 'sparse',
  reminder: 'sparse',
  marker: 'normal',
  remaining: 'normal',
  station: 'normal',
  signalBack: 'normal',
  freePush: 'full',
};

export const isSaid = (talk: Talk, topic: Topic): boolean => TALK.indexOf(talk) >= TALK.indexOf(FROM[topic]);
