import type { CourseLine } from '../../course/line.ts';
import type { RacePlan } from '../../plan/racePlan.ts';
import { type Outcome, runOnce, type Spread } from './oneRun.ts';
import { chanceOf } from './random.ts';
import { roadOf } from './road.ts';

export interface WhatIfWish {
  readonly plan: RacePlan;
  readonly course: CourseLine | null;
  readonly spread: Spread;
  /** Seconds from the gun to this runner's crossing of the line; counts only where the goal is by the gun. */
  readonly lineAfterGunS: number;
  /** The same seed gives the same answer. A whole number. */
  readonly seed: number;
  readonly runs: number;
}

/** What a thousand runs of one plan came to. */
export interface Tally {
  /** Share of the runs that made the goal, 0 to 1, and the standard error of that share from counting. */
  readonly chance: number;
  readonly chanceSd: number;
  /** 10th, 50th and 90th percentile of the finish, own clock, seconds. */
  readonly finishS: { readonly quick: number; readonly middle: number; readonly slow: number };
  /** Of the runs that missed: half were lost between these places. Null where none missed. */
  readonly lost: { readonly fromM: number; readonly toM: number } | null;
}

/** The same runners with another opening, compared run by run with an even start. */
export interface OpeningTally extends Tally {
  readonly quickerSPerKm: number;
  readonly untilM: number;
  /** Mean change of the finish against an even start, seconds: below 0 it wins. With its standard error. */
  readonly changeS: number;
  readonly changeSdS: number;
}

export interface WhatIf {
  readonly plan: Tally;
  /** An even start, then each opening asked for. */
  readonly openings: readonly OpeningTally[];
}

/** The openings that the answer compares, seconds a kilometre quicker than goal pace. */
const COMPARED_OPENINGS_S_PER_KM: readonly number[] = [0, 2, 6, 10];
/** Length of the compared openings where the plan has none, metres. */
const USUAL_OPENING_M = 1500;

/** Pace wander about the plan over a kilometre, and seconds at a station: judgement, no source, until own runs say better. */
export const USUAL_WANDER_SD = 0.015;
export const USUAL_STATION_S = 2;
export const USUAL_RUNS = 1000;

const quantile = (sorted: Float64Array, part: number): number => {
  const at = part * (sorted.length - 1);
  const low = Math.floor(at);
  const a = sorted[low] ?? 0;
  return a + (at - low) * ((sorted[low + 1] ?? a) - a);
};

const tally = (outcomes: readonly Outcome[]): Tally => {
  const finishes = Float64Array.from(outcomes, (o) => o.finishS).sort();
  const lostAt = outcomes.flatMap((o) => (o.lostAtM === null ? [] : [o.lostAtM]));
  const lost = Float64Array.from(lostAt).sort();
  const chance = 1 - lost.length / outcomes.length;
  return {
    chance,
    chanceSd: Math.sqrt((chance * (1 - chance)) / outcomes.length),
    finishS: {
      quick: quantile(finishes, 0.1),
      middle: quantile(finishes, 0.5),
      slow: quantile(finishes, 0.9),
    },
    lost: lost.length === 0 ? null : { fromM: quantile(lost, 0.25), toM: quantile(lost, 0.75) },
  };
};

const outcomesOf = (wish: WhatIfWish, plan: RacePlan): readonly Outcome[] => {
  const road = roadOf(plan, wish.course, wish.lineAfterGunS);
  return Array.from({ length: wish.runs }, (_, run) => runOnce(road, wish.spread, chanceOf(wish.seed, run)));
};

const withOpening = (plan: RacePlan, quickerSPerKm: number): RacePlan => ({
  ...plan,
  opening: { untilM: plan.opening?.untilM ?? Math.min(USUAL_OPENING_M, plan.distanceM / 4), quickerSPerKm },
});

/** Mean and standard error of the run-by-run change between two sets of outcomes. */
const changeOf = (from: readonly Outcome[], to: readonly Outcome[]) => {
  const changes = to.map((o, i) => o.finishS - (from[i]?.finishS ?? o.finishS));
  const mean = changes.reduce((sum, c) => sum + c, 0) / changes.length;
  const variance = changes.reduce((sum, c) => sum + (c - mean) ** 2, 0) / Math.max(1, changes.length - 1);
  return { changeS: mean, changeSdS: Math.sqrt(variance / changes.length) };
};

/** Runs the plan many times with this runner's spread. See endurance.ts for the model, evidence.ts for what it is worth. */
export const whatIf = (wish: WhatIfWish): WhatIf => {
  const even = outcomesOf(wish, withOpening(wish.plan, 0));
  return {
    plan: tally(outcomesOf(wish, wish.plan)),
    openings: COMPARED_OPENINGS_S_PER_KM.map((quickerSPerKm) => {
      const plan = withOpening(wish.plan, quickerSPerKm);
      const outcomes = outcomesOf(wish, plan);
      return {
        ...tally(outcomes),
        ...changeOf(even, outcomes),
        quickerSPerKm,
        untilM: plan.opening?.untilM ?? 0,
      };
    }),
  };
};
