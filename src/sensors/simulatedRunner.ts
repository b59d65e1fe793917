import { slopeProfile } from '../core/course/elevation.ts';
import type { CourseLine } from '../core/course/line.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import type { Schedule } from '../core/plan/schedule.ts';
import type { Chance } from '../core/units/chance.ts';

/** How a simulated runner departs from the plan. Shares are of speed: 0.03 is 3 % quicker. */
export interface RunnerModel {
  /** Random waver about the speed meant, a first-order Markov process. */
  readonly waverShare: number;
  readonly waverTauS: number;
  /** Carried away by the crowd at first. */
  readonly tooQuick: { readonly untilM: number; readonly share: number } | null;
  /** Speed lost on a climb beyond what the plan allows, per 1 % of slope. */
  readonly hillLossPerPercent: number;
  /** Tires evenly from a place to the finish, by so much in the end. */
  readonly fade: { readonly fromM: number; readonly share: number } | null;
  /** Stretches at another speed than meant. */
  readonly stretches: readonly { readonly fromM: number; readonly toM: number; readonly share: number }[];
  /** Seconds lost at each station. */
  readonly stationLossS: number;
  readonly stops: readonly { readonly atM: number; readonly seconds: number }[];
}

/** Runs the plan as well as a well-trained runner can. Waver of 1 to 2 % over about a minute: our reading of recordings. */
export const STEADY: RunnerModel = {
  waverShare: 0.012,
  waverTauS: 50,
  tooQuick: null,
  hillLossPerPercent: 0,
  fade: null,
  stretches: [],
  stationLossS: 2,
  stops: [],
};

/** What really happened. Seconds are own clock: 0 at the start line, negative in the pen. */
export interface Truth {
  readonly fromS: number;
  readonly toS: number;
  readonly distanceAtM: (timeS: number) => number;
  readonly speedAtMps: (timeS: number) => number;
  /** When the runner passes a place; null beyond where they came. */
  readonly crossingS: (distanceM: number) => number | null;
}

const STEP_S = 0.25;
/** Where runners wait, and how they walk up to the line. */
const PEN_M = 9;
const WALK_MPS = 1.5;
/** To their pace within a few seconds. */
const GETAWAY_TAU_S = 2;
/** Over this stretch a station costs its seconds; over this one a first rush dies down. */
const STATION_M = 40;
const CALM_DOWN_M = 300;
/** How long is still recorded after the line, walking. */
const AFTER_S = 20;

const rushAt = (model: RunnerModel, m: number): number => {
  if (!model.tooQuick) return 0;
  const { untilM, share } = model.tooQuick;
  return share * Math.min(1, Math.max(0, (untilM + CALM_DOWN_M - m) / CALM_DOWN_M));
};

const fadeAt = (model: RunnerModel, m: number, finishM: number): number =>
  model.fade && m > model.fade.fromM
    ? (-model.fade.share * (m - model.fade.fromM)) / (finishM - model.fade.fromM)
    : 0;

/**
 * Runs a plan over a course. `penS` seconds of waiting come first. The runner goes by the schedule's pace at each place,
 * not by its times: what is lost is not caught up.
 */
export const runPlan = (
  plan: Pick<RacePlan, 'distanceM' | 'stations'>,
  schedule: Schedule,
  course: CourseLine | null,
  model: RunnerModel,
  penS: number,
  chance: Chance,
): Truth => {
  const profile = course && slopeProfile(course);
  const slopeAt = (m: number): number =>
    profile?.slopes[Math.min(profile.slopes.length - 1, Math.max(0, Math.floor(m / profile.stepM)))] ?? 0;
  const keep = Math.exp(-STEP_S / model.waverTauS);
  let waver = model.waverShare * chance.normal();
  const meantMps = (m: number): number => {
    const stretch = model.stretches.find((s) => m >= s.fromM && m < s.toM)?.share ?? 0;
    const hill = model.hillLossPerPercent * Math.max(0, slopeAt(m)) * 100;
    const share = 1 + waver + rushAt(model, m) + fadeAt(model, m, plan.distanceM) + stretch - hill;
    const mps = (1000 / schedule.paceAtSPerKm(m)) * Math.max(0.2, share);
    const atStation = plan.stations.some((s) => m >= s.atM && m < s.atM + STATION_M);
    return atStation ? STATION_M / (STATION_M / mps + model.stationLossS) : mps;
  };
  const fromS = -penS;
  const walkS = PEN_M / WALK_MPS;
  const places: number[] = [];
  const stopsLeft = [...model.stops].sort((a, b) => a.atM - b.atM);
  let m = -PEN_M;
  let standS = 0;
  let afterS = 0;
  for (let i = 0; afterS < AFTER_S; i++) {
    const t = fromS + i * STEP_S;
    places.push(m);
    waver = keep * waver + model.waverShare * Math.sqrt(1 - keep * keep) * chance.normal();
    if (m >= plan.distanceM) {
      m += WALK_MPS * STEP_S;
      afterS += STEP_S;
    } else if (t < 0) m = t < -walkS ? -PEN_M : Math.min(0, (t + STEP_S) * WALK_MPS);
    else if (standS > 0) standS -= STEP_S;
    else {
      const next = stopsLeft[0];
      if (next && m >= next.atM) standS = stopsLeft.shift()?.seconds ?? 0;
      else m += meantMps(m) * (1 - Math.exp(-(t + STEP_S) / GETAWAY_TAU_S)) * STEP_S;
    }
  }
  return truthOf(places, fromS);
};

const truthOf = (places: readonly number[], fromS: number): Truth => {
  const last = places.length - 1;
  const at = (i: number): number => places[Math.min(last, Math.max(0, i))] as number;
  const indexOf = (timeS: number): number =>
    Math.min(last - 1, Math.max(0, Math.floor((timeS - fromS) / STEP_S)));
  return {
    fromS,
    toS: fromS + last * STEP_S,
    distanceAtM: (timeS) => {
      const i = indexOf(timeS);
      const k = Math.min(1, Math.max(0, (timeS - fromS) / STEP_S - i));
      return at(i) + k * (at(i + 1) - at(i));
    },
    speedAtMps: (timeS) => {
      const i = indexOf(timeS);
      return (at(i + 1) - at(i)) / STEP_S;
    },
    crossingS: (distanceM) => {
      const i = places.findIndex((p) => p >= distanceM);
      if (i <= 0) return null;
      return fromS + (i - (at(i) - distanceM) / (at(i) - at(i - 1))) * STEP_S;
    },
  };
};
