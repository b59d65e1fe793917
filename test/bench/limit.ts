import { type CourseLine, eastAtM, northAtM } from '../../src/core/course/line.ts';
import { dot, type Gaussian, independent, predict, update } from '../../src/core/estimate/kalman.ts';
import { eastM, northM } from '../../src/core/geo/ruler.ts';
import type { ReceiverModel } from '../../src/sensors/simulatedReceiver.ts';
import type { RunnerModel } from '../../src/sensors/simulatedRunner.ts';
import type { World } from './worlds.ts';

/**
 * The limit: how sure of the distance anyone could be who takes fixes as they come and is told everything that the
 * engine has to find out: the road itself and not a recording of it, the sizes and time constants of the receiver's
 * error, its lateness, and where the road points at the very place where the runner is. All noises being Gauss-Markov
 * that is the Kalman filter, linearised about the truth (Anderson & Moore, Optimal Filtering, 1979, sections 3.1 and
 * 8.2); its covariance is the least that a causal estimate can have. Bursts are left out of its account: among many of
 * them the limit is beyond reach. limit.test.ts shows that without bursts it is reached.
 */
export interface Limit {
  readonly ownS: number;
  /** Standard deviation of the distance after a fix at that time, metres. */
  readonly sdM: number;
  /** What the filter that knows everything made of the fixes, less the truth, metres. */
  readonly errorM: number;
}

const PLACE = 0;
const SPEED = 1;
const WAVER = 2;
const SLOW = [3, 4] as const;
const QUICK = [5, 6] as const;
const STAY = [7, 8] as const;
const ASIDE = 9;
const STATES = 10;

/** A field of runners: a minute of fixes tells which of them this is. */
const FIELD_SPEED_MPS = 3.5;
const FIELD_SPEED_SD_MPS = 0.9;
/** The weaving of the simulated runner across the road. */
const WEAVE_TAU_S = 25;
const CHORD_M = 4;

/** Stationary standard deviations: what each state is before anything is seen. */
const firstSd = ({ slow, quick, stayingM, weaveM }: ReceiverModel, waverSdMps: number): number[] => [
  0,
  FIELD_SPEED_SD_MPS,
  waverSdMps,
  slow.sdM,
  slow.sdM,
  quick.sdM,
  quick.sdM,
  stayingM,
  stayingM,
  weaveM,
];

const advance = (
  belief: Gaussian,
  sd: readonly number[],
  model: ReceiverModel,
  waverTauS: number,
  dtS: number,
): void => {
  const keep = (tauS: number): number => Math.exp(-dtS / tauS);
  const [slow, quick, waver] = [keep(model.slow.tauS), keep(model.quick.tauS), keep(waverTauS)];
  const decay = Float64Array.of(1, 1, waver, slow, slow, quick, quick, 1, 1, keep(WEAVE_TAU_S));
  const noise = Float64Array.from(decay, (k, i) => (sd[i] as number) ** 2 * (1 - k * k));
  // Waver drawn within the step moves the place by its integral: for steps short beside τ, a third of q dt².
  noise[PLACE] = ((noise[WAVER] as number) * dtS * dtS) / 3;
  const couplings = [
    { row: PLACE, col: SPEED, value: dtS },
    { row: PLACE, col: WAVER, value: waverTauS * (1 - waver) },
  ];
  predict(belief, decay, couplings, noise);
};

/** Takes in one axis of a position: `seenM` in the road's plane, on which the runner truly stood at `trueM` along. */
const see = (
  belief: Gaussian,
  road: CourseLine,
  axis: 0 | 1,
  seenM: number,
  trueM: number,
  model: ReceiverModel,
): void => {
  const at = axis === 0 ? eastAtM : northAtM;
  const towards = (at(road, trueM + CHORD_M) - at(road, trueM - CHORD_M)) / (2 * CHORD_M);
  const other = axis === 0 ? northAtM : eastAtM;
  const aside = (other(road, trueM + CHORD_M) - other(road, trueM - CHORD_M)) / (2 * CHORD_M);
  const late = -model.lagS * towards;
  const h = {
    at: [PLACE, SPEED, WAVER, ASIDE, SLOW[axis], QUICK[axis], STAY[axis]],
    by: [towards, late, late, axis === 0 ? aside : -aside, 1, 1, 1],
  };
  const expectedM = at(road, trueM) - towards * trueM + dot(h, belief.x);
  update(belief, h, seenM - expectedM, model.whiteM ** 2);
};

const seeSpeed = (belief: Gaussian, speedMps: number, sdMps: number): void => {
  const h = { at: [SPEED, WAVER], by: [1, 1] };
  update(belief, h, speedMps - dot(h, belief.x), sdMps ** 2);
};

const waverSdOf = (runner: RunnerModel, { officialM }: CourseLine, finishS: number): number =>
  (runner.waverShare * officialM) / finishS;

/** After each fix from the start line on. */
export const limitsOf = ({ road, receiver, runner, run: { truth, inputs, startMs } }: World): Limit[] => {
  const sd = firstSd(receiver, waverSdOf(runner, road, truth.toS));
  const belief = independent([0, FIELD_SPEED_MPS, 0, 0, 0, 0, 0, 0, 0, 0], sd);
  const limits: Limit[] = [];
  let lastS = 0;
  for (const input of inputs) {
    if (input.type !== 'fix') continue;
    const { fix } = input;
    const ownS = (fix.timestampMs - startMs) / 1000;
    if (ownS <= lastS) continue;
    advance(belief, sd, receiver, runner.waverTauS, ownS - lastS);
    lastS = ownS;
    const trueM = truth.distanceAtM(ownS - receiver.lagS);
    see(belief, road, 0, eastM(road.plane, fix), trueM, receiver);
    see(belief, road, 1, northM(road.plane, fix), trueM, receiver);
    if (receiver.speedSdMps !== null && fix.speedMps !== null)
      seeSpeed(belief, fix.speedMps, receiver.speedSdMps);
    limits.push({
      ownS,
      sdM: Math.sqrt(belief.P[PLACE * STATES + PLACE] as number),
      errorM: (belief.x[PLACE] as number) - truth.distanceAtM(ownS),
    });
  }
  return limits;
};
