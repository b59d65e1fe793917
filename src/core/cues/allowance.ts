import type { Race } from './race.ts';

/**
 * The ear is a narrow channel: over a race less than 4 % of the time is speech. What the plan asks for by name comes
 * first; boards and stations share what is left, spread over the course. In a half marathon that is never short; in a
 * quick 5 km the splits give way.
 */
const SPEECH_SHARE = 0.038;
/** What the rest takes, in seconds of speech, by the lengths of the calls in the pack. */
const CALL_S = { checkpoint: 6.5, finish: 8, start: 6, opening: 6, settle: 6, push: 8, fuel: 4 } as const;
/** A few words of ease, quicken or signal in every quarter of an hour. */
const PACE_SHARE = 0.006;
/** So much of it may be spent ahead of its time. */
const EARLY_SHARE = 0.1;

/** Speech for boards and stations over the whole race, ms. */
export const spareTotalMs = ({ plan, totalS, fuel }: Race): number => {
  const named =
    CALL_S.finish +
    (plan.opening ? CALL_S.opening + CALL_S.settle : CALL_S.start) +
    (plan.push ? CALL_S.push : 0) +
    CALL_S.checkpoint * plan.checkpointsM.length +
    CALL_S.fuel * fuel.length;
  return 1000 * Math.max(0, (SPEECH_SHARE - PACE_SHARE) * totalS - named);
};

/** What of it may have been spent at a place. */
export const allowanceMs = (race: Race, totalMs: number, distanceM: number): number =>
  totalMs * Math.min(1, distanceM / race.plan.distanceM + EARLY_SHARE);
