/**
 * A foot pod's own scale. It counts swings of a foot, so its metre hangs on the runner's stride and changes with the
 * pace: road speed = pod speed × (factor + slope × ln(pod speed / PIVOT)). Both are learned wherever the receiver gives a
 * speed, by recursive least squares, and are kept from run to run for each pod.
 */
export interface PodScale {
  readonly factor: number;
  readonly slope: number;
  readonly factorVar: number;
  readonly slopeVar: number;
  readonly covar: number;
}

/** Out of the box pods are wrong by some per cent, more at other paces (common practice, no source). */
export const USUAL_POD: PodScale = {
  factor: 1,
  slope: 0,
  factorVar: 0.04 ** 2,
  slopeVar: 0.05 ** 2,
  covar: 0,
};

/** Five minutes a kilometre: where the two parts of the scale part. */
const PIVOT_MPS = 1000 / 300;
/** A stride changes as legs tire: the factor walks by 0.3 % in an hour. */
const WALK_VAR_PER_S = 0.003 ** 2 / 3600;
/** From run to run shoes, lacing and legs differ by about so much. */
const BETWEEN_RUNS_SD = 0.006;
/** No stride is so wrong: outside this the road, not the pod, is at fault. */
const FACTOR = { least: 0.7, most: 1.4 } as const;
/** Slower than this a runner walks or stands, and a pod counts anything. */
export const POD_LEAST_MPS = 1.5;

/** A pod's speed in metres of road, and how far its scale can be off there; its quick noise is not in it. */
export const podSpeed = (
  scale: PodScale,
  rawMps: number,
): { readonly speedMps: number; readonly scaleSdMps: number } => {
  const bend = Math.log(Math.max(0.5, rawMps) / PIVOT_MPS);
  const factor = Math.min(FACTOR.most, Math.max(FACTOR.least, scale.factor + scale.slope * bend));
  const variance = scale.factorVar + 2 * bend * scale.covar + bend * bend * scale.slopeVar;
  return { speedMps: rawMps * factor, scaleSdMps: rawMps * Math.sqrt(Math.max(0, variance)) };
};

/** Holds the pod against a speed of the road. */
export const learnPod = (
  scale: PodScale,
  rawMps: number,
  roadMps: number,
  roadSdMps: number,
  dtS: number,
): PodScale => {
  const bend = Math.log(Math.max(0.5, rawMps) / PIVOT_MPS);
  const factorVar = scale.factorVar + WALK_VAR_PER_S * dtS;
  // road = raw × (factor + slope × bend): h = raw × (1, bend).
  const [ph0, ph1] = [
    rawMps * (factorVar + bend * scale.covar),
    rawMps * (scale.covar + bend * scale.slopeVar),
  ];
  const s = rawMps * (ph0 + bend * ph1) + roadSdMps ** 2;
  const innovation = roadMps - rawMps * (scale.factor + scale.slope * bend);
  return {
    factor: scale.factor + (ph0 / s) * innovation,
    slope: scale.slope + (ph1 / s) * innovation,
    factorVar: factorVar - (ph0 * ph0) / s,
    slopeVar: scale.slopeVar - (ph1 * ph1) / s,
    covar: scale.covar - (ph0 * ph1) / s,
  };
};

/** What to believe of the same pod at the next run. */
export const nextRunPod = (scale: PodScale): PodScale => ({
  ...scale,
  factorVar: Math.min(USUAL_POD.factorVar, scale.factorVar + BETWEEN_RUNS_SD ** 2),
  slopeVar: Math.min(USUAL_POD.slopeVar, scale.slopeVar),
});
