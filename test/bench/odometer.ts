import type { Fix } from '../../src/core/estimate/input.ts';
import { type LatLon, legM } from '../../src/core/geo/ruler.ts';
import type { World } from './worlds.ts';

/** Readings that admit to be worse than this are left out, the usual guard. */
const WORST_ACCURACY_M = 30;

/** A plain odometer: it adds up the legs between readings. What the engine is compared with, in metres and in time. */
export interface Odometer {
  readonly last: LatLon | null;
  readonly sumM: number;
}

export const resting: Odometer = { last: null, sumM: 0 };

export const count = (odometer: Odometer, fix: Fix): Odometer =>
  (fix.accuracyM ?? 0) > WORST_ACCURACY_M
    ? odometer
    : { last: fix, sumM: odometer.sumM + (odometer.last ? legM(odometer.last, fix) : 0) };

/** How wrong its time at each checkpoint is, seconds. */
export const odometerErrorsS = ({ plan, run: { inputs, truth, startMs } }: World): number[] => {
  let odometer = resting;
  const readings: { ownS: number; sumM: number }[] = [];
  for (const input of inputs) {
    if (input.type !== 'fix' || input.atMs < startMs) continue;
    odometer = count(odometer, input.fix);
    readings.push({ ownS: (input.atMs - startMs) / 1000, sumM: odometer.sumM });
  }
  return plan.checkpointsM.flatMap((atM) => {
    const reached = readings.find((r) => r.sumM >= atM);
    const crossingS = truth.crossingS(atM);
    return reached && crossingS !== null ? [reached.ownS - crossingS] : [];
  });
};
