import type { RacePlan } from '../plan/racePlan.ts';
import type { Schedule } from '../plan/schedule.ts';
import { boardsM } from '../plan/splits.ts';
import type { Digest } from './digest.ts';
import { paceBetween, passedAtS, sampleAt } from './passing.ts';

/** A board or the finish, as it was run and as it was meant. */
export interface RanSplit {
  readonly atM: number;
  readonly timeS: number;
  /** Since the board before. */
  readonly splitS: number;
  readonly plannedSplitS: number;
  /** Plan's time less the runner's. */
  readonly aheadS: number;
}

/** Rows for each board and the end, as far as the run came. */
export const ranSplits = (digest: Digest, plan: RacePlan, schedule: Schedule): readonly RanSplit[] => {
  const rows: RanSplit[] = [];
  let [lastS, lastPlanS] = [0, 0];
  for (const atM of [...boardsM(plan), plan.distanceM]) {
    const timeS = passedAtS(digest, atM);
    if (timeS === null) break;
    const planS = schedule.timeAtS(atM);
    rows.push({ atM, timeS, splitS: timeS - lastS, plannedSplitS: planS - lastPlanS, aheadS: planS - timeS });
    [lastS, lastPlanS] = [timeS, planS];
  }
  return rows;
};

/** Where the finish was thought to be, when a checkpoint was passed. */
export interface Projected {
  readonly atM: number;
  readonly timeS: number;
  readonly aheadS: number;
  readonly projectedS: number | null;
  readonly projectedSdS: number;
}

export const projectedAt = (digest: Digest, plan: RacePlan, schedule: Schedule): readonly Projected[] =>
  plan.checkpointsM.flatMap((atM) => {
    const timeS = passedAtS(digest, atM);
    const sample = sampleAt(digest, atM);
    return timeS === null || sample === null
      ? []
      : [
          {
            atM,
            timeS,
            aheadS: schedule.timeAtS(atM) - timeS,
            projectedS: sample.projectedS,
            projectedSdS: sample.projectedSdS,
          },
        ];
  });

/** The opening, held against its cap. */
export interface RanOpening {
  readonly untilM: number;
  readonly plannedSPerKm: number;
  readonly ranSPerKm: number;
  /** Quicker than its cap by more than an estimate can be off. */
  readonly verdict: 'capped' | 'tooQuick' | 'slow';
}

/** Within this of its own pace an opening was run as meant, seconds per kilometre: what a field and its bends cost or give. */
const OPENING_ROOM_S_PER_KM = 4;
/** Where the plan has no opening, the first stretch is looked at all the same. */
const USUAL_OPENING_M = 1500;

export const ranOpening = (digest: Digest, plan: RacePlan, schedule: Schedule): RanOpening | null => {
  const untilM = Math.min(plan.opening?.untilM ?? USUAL_OPENING_M, plan.distanceM / 4);
  const ranSPerKm = paceBetween(digest, 0, untilM);
  if (ranSPerKm === null) return null;
  const plannedSPerKm = (1000 * schedule.timeAtS(untilM)) / untilM;
  const offS = ranSPerKm - plannedSPerKm;
  const verdict =
    offS < -OPENING_ROOM_S_PER_KM ? 'tooQuick' : offS > OPENING_ROOM_S_PER_KM ? 'slow' : 'capped';
  return { untilM, plannedSPerKm, ranSPerKm, verdict };
};

/** How the second half of the run compares with the first, in units of the plan: hills and legs are taken out. */
export interface Fade {
  /** Share by which the second half took longer than the first, both against the plan; below 0: quicker. */
  readonly share: number;
  /** Where the worst stretch of a tenth of the race was, and what it cost against the plan. */
  readonly worst: { readonly fromM: number; readonly toM: number; readonly lostS: number };
  readonly best: { readonly fromM: number; readonly toM: number; readonly lostS: number };
}

const TENTHS = 10;

export const fadeOf = (digest: Digest, plan: RacePlan, schedule: Schedule): Fade | null => {
  const { distanceM } = plan;
  const ranS = (from: number, to: number): number | null => {
    const [a, b] = [passedAtS(digest, from), passedAtS(digest, to)];
    return a === null || b === null ? null : b - a;
  };
  const planS = (from: number, to: number): number => schedule.timeAtS(to) - schedule.timeAtS(from);
  const [first, second] = [ranS(0, distanceM / 2), ranS(distanceM / 2, distanceM)];
  if (first === null || second === null) return null;
  const tenths = Array.from({ length: TENTHS }, (_, i) => {
    const [fromM, toM] = [(i * distanceM) / TENTHS, ((i + 1) * distanceM) / TENTHS];
    return { fromM, toM, lostS: (ranS(fromM, toM) ?? 0) - planS(fromM, toM) };
  }).sort((a, b) => a.lostS - b.lostS);
  const [best, worst] = [tenths[0], tenths.at(-1)];
  if (best === undefined || worst === undefined) return null;
  const share = second / planS(distanceM / 2, distanceM) / (first / planS(0, distanceM / 2)) - 1;
  return { share, best, worst };
};

/** What a station cost. */
export interface StationCost {
  readonly atM: number;
  /** Seconds lost against the pace just before and after; below 0: none. */
  readonly lostS: number;
}

const STATION = { beforeM: 60, behindM: 140, besideM: 300 } as const;

export const stationCosts = (digest: Digest, plan: RacePlan, schedule: Schedule): readonly StationCost[] =>
  plan.stations.flatMap(({ atM }) => {
    const [fromM, toM] = [atM - STATION.beforeM, atM + STATION.behindM];
    const rate = (a: number, b: number): number | null => {
      const pace = paceBetween(digest, a, b);
      const planned = ((schedule.timeAtS(b) - schedule.timeAtS(a)) / (b - a)) * 1000;
      return pace === null ? null : pace / planned;
    };
    if (fromM - STATION.besideM < 0 || toM + STATION.besideM > plan.distanceM) return [];
    const beside = [rate(fromM - STATION.besideM, fromM), rate(toM, toM + STATION.besideM)];
    const through = rate(fromM, toM);
    if (through === null || beside[0] == null || beside[1] == null) return [];
    const usual = (beside[0] + beside[1]) / 2;
    return [{ atM, lostS: (through - usual) * (schedule.timeAtS(toM) - schedule.timeAtS(fromM)) }];
  });
