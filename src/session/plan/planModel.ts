import { batch, computed, effect, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { type CourseLine, type LinePoint, measureLine } from '../../core/course/line.ts';
import { withCappedOpening } from '../../core/plan/openingCap.ts';
import { parsePlanFile } from '../../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { refusal } from '../../languages/refusal.ts';
import { t } from '../../languages/text.ts';
import type { Keep } from '../phone/pageKeep.ts';
import { type DraftReading, draftOf, type PlanDraft, readDraft } from './planDraft.ts';
import { courseJson, keepCourse, keepPlan, keptCourse, keptPlan } from './planKeep.ts';
import { createShelf, type Shelf } from './planShelf.ts';
import { createUndo, type Undo } from './planUndo.ts';

/** A course as it was given: points of the recording, before it is scaled to the race's official distance. */
export interface CourseFile {
  readonly name: string;
  readonly points: readonly LinePoint[];
}

/** The runner's plan: the form, what it reads as, and the course. */
export interface PlanModel extends Undo {
  readonly draft: Signal<PlanDraft>;
  readonly reading: ReadonlySignal<DraftReading>;
  /** The last plan that could be read. */
  readonly plan: ReadonlySignal<RacePlan>;
  readonly courseFile: ReadonlySignal<CourseFile | null>;
  readonly course: ReadonlySignal<CourseLine | null>;
  /** Takes a plan file's text; says why not, or null. */
  readonly importPlan: (text: string) => string | null;
  /** The plan as a file of version 1, its course in it. */
  readonly planFile: () => string;
  /** Takes a GPX text; says why not, or null. */
  readonly importCourse: (text: string, fileName: string) => Promise<string | null>;
  readonly setCourse: (course: CourseFile) => void;
  /** The same line from its end to its start. */
  readonly turnCourse: () => void;
  readonly dropCourse: () => void;
  /** Whether it is still the plan that the page came with, whose stations and gels are nobody's. */
  readonly isExample: ReadonlySignal<boolean>;
  /** Makes the example the runner's own: without its stations and what it carries, under a name of its own. */
  readonly makeOwn: () => void;
  /** Changes the plan by its fields instead of the form's texts; what the form cannot read stays as it is. */
  readonly change: (next: (plan: RacePlan) => RacePlan) => void;
  /** Plans that are put aside. */
  readonly shelf: Shelf;
  /** Puts a copy of the plan aside. */
  readonly putAside: () => void;
  /** Takes a plan from the shelf; the one in the form goes there in its stead. */
  readonly swap: (id: number) => void;
}

export const createPlanModel = (first: RacePlan, keep: Keep): PlanModel => {
  const begin = keptPlan(keep) ?? first;
  const draft = signal(draftOf(begin));
  const reading = computed(() => readDraft(draft.value));
  const plan = signal(withCappedOpening(begin));
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
  const shelf = createShelf(keep);
  const setCourse = (next: CourseFile | null): void => {
    courseFile.value = next;
    keepCourse(keep, next);
  };

  return {
    ...createUndo(draft),
    draft,
    reading,
    plan,
    courseFile,
    course,
    importPlan: (text) => {
      const got = parsePlanFile(text);
      if (!got.ok) return t(refusal(got.error));
      const { plan: next, course: points } = got.value;
      batch(() => {
        draft.value = draftOf(next);
        if (points !== null) setCourse({ name: next.name, points });
      });
      return null;
    },
    planFile: () => {
      const points = courseJson(courseFile.value)?.points;
      const file = points === undefined ? plan.value : { ...plan.value, course: { points } };
      // Points stand on a line each: a course of thousands of lines of one number is no file for people.
      const text = JSON.stringify(file, null, 2);
      return `${text.replace(/\[\s+(-?[\d.]+),\s+(-?[\d.]+),\s+(-?[\d.]+|null)\s+\]/g, '[$1, $2, $3]')}\n`;
    },
    importCourse: async (text, fileName) => {
      // A reader of XML is a tenth of the script, and no race waits for it.
      const [{ parseGpx }, { lineOfGpx }, { thinned }] = await Promise.all([
        import('../../core/course/gpx.ts'),
        import('../../core/course/gpxCourse.ts'),
        import('../../core/course/gpxThin.ts'),
      ]);
      const got = parseGpx(text);
      if (!got.ok) return t(refusal(got.error));
      const line = lineOfGpx(got.value, distanceM.value);
      if (!line.ok) return t(refusal(line.error));
      setCourse({ name: line.value.name ?? fileName, points: thinned(line.value.points) });
      return null;
    },
    setCourse,
    turnCourse: () => {
      const now = courseFile.value;
      if (now !== null) setCourse({ ...now, points: now.points.toReversed() });
    },
    dropCourse: () => setCourse(null),
    isExample: computed(() => plan.value.name === first.name),
    makeOwn: () => {
      const name = courseFile.value?.name ?? t('My race');
      const read = reading.value;
      if (read.ok) draft.value = draftOf({ ...read.plan, name, stations: [], fuel: [] });
    },
    change: (next) => {
      const read = reading.value;
      if (read.ok) draft.value = draftOf(next(read.plan));
    },
    shelf,
    putAside: () => {
      shelf.put(plan.value, courseFile.value);
    },
    swap: (id) => {
      const next = shelf.take(id);
      if (next === null) return;
      batch(() => {
        shelf.remove(id);
        shelf.put(plan.value, courseFile.value);
        draft.value = draftOf(next.plan);
        setCourse(next.course);
      });
    },
  };
};
