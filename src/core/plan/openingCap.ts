import { message } from '../units/message.ts';
import type { RacePlan } from './racePlan.ts';

/**
 * An opening is the time until legs and street are free: a kilometre or two. Longer, it is a quicker race, which the
 * rest of the course pays for.
 */
const LONGEST_OPENING_M = 2000;

/** The figures are those of the what-if model for the half marathon; test/core/plan/openingCap.test.ts holds them to it. */
export const OPENING_CAP_REASON = message(
  'An opening counts for 2 km at most. It feels easy whatever it costs: in the model behind What if, a half marathoner whose goal is just within reach wins 30 s over 3 km at 10 s a km quicker, and is about 20 s slower at the finish than from an even start. Who can run quicker for longer has another goal; set that one.',
);

/** The plan with its opening cut to what counts; the same object where nothing is to cut. */
export const withCappedOpening = (plan: RacePlan): RacePlan =>
  plan.opening !== null && plan.opening.untilM > LONGEST_OPENING_M
    ? { ...plan, opening: { ...plan.opening, untilM: LONGEST_OPENING_M } }
    : plan;
