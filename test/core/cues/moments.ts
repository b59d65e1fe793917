import type { Moment } from '../../../src/core/cues/moment.ts';
import { type Race, raceOf } from '../../../src/core/cues/race.ts';
import { beginDeparture } from '../../../src/core/drift/departure.ts';
import { aheadAt, clocksAt, driftAt } from '../../../src/core/drift/drift.ts';
import { beginKeeping, type Keeping, keepOn } from '../../../src/core/drift/keeping.ts';
import type { Progress } from '../../../src/core/estimate/progress.ts';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { scheduleOf } from '../../../src/core/plan/schedule.ts';

/** A flat half in 1:44:00 with everything in it: 4:55.8 per km, opening 6 quicker to 1.5 km, push 4 quicker from 18.1. */
export const plan: RacePlan = {
  version: 1,
  kind: 'race',
  name: 'A flat half',
  distanceM: 21_097.5,
  goalS: 6240,
  goalBy: 'own',
  unit: 'km',
  pacing: 'pace',
  opening: { untilM: 1500, quickerSPerKm: 6 },
  push: { fromM: 18_097.5, quickerSPerKm: 4 },
  checkpointsM: [5000, 10_000, 10_548.75, 15_000, 20_000],
  stations: [{ atM: 4700, offers: ['water'] }],
  fuel: [{ item: 'gel', atM: 10_300 }],
};

export const racePlanned = (change: Partial<RacePlan> = {}, hasLine = true): Race => {
  const changed = { ...plan, ...change };
  return raceOf(changed, scheduleOf(changed, null), hasLine);
};

export const START_MS = 1_800_000_000_000;

interface At {
  readonly race?: Race;
  readonly distanceM: number;
  /** Seconds ahead of the plan; the clock follows from it. */
  readonly aheadS?: number;
  readonly speedMps?: number;
  readonly distanceSdM?: number;
  readonly sinceFixS?: number;
  readonly usualGapS?: number;
  readonly keeping?: Keeping;
  readonly gunBeforeS?: number | null;
  readonly pressedM?: number | null;
}

/** After a quarter of an hour at one rate. */
export const keptAt = (rate: number): Keeping => {
  let keeping = beginKeeping;
  for (let s = 0; s < 900; s++) keeping = keepOn(keeping, { rate, noisePower: 0.001 }, 1);
  return keeping;
};

const ON_PLAN = keptAt(1);

/** A moment of the race, at a place and so much ahead of the plan there. */
export const momentAt = (at: At): Moment => {
  const race = at.race ?? racePlanned();
  const { schedule } = race;
  const gunMs = at.gunBeforeS == null ? null : START_MS - at.gunBeforeS * 1000;
  const zeroS = race.plan.goalBy === 'gun' ? (at.gunBeforeS ?? 0) : 0;
  const nowMs = Math.round(START_MS + (schedule.timeAtS(at.distanceM) - (at.aheadS ?? 0) - zeroS) * 1000);
  const progress: Progress = {
    atMs: nowMs,
    startMs: START_MS,
    distanceM: at.distanceM,
    distanceSdM: at.distanceSdM ?? 3,
    speedMps: at.speedMps ?? 1000 / schedule.paceAtSPerKm(at.distanceM),
    speedSdMps: 0.05,
    baseSpeedMps: at.speedMps ?? 1000 / schedule.paceAtSPerKm(at.distanceM),
    signal: 'good',
    sinceFixS: at.sinceFixS ?? 0.5,
  };
  const clocks = clocksAt(race.plan, START_MS, gunMs, nowMs);
  const keeping = at.keeping ?? ON_PLAN;
  return {
    race,
    nowMs,
    startMs: START_MS,
    goalZeroMs: nowMs - clocks.goalS * 1000,
    progress,
    ...aheadAt(schedule, progress, clocks.goalS),
    keeping,
    departure: beginDeparture,
    press: at.pressedM == null ? null : { atMs: nowMs - 60_000, boardM: at.pressedM },
    sinceArrivalS: at.sinceFixS ?? 0.5,
    usualGapS: at.usualGapS ?? 1,
    drift: () => driftAt(schedule, race.plan, progress, clocks, keeping),
  };
};
