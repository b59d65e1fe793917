import { effortRatio } from '../course/effort.ts';
import { type SlopeProfile, slopeProfile } from '../course/elevation.ts';
import type { CourseLine } from '../course/line.ts';
import { M_PER_KM } from '../units/units.ts';
import type { RacePlan } from './racePlan.ts';

/** The plan's promise. Total on [0, distanceM]; strictly increasing; T(distanceM) as the plan's formula gives it. */
export interface Schedule {
  readonly distanceM: number;
  /** Own-clock seconds at which the plan passes a distance. Clamped to the course. */
  readonly timeAtS: (distanceM: number) => number;
  /** The inverse: where the plan is at a time. Clamped to the course. */
  readonly distanceAtM: (timeS: number) => number;
  /** Planned pace at a distance, seconds per kilometre; at a change of pace, the one that begins. */
  readonly paceAtSPerKm: (distanceM: number) => number;
}

type PlanTimes = Pick<RacePlan, 'distanceM' | 'goalS' | 'opening' | 'openingWins' | 'push' | 'pacing'>;

/** Straight pieces: between knots the pace does not change. */
interface Knots {
  readonly atM: Float64Array;
  readonly atS: Float64Array;
}

/** What the opening has won at a place; where it is to be spent, it is given back evenly from the opening's end to the line. */
const openedS = ({ opening, openingWins, distanceM: totalM }: PlanTimes, distanceM: number): number => {
  if (opening === null) return 0;
  const wonS = (opening.quickerSPerKm / M_PER_KM) * Math.min(distanceM, opening.untilM);
  if (openingWins !== 'spent' || distanceM <= opening.untilM) return wonS;
  return wonS * (1 - (distanceM - opening.untilM) / (totalM - opening.untilM));
};

/** T(d) of the plan on the level: goal pace, less what the opening and the push win. */
export const levelTimeS = (plan: PlanTimes, distanceM: number): number => {
  const { push } = plan;
  const opened = openedS(plan, distanceM);
  const pushed = push ? (push.quickerSPerKm / M_PER_KM) * Math.max(0, distanceM - push.fromM) : 0;
  return (plan.goalS / plan.distanceM) * distanceM - opened - pushed;
};

/** Grid points this near to a leg's end are that end: rounding must not make a piece without length. */
const SAME_PLACE_M = 0.001;

/** Where the pace may change: the ends, the opening's end, the push's begin, and each step of the slopes. */
const knotPlacesM = (plan: PlanTimes, profile: SlopeProfile | null): number[] => {
  const inside = [plan.opening?.untilM, plan.push?.fromM].filter((m) => m !== undefined);
  const ends = [0, ...new Set(inside.filter((m) => m > 0 && m < plan.distanceM)), plan.distanceM];
  const grid = Array.from(profile?.slopes ?? [], (_, i) => i * (profile?.stepM ?? 0));
  const free = grid.filter((m) => ends.every((end) => Math.abs(m - end) > SAME_PLACE_M));
  return [...ends, ...free].sort((a, b) => a - b);
};

/**
 * On hills: the level plan's time for each piece times what its slope costs, all scaled so that the whole takes exactly
 * as long as on the level. The effort is then even within each leg, and the legs keep their ratio.
 */
const knotsOf = (plan: PlanTimes, course: CourseLine | null): Knots => {
  const profile = course && plan.pacing === 'effort' ? slopeProfile(course) : null;
  const places = knotPlacesM(plan, profile);
  const atM = Float64Array.from(places);
  const levelS = atM.map((m) => levelTimeS(plan, m));
  if (!profile) return { atM, atS: levelS };
  const atS = new Float64Array(atM.length);
  for (let i = 1; i < atM.length; i++) {
    const from = atM[i - 1] as number;
    const middleM = (from + (atM[i] as number)) / 2;
    const slope = profile.slopes[
      Math.min(profile.slopes.length - 1, Math.floor(middleM / profile.stepM))
    ] as number;
    const pieceS = (levelS[i] as number) - (levelS[i - 1] as number);
    atS[i] = (atS[i - 1] as number) + pieceS * effortRatio(slope);
  }
  const scale = (levelS.at(-1) as number) / (atS.at(-1) as number);
  return { atM, atS: atS.map((s) => s * scale) };
};

/** Index of the piece that holds x: the last knot at or before it, short of the end. */
const pieceAt = (knots: Float64Array, x: number): number => {
  let low = 0;
  let high = knots.length - 1;
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if ((knots[mid] as number) <= x) low = mid;
    else high = mid;
  }
  return low;
};

const between = (from: Float64Array, to: Float64Array, x: number): number => {
  const first = from[0] as number;
  const last = from.at(-1) as number;
  if (!(x > first)) return to[0] as number;
  if (x >= last) return to.at(-1) as number;
  const i = pieceAt(from, x);
  const k = (x - (from[i] as number)) / ((from[i + 1] as number) - (from[i] as number));
  return (to[i] as number) + k * ((to[i + 1] as number) - (to[i] as number));
};

/**
 * The schedule of a plan. On a course without heights (or with pacing "pace") exactly the plan file's T(d); on hills with
 * pacing "effort" the same total, spent at even effort. Look-ups cost a binary search.
 */
export const scheduleOf = (plan: PlanTimes, course: CourseLine | null): Schedule => {
  const { atM, atS } = knotsOf(plan, course);
  return {
    distanceM: plan.distanceM,
    timeAtS: (distanceM) => between(atM, atS, distanceM),
    distanceAtM: (timeS) => between(atS, atM, timeS),
    paceAtSPerKm: (distanceM) => {
      const i = pieceAt(atM, distanceM);
      const pieceS = (atS[i + 1] as number) - (atS[i] as number);
      return (pieceS / ((atM[i + 1] as number) - (atM[i] as number))) * M_PER_KM;
    },
  };
};
