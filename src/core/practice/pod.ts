import type { Input } from '../estimate/input.ts';

/**
 * A foot pod: speed as it believes, put together to distance, and held against the road where fixes are good. Its own
 * scale is a matter of the runner's stride, so it is wrong by some per cent until it has been held against a known way.
 */
export interface Pod {
  /** Metres by the pod's own belief since it was first heard. */
  readonly rawM: number;
  readonly rawMps: number;
  readonly stepsPerMin: number | null;
  /** Last heard; null while it is not there. */
  readonly atMs: number | null;
  /** Metres of road and of pod that were seen together, the belief before anything was seen included. */
  readonly roadM: number;
  readonly seenM: number;
}

/** Before the road has shown it, a factor is believed with the weight of so many metres. */
const BELIEF_M = 400;
/** Longer than this without a word from it, a pod says nothing about the way between. */
const GAP_S = 5;
/** No stride is so wrong: outside this the road, not the pod, is at fault. */
const FACTOR = { least: 0.8, most: 1.25 };

/** @param factor  what was learned of this pod before: road metres for each of its own */
export const beginPod = (factor = 1): Pod => ({
  rawM: 0,
  rawMps: 0,
  stepsPerMin: null,
  atMs: null,
  roadM: BELIEF_M * factor,
  seenM: BELIEF_M,
});

/** Road metres for each metre of the pod's. */
export const podFactor = ({ roadM, seenM }: Pod): number =>
  Math.min(FACTOR.most, Math.max(FACTOR.least, roadM / seenM));

/** Seconds since it was heard; Infinity where it never was. */
export const podSilentS = ({ atMs }: Pod, nowMs: number): number =>
  atMs === null ? Number.POSITIVE_INFINITY : (nowMs - atMs) / 1000;

const sinceM = (pod: Pod, nowMs: number): number =>
  pod.atMs === null ? 0 : pod.rawMps * Math.min(GAP_S, Math.max(0, (nowMs - pod.atMs) / 1000));

/** @param roadMps  speed by good fixes at the same time; null where there are none */
export const hearPod = (pod: Pod, input: Input & { type: 'footPod' }, roadMps: number | null): Pod => {
  const rawM = sinceM(pod, input.atMs);
  const dtS = pod.rawMps > 0 ? rawM / pod.rawMps : 0;
  const together = roadMps !== null && roadMps > 1 && rawM > 0;
  return {
    rawM: pod.rawM + rawM,
    rawMps: input.speedMps,
    stepsPerMin: input.stepsPerMin,
    atMs: input.atMs,
    roadM: pod.roadM + (together ? roadMps * dtS : 0),
    seenM: pod.seenM + (together ? rawM : 0),
  };
};

/** Metres and speed at an instant, by the pod and its factor. */
export const podWay = (
  pod: Pod,
  nowMs: number,
): { readonly distanceM: number; readonly speedMps: number } => ({
  distanceM: (pod.rawM + sinceM(pod, nowMs)) * podFactor(pod),
  speedMps: pod.rawMps * podFactor(pod),
});

/** How far a factor can be off, as a share: some per cent unseen, one when seen over kilometres. */
export const podDoubt = ({ seenM }: Pod): number => Math.max(0.01, 0.03 * Math.sqrt(BELIEF_M / seenM));
