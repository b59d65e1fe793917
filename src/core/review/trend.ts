import type { OwnManner } from '../drift/ownManner.ts';
import type { ReceiverPrior } from '../estimate/receiver.ts';
import { type ReceiverSeen, receiverPriorOf } from '../estimate/receiverSeen.ts';
import { parseRaceResult, type RaceResult } from '../prepare/goal/raceResult.ts';
import { fadeGrowth, usualFade } from '../prepare/whatIf/fade.ts';
import { USUAL_STATION_S, USUAL_WANDER_SD } from '../prepare/whatIf/whatIf.ts';
import type { Digest } from './digest.ts';
import type { Fade, RanOpening, StationCost } from './parts.ts';
import type { PracticeDigest } from './practiceDigest.ts';

/**
 * What one run adds to what is known of this runner and this phone. Each number comes with how sure it is; where a run
 * says nothing, it adds nothing.
 */
export interface RunFacts {
  readonly atMs: number;
  /** Pace held over the work legs of a session, seconds per kilometre, over so many seconds. */
  readonly threshold: {
    readonly paceSPerKm: number;
    readonly sdSPerKm: number;
    readonly forS: number;
  } | null;
  /** How much quicker than its cap the opening was run, seconds per kilometre; below 0: slower. */
  readonly openingOverS: number | null;
  readonly fadeShare: number | null;
  /** Waver of pace about the runner's own mean over a kilometre, as a share. */
  readonly wanderSd: number | null;
  readonly podFactor: number | null;
  /** Mean seconds lost at a station. */
  readonly stationS: number | null;
  readonly receiver: ReceiverSeen | null;
  /** A race that was run to its end: a result for the next goal. */
  readonly result: RaceResult | null;
}

const NOTHING: Omit<RunFacts, 'atMs'> = {
  threshold: null,
  openingOverS: null,
  fadeShare: null,
  wanderSd: null,
  podFactor: null,
  stationS: null,
  receiver: null,
  result: null,
};

/** Work shorter than this is no threshold. */
const THRESHOLD_FROM_S = 480;

export const practiceFacts = (digest: PracticeDigest): RunFacts => {
  const work = digest.legs.filter(
    (l) => l.kind === 'work' && l.timeS >= THRESHOLD_FROM_S && l.distanceM !== null,
  );
  const timeS = work.reduce((sum, l) => sum + l.timeS, 0);
  const distanceM = work.reduce((sum, l) => sum + (l.distanceM ?? 0), 0);
  const sdM = Math.hypot(...work.map((l) => l.distanceSdM));
  const paceSPerKm = (1000 * timeS) / distanceM;
  return {
    ...NOTHING,
    atMs: digest.startMs ?? 0,
    podFactor: digest.podFactor,
    threshold: distanceM > 0 ? { paceSPerKm, sdSPerKm: (paceSPerKm * sdM) / distanceM, forS: timeS } : null,
  };
};

/** Over this long a wander is counted. */
const WANDER_M = 1000;

const wanderOf = ({ samples, finishS, distanceM }: Digest): number | null => {
  const [first, last] = [samples[0], samples.at(-1)];
  if (first === undefined || last === undefined || finishS === null || distanceM < 5 * WANDER_M) return null;
  const paces: number[] = [];
  let from = first;
  for (const s of samples) {
    if (s.distanceM - from.distanceM < WANDER_M) continue;
    // Against the schedule, so that hills and legs are no wander.
    paces.push((s.aheadS - from.aheadS) / (s.atS - from.atS));
    from = s;
  }
  const mean = paces.reduce((sum, p) => sum + p, 0) / paces.length;
  return Math.sqrt(paces.reduce((sum, p) => sum + (p - mean) ** 2, 0) / Math.max(1, paces.length - 1));
};

export const raceFacts = (
  digest: Digest,
  distanceM: number,
  opening: RanOpening | null,
  fade: Fade | null,
  stations: readonly StationCost[],
): RunFacts => {
  const result = digest.finishS === null ? null : parseRaceResult('run', distanceM, digest.finishS, null);
  return {
    ...NOTHING,
    atMs: digest.startMs ?? 0,
    openingOverS: opening === null ? null : opening.plannedSPerKm - opening.ranSPerKm,
    fadeShare: fade?.share ?? null,
    wanderSd: wanderOf(digest),
    receiver: digest.receiver,
    stationS:
      stations.length === 0
        ? null
        : Math.max(0, stations.reduce((sum, st) => sum + st.lostS, 0) / stations.length),
    result: result?.ok ? result.value : null,
  };
};

