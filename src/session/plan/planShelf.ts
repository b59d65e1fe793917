import { type ReadonlySignal, signal } from '@preact/signals';
import { readRacePlan } from '../../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { getKept, type Keep, tryKeep } from '../phone/pageKeep.ts';
import { courseJson, courseOfJson } from './planKeep.ts';
import type { CourseFile } from './planModel.ts';

/** A plan that is put aside with its course. */
export interface Kept {
  readonly id: number;
  readonly plan: RacePlan;
  readonly course: CourseFile | null;
}

export interface Shelf {
  /** In the order in which they were made. */
  readonly plans: ReadonlySignal<readonly Kept[]>;
  /** Puts a plan aside; says its id. */
  readonly put: (plan: RacePlan, course: CourseFile | null) => number;
  readonly take: (id: number) => Kept | null;
  readonly remove: (id: number) => void;
  /** False where the last change could not be stored. */
  readonly stored: ReadonlySignal<boolean>;
}

const SHELF_KEY = 'soundline.plans';

const read = (keep: Keep): readonly Kept[] => {
  try {
    const list: unknown = JSON.parse(getKept(keep, SHELF_KEY) ?? '[]');
    if (!Array.isArray(list)) return [];
    return list.flatMap((entry: unknown, i) => {
      const { plan, course } = (entry ?? {}) as { plan?: unknown; course?: unknown };
      const got = readRacePlan(plan);
      return got.ok ? [{ id: i + 1, plan: got.value, course: courseOfJson(course) }] : [];
    });
  } catch {
    return [];
  }
};

/** The plans that are put aside, in the page's own storage. */
export const createShelf = (keep: Keep): Shelf => {
  const plans = signal(read(keep));
  const stored = signal(true);
  const set = (next: readonly Kept[]): void => {
    plans.value = next;
    const text = JSON.stringify(next.map(({ plan, course }) => ({ plan, course: courseJson(course) })));
    stored.value = tryKeep(() => keep.setItem(SHELF_KEY, text));
  };
  return {
    plans,
    stored,
    put: (plan, course) => {
      const id = Math.max(0, ...plans.value.map((k) => k.id)) + 1;
      set([...plans.value, { id, plan, course }]);
      return id;
    },
    take: (id) => plans.value.find((k) => k.id === id) ?? null,
    remove: (id) => set(plans.value.filter((k) => k.id !== id)),
  };
};
