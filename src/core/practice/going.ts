import { progressAt } from '../estimate/estimator.ts';
import { podSpeed } from '../estimate/podScale.ts';
import type { EstimatorSetup, EstimatorState } from '../estimate/state.ts';
import type { Leg } from '../plan/practicePlan.ts';
import { M_PER_KM } from '../units/units.ts';
import { type Pod, podDoubt, podSilentS, podWay } from './pod.ts';
import { OWN_WAY, type Way, wayAt } from './way/way.ts';

/** How far the runner has come since the session began, and how that is known. */
export interface Going {
  readonly by: 'line' | 'free' | 'pod';
  readonly distanceM: number;
  readonly distanceSdM: number;
  readonly speedMps: number;
  readonly speedSdMps: number;
  /** Seconds since a fix or a word of the pod that was used. */
  readonly sinceS: number;
}

/** A pod's speed is a mean over some steps. */
const POD_SPEED_SD_MPS = 0.08;
const POD_SILENT_S = 5;
/** A place is no better known than this, however short the leg. */
const LEAST_SD_M = 1.5;

export interface Sources {
  readonly indoors: boolean;
  readonly setup: EstimatorSetup;
  readonly estimate: EstimatorState;
  readonly pod: Pod;
  /** Null where the session has no course. */
  readonly way: Way | null;
}

/** Null where nothing measures the way: indoors without a pod. */
export const goingAt = ({ indoors, setup, estimate, pod, way }: Sources, nowMs: number): Going | null => {
  if (indoors) {
    const sinceS = podSilentS(pod, nowMs);
    if (sinceS > POD_SILENT_S) return null;
    const way = podWay(pod, nowMs);
    const distanceSdM = podDoubt(pod) * way.distanceM;
    return { by: 'pod', ...way, distanceSdM, speedSdMps: POD_SPEED_SD_MPS, sinceS };
  }
  const { distanceM, distanceSdM, speedMps, speedSdMps, sinceFixS } = progressAt(setup, estimate, nowMs);
  const free = { distanceM: distanceM * OWN_WAY, speedMps: speedMps * OWN_WAY, distanceSdM, speedSdMps };
  const going = way === null ? { by: 'free' as const, ...free } : wayAt(way, setup, estimate, nowMs);
  return {
    ...going,
    speedSdMps: Math.hypot(going.speedSdMps, podDoubtMps(estimate)),
    // A fix that does not fit the line is a fix all the same.
    sinceS: sinceFixS,
  };
};

/** A stride wavers from its scale for half a minute at a time. At 0 two false alarms a session, at 0.05 told twice as late (bench). */
const STRIDE_SD_MPS = 0.02;

/** What a foot pod can be off stays for minutes, which the estimate's deviation of the moment does not tell. */
const podDoubtMps = ({ pod: heard }: EstimatorState): number =>
  heard === null ? 0 : Math.hypot(STRIDE_SD_MPS, podSpeed(heard.scale, heard.rawMps).scaleSdMps);

/** Where and when something began. */
export interface Mark {
  readonly atMs: number;
  readonly going: Going | null;
}

/** Metres run since a mark, and how sure; null where one of the two is not known. */
export const wayFrom = (
  mark: Mark,
  now: Going | null,
): { readonly distanceM: number; readonly sdM: number } | null => {
  if (mark.going === null || now === null) return null;
  const distanceM = Math.max(0, now.distanceM - mark.going.distanceM);
  const [from, to] = [mark.going.distanceSdM, now.distanceSdM];
  const sdM =
    now.by === 'pod'
      ? (to * distanceM) / Math.max(1, now.distanceM)
      : Math.hypot(LEAST_SD_M, Math.sqrt(Math.max(0, to * to - from * from)));
  return { distanceM, sdM };
};

/** Seconds ahead of the leg's own target since a mark; null where the leg has no pace or the way is not known. */
export const aheadFrom = (
  leg: Leg,
  mark: Mark | null,
  now: Going | null,
  nowMs: number,
): { readonly aheadS: number; readonly sdS: number } | null => {
  if (mark === null || leg.target.by !== 'pace') return null;
  const way = wayFrom(mark, now);
  if (way === null) return null;
  const sPerM = leg.target.paceSPerKm / M_PER_KM;
  return { aheadS: way.distanceM * sPerM - (nowMs - mark.atMs) / 1000, sdS: way.sdM * sPerM };
};
