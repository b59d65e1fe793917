import type { CourseLine } from '../../../src/core/course/line.ts';
import {
  absorb,
  beginEstimate,
  type EstimatorState,
  progressAt,
} from '../../../src/core/estimate/estimator.ts';
import type { Input } from '../../../src/core/estimate/input.ts';
import type { Signal } from '../../../src/core/estimate/progress.ts';
import { readRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import { NO_PRESSES, type Presses, type Simulated, simulate } from '../../../src/sensors/simulated.ts';
import { OPEN_SKY, type ReceiverModel } from '../../../src/sensors/simulatedReceiver.ts';
import { type RunnerModel, STEADY } from '../../../src/sensors/simulatedRunner.ts';

export interface Wish {
  readonly road: CourseLine;
  /** What the estimate is given; absent: the road itself. */
  readonly given?: CourseLine | null;
  readonly receiver?: Partial<ReceiverModel>;
  readonly runner?: Partial<RunnerModel>;
  readonly presses?: Presses;
  readonly seed?: number;
  /** How the runner takes the hills of the road; absent: at even pace. */
  readonly pacing?: 'effort' | 'pace';
  /** 4 m/s where not said otherwise. */
  readonly speedMps?: number;
  readonly penS?: number;
  /** What happens to the inputs on their way. */
  readonly meddle?: (inputs: readonly Input[], run: Simulated) => readonly Input[];
}

interface Sample {
  readonly ownS: number;
  readonly errorM: number;
  readonly sdM: number;
  readonly errorMps: number;
}

export interface Followed {
  readonly state: EstimatorState;
  readonly run: Simulated;
  /** After each fix from 30 s own clock to the line: error and claimed sd. */
  readonly samples: readonly Sample[];
  readonly rmsM: number;
  /** RMS error of the speed, m/s. */
  readonly rmsMps: number;
  readonly worstM: number;
  /** Share of errors inside 1.96 of the claimed sd. */
  readonly inside: number;
  /** Times that progress went backwards by more than 3 sd. */
  readonly backwards: number;
  readonly signals: ReadonlySet<Signal>;
  /** Found or given start against the true one, s. */
  readonly startErrorS: number | null;
}

const SETTLED_S = 30;

const rms = (xs: readonly number[]): number => Math.sqrt(xs.reduce((sum, x) => sum + x * x, 0) / xs.length);

/** Runs the estimate over a simulated race and compares it with the truth. */
export const follow = (wish: Wish): Followed => {
  const { road } = wish;
  const given = wish.given === undefined ? road : wish.given;
  const plan = readRacePlan({
    version: 1,
    kind: 'race',
    distanceM: road.officialM,
    goalS: road.officialM / (wish.speedMps ?? 4),
    pacing: wish.pacing ?? 'pace',
  });
  if (!plan.ok) throw new Error(plan.error.place);
  const run = simulate({
    plan: plan.value,
    line: road,
    runner: { ...STEADY, ...wish.runner },
    receiver: { ...OPEN_SKY, ...wish.receiver },
    presses: wish.presses ?? NO_PRESSES,
    penS: wish.penS ?? 60,
    seed: wish.seed ?? 1,
  });
  const inputs = wish.meddle?.(run.inputs, run) ?? run.inputs;
  const boardsM = Array.from({ length: Math.floor(road.officialM / 1000) }, (_, i) => 1000 * (i + 1));
  const setup = { course: given, officialM: road.officialM, boardsM };
  const finishS = run.truth.crossingS(road.officialM) ?? run.truth.toS;
  let state = beginEstimate(setup);
  let before = 0;
  let backwards = 0;
  const samples: Sample[] = [];
  const signals = new Set<Signal>();
  for (const input of inputs) {
    state = absorb(setup, state, input);
    const ownS = (input.atMs - run.startMs) / 1000;
    if (input.type !== 'fix' || ownS < SETTLED_S || ownS > finishS) continue;
    const p = progressAt(setup, state, input.atMs);
    if (p.distanceM < before - 3 * p.distanceSdM) backwards++;
    before = p.distanceM;
    signals.add(p.signal);
    samples.push({
      ownS,
      errorM: p.distanceM - run.truth.distanceAtM(ownS),
      sdM: p.distanceSdM,
      errorMps: p.speedMps - run.truth.speedAtMps(ownS),
    });
  }
  const errors = samples.map((s) => Math.abs(s.errorM));
  return {
    state,
    run,
    samples,
    rmsM: rms(errors),
    rmsMps: rms(samples.map((s) => s.errorMps)),
    worstM: errors.reduce((worst, e) => Math.max(worst, e), 0),
    inside: samples.filter((s) => Math.abs(s.errorM) <= 1.96 * s.sdM).length / samples.length,
    backwards,
    signals,
    startErrorS: state.startMs === null ? null : (state.startMs - run.startMs) / 1000,
  };
};
