import type { CourseLine } from '../core/course/line.ts';
import type { EventName, Input } from '../core/estimate/input.ts';
import type { Leg, PracticePlan } from '../core/plan/practicePlan.ts';
import { type Chance, chanceOf } from '../core/units/chance.ts';
import { type ReceiverModel, receive } from './simulatedReceiver.ts';
import { roadOf } from './simulatedRoad.ts';
import type { Truth } from './simulatedRunner.ts';

/** How a simulated runner does a session. Shares are of speed. */
export interface SessionRunner {
  readonly waverShare: number;
  readonly waverTauS: number;
  /** By how much each work leg is run too quick (+) or too slow (-), by its place among the legs; absent: as asked. */
  readonly offShare: Readonly<Record<number, number>>;
  /** Seconds to find a new pace. */
  readonly findS: number;
}

/** As steady as the runner of a race: see simulatedRunner.ts. */
export const SESSION_STEADY: SessionRunner = { waverShare: 0.012, waverTauS: 50, offShare: {}, findS: 3 };

/** Speeds for efforts in words, metres a second: our own guess of an ordinary club runner. */
const EFFORT_MPS = {
  easy: 2.8,
  steady: 3.1,
  'comfortably hard': 3.5,
  hard: 3.8,
  'quick and loose': 4.6,
} as const;
const FREE_MPS = 2.6;
/** A leg that waits for a press takes so long. */
const PRESS_S = 240;
const STEP_S = 0.25;
const AFTER_S = 20;
/** 2027-03-02 17:30:00 UTC, a Tuesday evening. */
const EVENING_MS = 1_804_008_600_000;

/** What really happened: the way, and when each leg ended. */
export interface SessionTruth {
  readonly truth: Truth;
  /** Own-clock seconds at which each leg ends. */
  readonly endsS: readonly number[];
}

const speedOf = ({ target }: Leg): number =>
  target.by === 'pace'
    ? 1000 / target.paceSPerKm
    : target.by === 'effort'
      ? EFFORT_MPS[target.effort]
      : FREE_MPS;

const runSession = (
  plan: PracticePlan,
  runner: SessionRunner,
  penS: number,
  chance: Chance,
): SessionTruth => {
  const keep = Math.exp(-STEP_S / runner.waverTauS);
  const places: number[] = Array.from({ length: Math.round(penS / STEP_S) }, () => 0);
  const endsS: number[] = [];
  let waver = runner.waverShare * chance.normal();
  let mps = 0;
  let m = 0;
  let t = 0;
  const go = (toMps: number): void => {
    waver = keep * waver + runner.waverShare * Math.sqrt(1 - keep * keep) * chance.normal();
    mps += (toMps * (1 + waver) - mps) * (1 - Math.exp(-STEP_S / runner.findS));
    places.push(m);
    m += mps * STEP_S;
    t += STEP_S;
  };
  for (const [i, leg] of plan.legs.entries()) {
    const { extent } = leg;
    const [fromS, fromM] = [t, m];
    const asked = speedOf(leg) * (1 + (runner.offShare[i] ?? 0));
    const isOver = (): boolean =>
      extent.by === 'distance'
        ? m - fromM >= extent.distanceM
        : t - fromS >= (extent.by === 'time' ? extent.timeS : PRESS_S);
    while (!isOver()) go(asked);
    // The end lies within the last step.
    endsS.push(extent.by === 'distance' ? t - (m - fromM - extent.distanceM) / Math.max(0.1, mps) : t);
  }
  for (let i = 0; i < AFTER_S / STEP_S; i++) go(1.2);
  const at = (i: number): number => places[Math.min(places.length - 1, Math.max(0, i))] ?? 0;
  const fromS = -penS;
  const index = (timeS: number): number => Math.floor((timeS - fromS) / STEP_S);
  return {
    endsS,
    truth: {
      fromS,
      toS: fromS + (places.length - 1) * STEP_S,
      distanceAtM: (timeS) => {
        const i = index(timeS);
        const k = Math.min(1, Math.max(0, (timeS - fromS) / STEP_S - i));
        return at(i) + k * (at(i + 1) - at(i));
      },
      speedAtMps: (timeS) => (at(index(timeS) + 1) - at(index(timeS))) / STEP_S,
      crossingS: (distanceM) => {
        const i = places.findIndex((p) => p >= distanceM);
        return i < 0 ? null : fromS + i * STEP_S;
      },
    },
  };
};

/** A pod's error changes with the pace: so much more for each e-fold of speed (our judgement, no source). */
const POD_BEND = 0.04;
const POD_PIVOT_MPS = 1000 / 300;
const POD_NOISE_MPS = 0.05;

/** A foot pod, wrong by a share of its own and more so at other paces, once a second. */
const podInputs = ({ truth }: SessionTruth, share: number, chance: Chance): Input[] => {
  const inputs: Input[] = [];
  for (let s = 0; s < truth.toS; s++) {
    const mps = truth.speedAtMps(s);
    const off = share + POD_BEND * Math.log(Math.max(0.5, mps) / POD_PIVOT_MPS);
    const speedMps = Math.max(0, mps * (1 + off) + POD_NOISE_MPS * chance.normal());
    inputs.push({ type: 'footPod', atMs: EVENING_MS + 1000 * s, speedMps, stepsPerMin: 176 });
  }
  return inputs;
};

export interface SimulatedSession extends SessionTruth {
  readonly inputs: readonly Input[];
  readonly startMs: number;
}

export interface SessionSimulation {
  readonly plan: PracticePlan;
  readonly runner: SessionRunner;
  readonly receiver: ReceiverModel;
  readonly penS: number;
  readonly seed: number;
  /** A foot pod that is wrong by this share; null: none. */
  readonly podShare: number | null;
  /** The road for a run of so many metres, from its begin; absent: one of its own. */
  readonly road?: ((leastM: number) => CourseLine) | null;
}

/** Does a session and receives it; indoors there are no fixes. The same seed, the same session. */
export const simulateSession = (s: SessionSimulation): SimulatedSession => {
  const session = runSession(s.plan, s.runner, s.penS, chanceOf(s.seed));
  const ms = (ownS: number): number => Math.round(EVENING_MS + ownS * 1000);
  const lengthM = session.truth.distanceAtM(session.truth.toS) + 200;
  const line = s.road?.(lengthM) ?? roadOf(lengthM, s.seed);
  const fixes =
    s.plan.place === 'road'
      ? receive(line, session.truth, s.receiver, EVENING_MS, chanceOf(s.seed + 0.5e9))
      : [];
  const event = (ownS: number, name: EventName): Input => ({ type: 'event', atMs: ms(ownS), event: name });
  const presses = s.plan.legs.flatMap((leg, i) =>
    leg.extent.by === 'press' ? [event(session.endsS[i] ?? 0, 'marker')] : [],
  );
  const pod = s.podShare === null ? [] : podInputs(session, s.podShare, chanceOf(s.seed + 0.7e9));
  const inputs: Input[] = [
    event(0, 'start'),
    ...presses,
    ...fixes.map(({ arrivedS, fix }): Input => ({ type: 'fix', atMs: ms(arrivedS), fix })),
    ...pod,
  ];
  return { ...session, inputs: inputs.sort((a, b) => a.atMs - b.atMs), startMs: EVENING_MS };
};
