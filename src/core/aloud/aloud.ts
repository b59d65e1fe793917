import { raceOf } from '../cues/race.ts';
import type { Tone, Voice } from '../cues/voicePort.ts';
import type { RacePlan } from '../plan/racePlan.ts';
import type { Schedule } from '../plan/schedule.ts';
import { type Places, raceWishes } from './raceWishes.ts';
import { type AloudCall, settleCalls } from './settleCalls.ts';
import type { Wish } from './wish.ts';

/** A plan said aloud by the clock alone: for a player that knows the time and nothing else. */
export interface Aloud {
  /** In the order of time. */
  readonly calls: readonly AloudCall[];
  /** Tones that stand alone, with their begin in seconds from the start. */
  readonly tones: readonly { readonly atS: number; readonly tone: Tone }[];
  /** What found no room. */
  readonly dropped: readonly Wish[];
  /** The end of the plan, seconds from the start. */
  readonly totalS: number;
}

/** The countdown's ticks begin so long before the moment that they count to. */
const COUNTDOWN_S = 3;
/** A shorter lead has no room for the countdown. */
const LEAST_COUNTED_S = COUNTDOWN_S + 1;
/** A knock this long after the file's begin tells that it plays, where the countdown leaves room for it. */
const KNOCK_AT_S = 0.5;
const LEAST_KNOCKED_S = 8;
/** From the last word to the last tone. */
const LAST_TONE_S = 0.5;

/** What stands around the calls: a knock and the countdown, where the lead has room for them, and a tone at the end. */
export const framed = (
  { calls, dropped }: Pick<Aloud, 'calls' | 'dropped'>,
  totalS: number,
  leadS: number,
): Aloud => {
  const last = calls.at(-1);
  const endS = last === undefined ? totalS : last.atS + last.utterance.durationS;
  return {
    calls,
    dropped,
    totalS,
    tones: [
      ...(leadS >= LEAST_KNOCKED_S ? [{ atS: KNOCK_AT_S - leadS, tone: 'marker' as const }] : []),
      ...(leadS >= LEAST_COUNTED_S ? [{ atS: -COUNTDOWN_S, tone: 'countdown' as const }] : []),
      { atS: endS + LAST_TONE_S, tone: 'finish' },
    ],
  };
};

/**
 * A race plan by the clock: start, opening, settle, where the runner should be by now, stations and fuel a minute ahead,
 * push, the line. Hills count as far as the schedule knows them.
 * @param leadS seconds from the begin of the sound to the start
 */
export const raceAloud = (
  plan: RacePlan,
  schedule: Schedule,
  voice: Voice,
  wish: { readonly leadS: number; readonly places: Places },
): Aloud => {
  const race = raceOf(plan, schedule, true);
  return framed(settleCalls(raceWishes(race, wish.places), voice), race.totalS, wish.leadS);
};
