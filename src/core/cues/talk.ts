import type { Saying } from './saying.ts';

/**
 * How much is said. It changes which kinds of cue come, not how fast they are spoken. 'tones': what a tone alone can tell
 * is told by it; only what needs words has them (`alone` in src/voice/tones/alone.ts says which and why).
 */
export const TALK = ['tones', 'sparse', 'normal', 'full'] as const;
export type Talk = (typeof TALK)[number];

/** What a listener can tell apart, and so may want or not want. */
export type Topic = Saying['kind'] | 'tooQuick' | 'signalBack' | 'freePush';

/**
 * The level from which a topic is said.
 * sparse: what the plan asks for by name, and what needs an act: targets, checkpoints, ease and quicken, fuel, finish.
 * normal: also boards, stations, and the news that the signal is back.
 * full: also a push that the plan does not have, when there is time in hand.
 */
const FROM: Readonly<Record<Topic, Exclude<Talk, 'tones'>>> = {
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

/**
 * What tones alone leave out of the usual: a result and a rival are numbers, which no tone has; a station stands by the
 * road to be seen. The runner's own food is still said.
 */
const NEEDS_WORDS: readonly Topic[] = ['station', 'rep', 'rival'];

export const isSaid = (talk: Talk, topic: Topic): boolean => {
  if (talk === 'tones') return FROM[topic] !== 'full' && !NEEDS_WORDS.includes(topic);
  return TALK.indexOf(talk) >= TALK.indexOf(FROM[topic]);
};
