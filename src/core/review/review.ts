import type { CourseLine } from '../course/line.ts';
import type { RacePlan } from '../plan/racePlan.ts';
import { scheduleOf } from '../plan/schedule.ts';
import type { Message } from '../units/message.ts';
import type { Digest } from './digest.ts';
import {
  type Fade,
  fadeOf,
  type Projected,
  projectedAt,
  type RanOpening,
  type RanSplit,
  ranOpening,
  ranSplits,
  type StationCost,
  stationCosts,
} from './parts.ts';
import { type RanStretch, type ReceptionStretch, ranStretches, receptionOver } from './stretches.ts';
import { summaryOf, summaryWithoutPlan } from './summary.ts';

/** Everything a review shows, from a digest and its plan. */
export interface Review {
  readonly summary: readonly Message[];
  readonly splits: readonly RanSplit[];
  readonly projected: readonly Projected[];
  readonly opening: RanOpening | null;
  readonly fade: Fade | null;
  readonly stations: readonly StationCost[];
  /** Planned pace at each sample, seconds per kilometre. */
  readonly plannedSPerKm: readonly number[];
  /** From board to board. */
  readonly stretches: readonly RanStretch[];
  readonly reception: readonly ReceptionStretch[];
  /** Share of the run with good reception, 0 to 1. */
  readonly goodShare: number;
}

/** @param isImported  it came without a plan; the one it has was made from the run itself, and nobody meant an opening */
export const reviewOf = (
  digest: Digest,
  plan: RacePlan,
  course: CourseLine | null,
  isImported = false,
): Review => {
  const schedule = scheduleOf(plan, course);
  const opening = isImported ? null : ranOpening(digest, plan, schedule);
  const fade = fadeOf(digest, plan, schedule);
  const stations = stationCosts(digest, plan, schedule);
  const splits = ranSplits(digest, plan, schedule);
  const { waiting, good, poor, lost } = digest.signalS;
  return {
    summary: isImported
      ? summaryWithoutPlan({ plan, digest, fade })
      : summaryOf({ plan, digest, opening, fade, stations }),
    splits,
    stretches: ranStretches(digest, splits, course),
    reception: receptionOver(digest),
    projected: projectedAt(digest, plan, schedule),
    opening,
    fade,
    stations,
    plannedSPerKm: digest.samples.map((s) => schedule.paceAtSPerKm(s.distanceM)),
    goodShare: good / Math.max(1e-9, waiting + good + poor + lost),
  };
};
