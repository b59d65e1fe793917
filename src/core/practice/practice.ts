import { type Speech, silence } from '../cues/scheduler.ts';
import type { Voice } from '../cues/voicePort.ts';
import { beginDeparture, type Departure } from '../drift/departure.ts';
import { beginEstimate } from '../estimate/estimator.ts';
import type { PodScale } from '../estimate/podScale.ts';
import type { ReceiverPrior } from '../estimate/receiver.ts';
import type { EstimatorSetup, EstimatorState } from '../estimate/state.ts';
import type { PracticePlan } from '../plan/practicePlan.ts';
import { type Settings, USUAL_SETTINGS } from '../run/settings.ts';
import { aheadFrom, type Going, goingAt } from './going.ts';
import { beginHeart, type Heart, heartNow } from './heart.ts';
import { type LegNow, type LegResult, leftOf } from './legNow.ts';
import { beginPod, type Pod } from './pod.ts';
import { layCourse } from './way/lay.ts';
import { beginWay, type Way } from './way/way.ts';

/** Everything a session needs to know before it begins. */
export interface PracticeConfig {
  readonly plan: PracticePlan;
  readonly voice: Voice;
  readonly receiver?: ReceiverPrior;
  /** What was learned of the foot pod in earlier runs. */
  readonly footPod?: PodScale;
}

/** What the inputs of a session fold to. As pure as a run: the same inputs, the same calls. */
export interface Practice {
  readonly config: PracticeConfig;
  readonly setup: EstimatorSetup;
  /** Without a line, all along. */
  readonly estimate: EstimatorState;
  /** Along the session's own course; null where it has none. */
  readonly way: Way | null;
  readonly settings: Settings;
  readonly pod: Pod;
  readonly heart: Heart;
  readonly departure: Departure;
  readonly speech: Speech;
  /** When the session began: pressed, or found on the road; null before. */
  readonly startMs: number | null;
  /** Where it began. */
  readonly startGoing: Going | null;
  /** The leg under way; null before the start and after the end. */
  readonly leg: LegNow | null;
  readonly results: readonly LegResult[];
  readonly paceSaidMs: number;
  /** The runner has been told that the signal is lost. */
  readonly lost: boolean;
  readonly penNext: number;
  readonly atMs: number;
  readonly lastInputMs: number;
  readonly lastArrivalMs: number;
  /** When the last leg ended, or the runner ended it; null before. */
  readonly endMs: number | null;
}

/** No session is longer; the estimate never comes to an end of its own. */
const OFFICIAL_M = 200_000;

export const beginPractice = (config: PracticeConfig, settings: Settings = USUAL_SETTINGS): Practice => {
  const { plan, receiver, footPod } = config;
  const laid = plan.course === undefined || plan.place === 'indoors' ? null : layCourse(plan.course);
  const setup: EstimatorSetup = {
    course: null,
    officialM: OFFICIAL_M,
    boardsM: [],
    ...(receiver === undefined ? {} : { receiver }),
    ...(footPod === undefined ? {} : { pod: footPod }),
  };
  return {
    config,
    setup,
    estimate: beginEstimate(setup),
    way: laid && beginWay(laid),
    settings,
    pod: beginPod(footPod),
    heart: beginHeart,
    departure: beginDeparture,
    speech: silence,
    startMs: null,
    startGoing: null,
    leg: null,
    results: [],
    paceSaidMs: Number.NEGATIVE_INFINITY,
    lost: false,
    penNext: 0,
    atMs: Number.NEGATIVE_INFINITY,
    lastInputMs: Number.NEGATIVE_INFINITY,
    lastArrivalMs: Number.NEGATIVE_INFINITY,
    endMs: null,
  };
};

type Sensed = Pick<Practice, 'config' | 'setup' | 'estimate' | 'pod' | 'way'>;

/** The way so far; null where nothing measures it. */
export const goingOf = (practice: Sensed, nowMs: number): Going | null =>
  goingAt({ ...practice, indoors: practice.config.plan.place === 'indoors' }, nowMs);

/** Where a session stands at one instant, for the screens. */
export interface PracticeView {
  readonly phase: 'before' | 'running' | 'over';
  /** Since the start, standing still from the end on; null before. */
  readonly elapsedS: number | null;
  /** Since the leg began; null where none is under way. */
  readonly legS: number | null;
  readonly leg: LegNow | null;
  readonly left: ReturnType<typeof leftOf>;
  readonly ahead: { readonly aheadS: number; readonly sdS: number } | null;
  readonly going: Going | null;
  readonly heartBpm: number | null;
}

export const practiceView = (practice: Practice, nowMs: number): PracticeView => {
  const { startMs, endMs, leg, heart } = practice;
  const going = goingOf(practice, nowMs);
  return {
    phase: startMs === null ? 'before' : endMs === null ? 'running' : 'over',
    elapsedS: startMs === null ? null : Math.max(0, (endMs ?? nowMs) - startMs) / 1000,
    legS: leg && Math.max(0, nowMs - leg.start.atMs) / 1000,
    leg,
    left: leg && leftOf(leg, going, nowMs),
    ahead: leg && aheadFrom(leg.leg, leg.paced, going, nowMs),
    going,
    heartBpm: heartNow(heart, nowMs),
  };
};
