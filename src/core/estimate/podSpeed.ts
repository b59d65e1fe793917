import * as readings from './courseReadings.ts';
import * as course from './courseState.ts';
import { predictTrack } from './courseTracker.ts';
import { podStep } from './freeTracker.ts';
import type { Input } from './input.ts';
import { learnPod, POD_LEAST_MPS, type PodScale, podSpeed, USUAL_POD } from './podScale.ts';
import type { EstimatorState } from './state.ts';

/** A foot pod as far as this run has heard it. */
export interface PodState {
  readonly scale: PodScale;
  /** Last heard, by its own measure. */
  readonly rawMps: number;
  readonly atMs: number;
  /** How far the receiver's speeds lie from the pod's, from one to the next: the receiver's own noise. */
  readonly noiseMps2: number;
}

/** Older than this a word of the pod says nothing about now. */
const FRESH_S = 2.5;
/** So long after the last fix the pod alone carries on. */
const ALONE_AFTER_S = 3;
/** Its quick noise: a mean over some steps. */
const POD_SD_MPS = 0.08;
/** Scale errors of pod and noise of receiver are weighed over a stretch as long as a kilometre takes. */
const HORIZON_S = 240;
const FIRST_NOISE_SD_MPS = 0.3;
const LEARN = 0.02;
/** A receiver's speed so far from a pod that is known is wrong; from one that is not, it may be right. */
const GATE = 4;
/** A scale that is less sure than this share does not stand in for a receiver. */
const SURE_SHARE = 0.03;

/** Readings whose error stays come one a second: each counts for as little as if it were so much larger. */
const STAYS = 4;
/** So far off the believed speed, in variances, a pod tells of a change. */
const PLAIN2 = 9;

const noiseOf = (pod: PodState): number => Math.sqrt(pod.noiseMps2);

/** A pod was heard. Where fixes have stopped, it carries on by its speed. */
export const takePod = (
  state: EstimatorState,
  input: Extract<Input, { type: 'footPod' }>,
  prior: PodScale = USUAL_POD,
): EstimatorState => {
  const { speedMps: rawMps, atMs } = input;
  const before = state.pod ?? { scale: prior, noiseMps2: FIRST_NOISE_SD_MPS ** 2 };
  const pod = { ...before, rawMps, atMs };
  const heard: EstimatorState = { ...state, pod };
  if (state.lastUsedMs === null || atMs - state.lastUsedMs < 1000 * ALONE_AFTER_S) return heard;
  const { speedMps, scaleSdMps } = podSpeed(pod.scale, rawMps);
  if (scaleSdMps > SURE_SHARE * speedMps || rawMps < POD_LEAST_MPS) return heard;
  const { belief } = state;
  if (belief.kind === 'free')
    return {
      ...heard,
      belief: { kind: 'free', track: podStep(belief.track, atMs, speedMps, scaleSdMps, POD_SD_MPS) },
    };
  if (belief.kind === 'pen') return heard;
  const sdMps = Math.hypot(POD_SD_MPS, STAYS * scaleSdMps);
  const contenders = belief.contenders.map((c) => {
    if (atMs <= c.track.timeMs) return c;
    const g = predictTrack(c.line, c.track, atMs);
    const seen = readings.fitSpeed(g, c.track.hills, speedMps);
    const { innovation, variance } = seen;
    if (innovation ** 2 > PLAIN2 * (variance + sdMps ** 2)) course.loosenSpeed(g, Math.abs(innovation));
    readings.takeSpeed(g, seen, sdMps);
    return { ...c, track: { ...c.track, g, timeMs: atMs } };
  });
  return { ...heard, belief: { ...belief, contenders } };
};

/** The speed of a fix together with the pod's, each by how far it can be off; and what the pod learns of it. */
export const withPod = (
  state: EstimatorState,
  speedMps: number | null,
  takenMs: number,
): { readonly pod: PodState | null; readonly speedMps: number | null } => {
  const { pod } = state;
  if (pod === null || Math.abs(takenMs - pod.atMs) > 1000 * FRESH_S || pod.rawMps < POD_LEAST_MPS)
    return { pod, speedMps };
  const believed = podSpeed(pod.scale, pod.rawMps);
  const sure = believed.scaleSdMps < SURE_SHARE * believed.speedMps;
  if (speedMps === null) return { pod, speedMps: sure ? believed.speedMps : null };
  const off = speedMps - believed.speedMps;
  const mostMps = GATE * Math.hypot(noiseOf(pod), POD_SD_MPS, believed.scaleSdMps);
  if (Math.abs(off) > mostMps) return { pod, speedMps };
  const noiseMps2 =
    pod.noiseMps2 + LEARN * (Math.max(0, off ** 2 - believed.scaleSdMps ** 2) - pod.noiseMps2);
  const sinceS = state.lastUsedMs === null ? 1 : Math.max(0, (takenMs - state.lastUsedMs) / 1000);
  const scale = learnPod(pod.scale, pod.rawMps, speedMps, noiseOf(pod), sinceS);
  const [ofPod, ofFix] = [
    1 / (believed.scaleSdMps ** 2 + POD_SD_MPS ** 2 / HORIZON_S),
    HORIZON_S / Math.max(pod.noiseMps2, POD_SD_MPS ** 2),
  ];
  const together = (ofPod * believed.speedMps + ofFix * speedMps) / (ofPod + ofFix);
  return { pod: { ...pod, scale, noiseMps2 }, speedMps: together };
};

/** What a run has shown of the pod that was worn; null where none was heard. */
export const podSeen = ({ pod }: Pick<EstimatorState, 'pod'>): PodScale | null => pod?.scale ?? null;
