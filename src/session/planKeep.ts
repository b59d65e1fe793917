import type { LinePoint } from '../core/course/line.ts';
import { parseRacePlan } from '../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import type { CourseFile } from './planModel.ts';

/** Where small things are kept between visits: localStorage, or nothing where the browser forbids it. */
export type Keep = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const PLAN_KEY = 'soundline.plan';
const COURSE_KEY = 'soundline.course';
/** Degrees to six decimals are a decimetre. */
const DECIMALS = 6;

/** A full or forbidden storage must not stop anybody from planning; the export is there for that. */
const tryKeep = (run: () => void): void => {
  try {
    run();
  } catch {
    // Nothing is lost but convenience.
  }
};

const get = (keep: Keep, key: string): string | null => {
  try {
    return keep.getItem(key);
  } catch {
    return null;
  }
};

export const keepPlan = (keep: Keep, plan: RacePlan): void =>
  tryKeep(() => keep.setItem(PLAN_KEY, JSON.stringify(plan)));

export const keptPlan = (keep: Keep): RacePlan | null => {
  const text = get(keep, PLAN_KEY);
  const got = text === null ? null : parseRacePlan(text);
  return got?.ok ? got.value : null;
};

export const keepCourse = (keep: Keep, course: CourseFile | null): void =>
  tryKeep(() => {
    if (course === null) keep.removeItem(COURSE_KEY);
    else {
      const points = course.points.map((p) => [
        Number(p.latitudeDeg.toFixed(DECIMALS)),
        Number(p.longitudeDeg.toFixed(DECIMALS)),
        p.elevationM,
      ]);
      keep.setItem(COURSE_KEY, JSON.stringify({ name: course.name, points }));
    }
  });

const pointOf = (value: unknown): LinePoint | null => {
  if (!Array.isArray(value)) return null;
  const [latitudeDeg, longitudeDeg, elevationM] = value as unknown[];
  if (typeof latitudeDeg !== 'number' || typeof longitudeDeg !== 'number') return null;
  return { latitudeDeg, longitudeDeg, elevationM: typeof elevationM === 'number' ? elevationM : null };
};

export const keptCourse = (keep: Keep): CourseFile | null => {
  const text = get(keep, COURSE_KEY);
  if (text === null) return null;
  try {
    const { name, points } = JSON.parse(text) as { name?: unknown; points?: unknown };
    if (typeof name !== 'string' || !Array.isArray(points)) return null;
    return { name, points: points.flatMap((p: unknown) => pointOf(p) ?? []) };
  } catch {
    return null;
  }
};