/** A run from elsewhere, by whatever receiver and perhaps at a jog: how even it was is all that it tells. */
export const importedFacts = (digest: Digest, fade: Fade | null): RunFacts => ({
  ...NOTHING,
  atMs: digest.startMs ?? 0,
  fadeShare: fade?.share ?? null,
  wanderSd: wanderOf(digest),
});

/** A pace that was held for about an hour's worth of threshold work, as a race of an hour: its distance. */
const HOUR_S = 3600;
/** What was held in practice could be raced for an hour or so; how much this is off is in the goal's own spread. */
const FRESH_DAYS = 42;
const MS_PER_DAY = 86_400_000;

/**
 * Results for the realistic goal out of all runs: races as they were run, and the best recent threshold as a race of an
 * hour. Threshold in pieces is easier than an hour in one: the pace is taken as it is only from 25 minutes of work on.
 */
const resultsOf = (facts: readonly RunFacts[], nowMs: number): readonly RaceResult[] => {
  const daysAgo = (atMs: number): number => Math.max(0, Math.round((nowMs - atMs) / MS_PER_DAY));
  const races = facts.flatMap((f) => (f.result === null ? [] : [{ ...f.result, daysAgo: daysAgo(f.atMs) }]));
  const held = facts
    .flatMap((f) =>
      f.threshold === null || f.threshold.forS < 1500 ? [] : [{ ...f.threshold, atMs: f.atMs }],
    )
    .filter((t) => daysAgo(t.atMs) <= FRESH_DAYS)
    .sort((a, b) => a.paceSPerKm - b.paceSPerKm)[0];
  if (held === undefined) return races;
  const got = parseRaceResult('threshold', (1000 * HOUR_S) / held.paceSPerKm, HOUR_S, daysAgo(held.atMs));
  return got.ok ? [...races, got.value] : races;
};

/**
 * The usual counts as so many runs before this runner has shown theirs: own = (2 × usual + sum of n runs) / (2 + n). So
 * one run moves a third of the way, ten move five sixths. Two: from one race to the next a runner's fade and wander change
 * rather more than they differ from other people's (our judgement, no source).
 */
const BELIEF_RUNS = 2;

/** More than usual at two hours, whatever the length of the race; null where the race was not run to its end. */
const fadeMoreOf = ({ fadeShare, result }: RunFacts): number | null =>
  fadeShare === null || result === null
    ? null
    : (fadeShare - usualFade(result.timeS)) / fadeGrowth(result.timeS);

/** The runner's own mean of something, the usual believed first; the usual where no run shows it. */
const ownMean = (values: readonly (number | null)[], usual: number): number => {
  const own = values.filter((v): v is number => v !== null);
  return own.reduce((sum, v) => sum + v, BELIEF_RUNS * usual) / (BELIEF_RUNS + own.length);
};

/** What all runs together say of this runner and this phone: for the goal, the what-if and the next run's estimate. */
export interface OwnRunner {
  readonly runs: number;
  readonly results: readonly RaceResult[];
  readonly wanderSd: number;
  /** Races that showed it. */
  readonly races: number;
  /** By how much more than usual they slow from half to half, in a race of two hours. */
  readonly fadeMore: number;
  readonly stationS: number;
  readonly receiver: ReceiverPrior;
}

/** How many of the latest runs count for the phone: it may be another one next year. */
const RECEIVER_RUNS = 6;

/** @param facts  the latest first */
export const ownRunnerOf = (facts: readonly RunFacts[], nowMs: number): OwnRunner => ({
  runs: facts.length,
  results: resultsOf(facts, nowMs),
  wanderSd: ownMean(
    facts.map((f) => f.wanderSd),
    USUAL_WANDER_SD,
  ),
  races: facts.filter((f) => f.wanderSd !== null).length,
  fadeMore: ownMean(facts.map(fadeMoreOf), 0),
  stationS: ownMean(
    facts.map((f) => f.stationS),
    USUAL_STATION_S,
  ),
  receiver: receiverPriorOf(facts.flatMap((f) => f.receiver ?? []).slice(0, RECEIVER_RUNS)),
});

/** How this runner ran before, for a race of so many seconds; null where no race has shown it. */
export const ownMannerOf = (own: OwnRunner | null, goalS: number): OwnManner | null =>
  own === null || own.races === 0
    ? null
    : { fadeMore: own.fadeMore * fadeGrowth(goalS), wanderSd: own.wanderSd, races: own.races };
