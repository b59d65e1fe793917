import type { Input } from '../estimate/input.ts';
import { type PodScale, podSpeed, USUAL_POD } from '../estimate/podScale.ts';

/**
 * A foot pod where there are no fixes: its speed put together to distance, by the scale that the road has taught. On the
 * road it goes into the estimate (core/estimate/podSpeed.ts) and is not counted here.
 */
export interface Pod {
  readonly scale: PodScale;
  /** Metres of road since it was first heard. */
  readonly wayM: number;
  readonly rawMps: number;
  readonly stepsPerMin: number | null;
  /** Last heard; null while it is not there. */
  readonly atMs: number | null;
}

/** Longer than this without a word from it, a pod says nothing about the way between. */
const GAP_S = 5;

/** @param scale  what was learned of this pod before */
export const beginPod = (scale: PodScale = USUAL_POD): Pod => ({
  scale,
  wayM: 0,
  rawMps: 0,
  stepsPerMin: null,
  atMs: null,
});

/** Seconds since it was heard; Infinity where it never was. */
export const podSilentS = ({ atMs }: Pod, nowMs: number): number =>
  atMs === null ? Number.POSITIVE_INFINITY : (nowMs - atMs) / 1000;

const sinceM = (pod: Pod, nowMs: number): number =>
  pod.atMs === null
    ? 0
    : podSpeed(pod.scale, pod.rawMps).speedMps * Math.min(GAP_S, Math.max(0, (nowMs - pod.atMs) / 1000));

export const hearPod = (pod: Pod, input: Input & { type: 'footPod' }): Pod => ({
  scale: pod.scale,
  wayM: pod.wayM + sinceM(pod, input.atMs),
  rawMps: input.speedMps,
  stepsPerMin: input.stepsPerMin,
  atMs: input.atMs,
});

/** Metres and speed at an instant. */
export const podWay = (
  pod: Pod,
  nowMs: number,
): { readonly distanceM: number; readonly speedMps: number } => ({
  distanceM: pod.wayM + sinceM(pod, nowMs),
  speedMps: podSpeed(pod.scale, pod.rawMps).speedMps,
});

/** How far the scale can be off at this pace, as a share: some per cent unseen, less when seen over kilometres. */
export const podDoubt = (pod: Pod): number =>
  podSpeed(pod.scale, Math.max(1, pod.rawMps)).scaleSdMps / Math.max(1, pod.rawMps);
