import { leaderOf } from './contenders.ts';
import { LAG } from './courseState.ts';
import { airNow } from './courseTracker.ts';
import { type ReceiverPrior, USUAL_RECEIVER } from './receiver.ts';
import type { EstimatorState } from './state.ts';

/** What a run along a line has shown of the phone's receiver. */
export interface ReceiverSeen {
  readonly slowSdM: number;
  readonly lagS: number;
  readonly lagSdS: number;
}

/** Only a line shows it, and only when the run has gone on for a while. */
const LEAST_S = 600;

/** Null where nothing was shown. */
export const receiverSeen = ({ belief, startMs, lastUsedMs }: EstimatorState): ReceiverSeen | null => {
  if (belief.kind !== 'course' || startMs === null || lastUsedMs === null) return null;
  if (lastUsedMs - startMs < 1000 * LEAST_S) return null;
  const { track } = leaderOf(belief.contenders);
  const n = track.g.x.length;
  const variance = track.g.P[LAG * n + LAG] ?? 0;
  return {
    slowSdM: airNow(track).slowSdM,
    lagS: track.g.x[LAG] ?? USUAL_RECEIVER.lagS,
    lagSdS: Math.sqrt(Math.max(0, variance)),
  };
};

/** The usual phone counts as so many runs: streets differ between runs more than a phone does. */
const BELIEF_RUNS = 2;
/** Lags change with the phone's own load; no calibration makes them surer than this. */
const LEAST_LAG_SD_S = 0.25;

/** What to believe of this phone before the next run, from what its runs have shown; the usual where there is none. */
export const receiverPriorOf = (seen: readonly ReceiverSeen[]): ReceiverPrior => {
  if (seen.length === 0) return USUAL_RECEIVER;
  const weight = BELIEF_RUNS + seen.length;
  const mean = (usual: number, of: (s: ReceiverSeen) => number): number =>
    (BELIEF_RUNS * usual + seen.reduce((sum, s) => sum + of(s), 0)) / weight;
  return {
    ...USUAL_RECEIVER,
    slowSdM: mean(USUAL_RECEIVER.slowSdM, (s) => s.slowSdM),
    lagS: mean(USUAL_RECEIVER.lagS, (s) => s.lagS),
    lagSdS: Math.max(
      LEAST_LAG_SD_S,
      mean(USUAL_RECEIVER.lagSdS, (s) => s.lagSdS),
    ),
  };
};
