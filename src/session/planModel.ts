import { computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { parseGpx } from '../core/course/gpx.ts';
import { type CourseLine, type LinePoint, measureLine } from '../core/course/line.ts';
import { parseRacePlan } from '../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import { sayDoorError } from '../core/units/result.ts';
import { type DraftReading, draftOf, type PlanDraft, readDraft } from './planDraft.ts';
import { type Keep, keepCourse, keepPlan, keptCourse, keptPlan } from './planKeep.ts';

/** A course as it was given: points of the recording, before it is scaled to the race's official distance. */
export interface CourseFile {
  readonly name: string;
  readonly points: readonly LinePoint[];
}

/** The runner's plan: the form, what it reads as, and the course. */
export interface PlanModel {
  readonly draft: Signal<PlanDraft>;
  readonly reading: ReadonlySignal<DraftReading>;
  /** The last plan that could be read. */
  readonly plan: ReadonlySignal<RacePlan>;
  readonly courseFile: ReadonlySignal<CourseFile | null>;
  readonly course: ReadonlySignal<CourseLine | null>;
  /** Takes a plan file's text; says why not, or null. */
  readonly importPlan: (text: string) => string | null;
  /** The plan as a file of version 1. */
  readonly planFile: () => string;
  /** Takes a GPX text; says why not, or null. */
  readonly importCourse: (text: string, fileName: string) => string | null;
  readonly dropCourse: () => void;
}

export const createPlanModel = (first: RacePlan, keep: Keep): PlanModel => {
  const begin = keptPlan(keep) ?? first;
  const draft = signal(draftOf(begin));
  const reading = computed(() => readDraft(draft.value));
  const plan = signal(begin);
  effect(() => {
    const read = reading.value;
    if (!read.ok) return;
    plan.value = read.plan;
    keepPlan(keep, read.plan);
  });
  const courseFile = signal<CourseFile | null>(keptCourse(keep));
  const distanceM = computed(() => plan.value.distanceM);
  const course = computed(() =>
    courseFile.value === null ? null : measureLine(courseFile.value.points, distanceM.value),
  );

  return {
    draft,
    reading,
    plan,
    courseFile,
    course,
    importPlan: (text) => {
      const got = parseRacePlan(text);
      if (!got.ok) return sayDoorError(got.error);
      draft.value = draftOf(got.value);
      return null;
    },
    planFile: () => `${JSON.stringify(plan.value, null, 2)}\n`,
    importCourse: (text, fileName) => {
      const got = parseGpx(text);
      if (!got.ok) return sayDoorError(got.error);
      const path = got.value.tracks[0] ?? got.value.routes[0];
      const points = path?.segments.flat() ?? [];
      if (measureLine(points, distanceM.value) === null)
        return 'the file: expected a line of two points or more';
      const name = path?.name ?? got.value.name ?? fileName;
      courseFile.value = { name, points };
      keepCourse(keep, courseFile.value);
      return null;
    },
    dropCourse: () => {
      courseFile.value = null;
      keepCourse(keep, null);
    },
  };
};
