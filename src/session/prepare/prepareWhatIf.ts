import { type ReadonlySignal, signal } from '@preact/signals';
import type { CourseLine } from '../../core/course/line.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { fadeGrowth } from '../../core/prepare/whatIf/fade.ts';
import {
  USUAL_RUNS,
  USUAL_STATION_S,
  USUAL_WANDER_SD,
  type WhatIf,
  type WhatIfWish,
} from '../../core/prepare/whatIf/whatIf.ts';
import { t } from '../../languages/text.ts';
import { numberOf } from '../plan/planTexts.ts';
import type { PrepareDraft } from './prepareDraft.ts';
import type { GoalSheet } from './prepareGoal.ts';

/** Runs a simulation somewhere else than on the page's own thread. */
export type Simulate = (wish: WhatIfWish) => Promise<WhatIf>;

/** The same plan gives the same answer on every visit. */
const SEED = 2026;
/** Without results the goal itself is taken for what the runner can do, within this (judgement, no source). */
const UNKNOWN_SD_LOG = 0.05;

/** How this runner runs, as their own runs show it. */
export interface OwnSpread {
  readonly wanderSd: number;
  readonly stationS: number;
  /** By how much more than usual they slow from half to half, in a race of two hours. */
  readonly fadeMore?: number;
}

/** The wish for a plan, and whether it rests on results. */
export const whatIfWishOf = (
  draft: PrepareDraft,
  goal: GoalSheet,
  plan: RacePlan,
  course: CourseLine | null,
  own: OwnSpread = { wanderSd: USUAL_WANDER_SD, stationS: USUAL_STATION_S },
): WhatIfWish => {
  const { prediction, hillRatio } = goal;
  const lineAfterGunS = numberOf(draft.lineAfterGunS) ?? 0;
  return {
    plan,
    course,
    spread: {
      middleS: prediction === null ? plan.goalS : prediction.middleS * hillRatio,
      sdLog: prediction?.sdLog ?? UNKNOWN_SD_LOG,
      wanderSd: own.wanderSd,
      stationS: own.stationS,
      fadeMore: (own.fadeMore ?? 0) * fadeGrowth(plan.goalS),
    },
    lineAfterGunS: lineAfterGunS >= 0 && lineAfterGunS <= 3600 ? lineAfterGunS : 0,
    seed: SEED,
    runs: USUAL_RUNS,
  };
};

export interface WhatIfState {
  readonly wish: WhatIfWish;
  readonly result: WhatIf;
}

export interface WhatIfModel {
  readonly state: ReadonlySignal<WhatIfState | null>;
  readonly busy: ReadonlySignal<boolean>;
  readonly trouble: ReadonlySignal<string | null>;
  readonly ask: (wish: WhatIfWish) => void;
}

export const createWhatIf = (simulate: Simulate): WhatIfModel => {
  const state = signal<WhatIfState | null>(null);
  const busy = signal(false);
  const trouble = signal<string | null>(null);
  let latest: WhatIfWish | null = null;
  return {
    state,
    busy,
    trouble,
    ask: (wish) => {
      latest = wish;
      busy.value = true;
      trouble.value = null;
      simulate(wish).then(
        (result) => {
          // An answer to an older question is none.
          if (latest !== wish) return;
          state.value = { wish, result };
          busy.value = false;
        },
        () => {
          if (latest !== wish) return;
          trouble.value = t('The simulation could not be run on this browser.');
          busy.value = false;
        },
      );
    },
  };
};
