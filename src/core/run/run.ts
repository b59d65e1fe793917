import type { CourseLine } from '../course/line.ts';
import { spareTotalMs } from '../cues/allowance.ts';
import type { Call } from '../cues/call.ts';
import { type Race, raceOf } from '../cues/race.ts';
import { type Speech, silence } from '../cues/scheduler.ts';
import type { Voice } from '../cues/voicePort.ts';
import { beginDeparture, type Departure } from '../drift/departure.ts';
import { clocksAt, type Drift, driftAt } from '../drift/drift.ts';
import type { Keeping } from '../drift/keeping.ts';
import { keepingOf, type OwnManner } from '../drift/ownManner.ts';
import {
  beginEstimate,
  type EstimatorSetup,
  type EstimatorState,
  progressAt,
} from '../estimate/estimator.ts';
import type { PodScale } from '../estimate/podScale.ts';
import type { Progress } from '../estimate/progress.ts';
import type { ReceiverPrior } from '../estimate/receiver.ts';
import type { RacePlan } from '../plan/racePlan.ts';
import { scheduleOf } from '../plan/schedule.ts';
import { type Settings, USUAL_SETTINGS } from './settings.ts';
import { beginWatch, type Watch } from './watch.ts';

/** Everything a run needs to know before it begins. */
export interface RunConfig {
  readonly plan: RacePlan;
  readonly course: CourseLine | null;
  readonly voice: Voice;
  /** What is known of this phone's receiver; absent: what is usual. */
  readonly receiver?: ReceiverPrior;
  /** What was learned of the foot pod in earlier runs. */
  readonly footPod?: PodScale;
  /** How this runner ran before. */
  readonly runner?: OwnManner;
}

/** What the inputs so far fold to. No clock, no chance: the same inputs give the same run and the same calls. */
export interface Run {
  readonly config: RunConfig;
  readonly race: Race;
  readonly setup: EstimatorSetup;
  /** Speech that boards and stations may take over the whole race. */
  readonly spareMs: number;
  readonly estimate: EstimatorState;
  readonly settings: Settings;
  readonly keeping: Keeping;
  readonly departure: Departure;
  readonly watch: Watch;
  readonly speech: Speech;
  /** Latest instant up to which the grid has been walked. */
  readonly atMs: number;
  /** Latest input other than the clock. */
  readonly lastInputMs: number;
  /** Latest fix that came in, usable or not, and not from a receiver that is stuck. */
  readonly lastArrivalMs: number;
  /** How far apart they come, seconds: a mean over the last ten or so. */
  readonly usualGapS: number;
  /** When the runner crossed the line; null before. */
  readonly finishMs: number | null;
}

/** The next run, and the calls decided on the way, in the order in which they sound. */
export interface Step {
  readonly run: Run;
  readonly calls: readonly Call[];
}

/** Where a run stands. Instants are engine ms, `finishS` is own-clock seconds at the official distance. */
export type Phase =
  | { readonly phase: 'before'; readonly gunMs: number | null }
  | { readonly phase: 'running'; readonly gunMs: number | null; readonly startMs: number }
  | {
      readonly phase: 'finished';
      readonly gunMs: number | null;
      readonly startMs: number;
      readonly finishMs: number;
      readonly finishS: number;
      /** The same by the gun; null where no gun was heard. */
      readonly finishByGunS: number | null;
    }
  | {
      readonly phase: 'stopped';
      readonly gunMs: number | null;
      readonly startMs: number | null;
      readonly stopMs: number;
    };

export const beginRun = (config: RunConfig, settings: Settings = USUAL_SETTINGS): Run => {
  const { plan, course } = config;
  const race = raceOf(plan, scheduleOf(plan, course), course !== null);
  const setup: EstimatorSetup = {
    course,
    officialM: plan.distanceM,
    boardsM: race.boards.map((b) => b.atM),
    ...(config.receiver === undefined ? {} : { receiver: config.receiver }),
    ...(config.footPod === undefined ? {} : { pod: config.footPod }),
  };
  return {
    config,
    race,
    setup,
    estimate: beginEstimate(setup),
    spareMs: spareTotalMs(race),
    settings,
    keeping: keepingOf(config.runner, plan.goalS, plan.distanceM),
    departure: beginDeparture,
    watch: beginWatch,
    speech: silence,
    atMs: Number.NEGATIVE_INFINITY,
    lastInputMs: Number.NEGATIVE_INFINITY,
    lastArrivalMs: Number.NEGATIVE_INFINITY,
    usualGapS: 1,
    finishMs: null,
  };
};

export const phaseOf = ({ estimate, finishMs }: Run): Phase => {
  const { gunMs, startMs, stopMs } = estimate;
  if (finishMs !== null && startMs !== null)
    return {
      phase: 'finished',
      gunMs,
      startMs,
      finishMs,
      finishS: (finishMs - startMs) / 1000,
      finishByGunS: gunMs === null ? null : (finishMs - gunMs) / 1000,
    };
  if (stopMs !== null) return { phase: 'stopped', gunMs, startMs, stopMs };
  return startMs === null ? { phase: 'before', gunMs } : { phase: 'running', gunMs, startMs };
};

/** The estimate at an instant not before the last input. */
export const progressOf = (run: Run, atMs: number): Progress => progressAt(run.setup, run.estimate, atMs);

/** Estimate against schedule at an instant not before the last input; null before the start. */
export const driftOf = (run: Run, atMs: number): Drift | null => {
  const progress = progressOf(run, atMs);
  const { startMs, gunMs } = run.estimate;
  if (startMs === null) return null;
  const { plan, schedule } = run.race;
  return driftAt(schedule, plan, progress, clocksAt(plan, startMs, gunMs, atMs), run.keeping);
};
