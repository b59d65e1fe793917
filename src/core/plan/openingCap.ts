import type { RacePlan } from './racePlan.ts';

/**
 * An opening is the time until legs and street are free: a kilometre or two. Longer, it is a quicker race, which the
 * rest of the course pays for.
 */
const LONGEST_OPENING_M = 2000;

export const OPENING_CAP_REASON =
  'An opening counts for 2 km at most. It feels easy whatever it costs: seconds won by running quicker than you can hold come back later, about double. Who is quicker than that for longer has another goal; set that one.';

/** The plan with its opening cut to what counts; the same object where nothing is to cut. */
export const withCappedOpening = (plan: RacePlan): RacePlan =>
  plan.opening !== null && plan.opening.untilM > LONGEST_OPENING_M
    ? { ...plan, opening: { ...plan.opening, untilM: LONGEST_OPENING_M } }
    : plan;
