import { type Doppler, judgeSpeed } from './doppler.ts';
import * as filter from './freeFilter.ts';
import type { Gaussian } from './kalman.ts';
import { copyOf } from './kalman.ts';
import type { PlaneFix } from './planeFix.ts';

/** Before a speed that was not believed, until the next one shows what it was worth. */
export interface Doubted {
  readonly g: Gaussian;
  readonly timeMs: number;
  readonly lastMps: number;
}

/** What the way by Doppler speeds needs of a track. */
export interface SpedTrack {
  readonly g: Gaussian;
  readonly timeMs: number;
  readonly doppler: Doppler;
  readonly last: PlaneFix;
  /** The pace of this run changes at a stroke (see newPace.ts). */
  readonly leaps: boolean;
  readonly doubted: Doubted | null;
}

/** Takes a Doppler speed in, in place, if it is one that can be. */
export const speedTaken = (
  g: Gaussian,
  before: Doppler,
  speedMps: number,
): { readonly g: Gaussian; readonly doppler: Doppler } => {
  const { innovation, variance } = filter.fitSpeed(g, speedMps);
  const judged = judgeSpeed(before, innovation, variance);
  if (judged.verdict === 'changed') filter.loosenSpeed(g, Math.abs(innovation));
  if (judged.verdict !== 'refuse') filter.takeSpeed(g, speedMps, Math.sqrt(before.variance));
  return { g, doppler: judged.doppler };
};

/**
 * Where the pace changes at a stroke the belief about the speed lags behind, and what it lags by would be lost as way:
 * there the readings themselves are added up. A speed that was refused counts after all where the next one bears it out,
 * and is passed over where not. Null where the pace is kept, and where a speed is alone or not believed. On the bench
 * it takes 0.1 s off the leg changes of a session in the open, and would add 0.2 s to a race, which keeps its pace.
 */
export const bySpeeds = (
  t: SpedTrack,
  fix: PlaneFix,
): { readonly g: Gaussian; readonly doppler: Doppler } | null => {
  if (!t.leaps || fix.speedMps === null || t.last.speedMps === null) return null;
  const g = copyOf(t.doubted?.g ?? t.g);
  const sdMps = Math.sqrt(t.doppler.variance);
  let [timeMs, lastMps] = [t.doubted?.timeMs ?? t.timeMs, t.doubted?.lastMps ?? t.last.speedMps];
  const go = (toMs: number, speedMps: number): void => {
    filter.stepBySpeeds(g, Math.max(0, (toMs - timeMs) / 1000), (lastMps + speedMps) / 2, sdMps);
    [timeMs, lastMps] = [toMs, speedMps];
  };
  if (t.doubted) go(t.timeMs, t.last.speedMps);
  go(fix.timeMs, fix.speedMps);
  const { innovation, variance } = filter.fitSpeed(g, fix.speedMps);
  const { verdict } = judgeSpeed(t.doppler, innovation, variance);
  const plain = t.doubted ? verdict === 'changed' : verdict !== 'refuse';
  return plain ? speedTaken(g, t.doppler, fix.speedMps) : null;
};
