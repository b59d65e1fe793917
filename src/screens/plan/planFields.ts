import type { DraftField, PlanDraft } from '../../session/plan/planDraft.ts';

/** What every part of the plan's form is given. */
export interface PlanFields {
  readonly draft: PlanDraft;
  readonly set: (change: Partial<PlanDraft>) => void;
  /** What is wrong with a field, or with a row of it. */
  readonly errorOf: (field: DraftField, row?: number | null) => string | null;
  /** Of places: `km`, `mi`. */
  readonly unit: string;
}
