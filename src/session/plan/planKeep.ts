import type { LinePoint } from '../../core/course/line.ts';
import { parseRacePlan } from '../../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import { getKept, type Keep, tryKeep } from '../phone/pageKeep.ts';
import type { CourseFile } from './planModel.ts';

const PLAN_KEY = 'soundline.plan';
const COURSE_KEY = 'soundline.course';
/** Degrees to six decimals are a decimetre. */
const DECIMALS = 6;

export const keepPlan = (keep: Keep, plan: RacePlan): void => {
  tryKeep(() => keep.setItem(PLAN_KEY, JSON.stringify(plan)));
};

export const keptPlan = (keep: Keep): RacePlan | null => {
  const text = getKept(keep, PLAN_KEY);
  const got = text === null ? null : parseRacePlan(text);
  return got?.ok ? got.value : null;
};

/** A course as it is kept and put into plan files: points as `[latitude, longitude, height]`. */
export const courseJson = (course: CourseFile | null) =>
  course === null
    ? null
    : {
        name: course.name,
        points: course.points.map((p) => [
          Number(p.latitudeDeg.toFixed(DECIMALS)),
          Number(p.longitudeDeg.toFixed(DECIMALS)),
          p.elevationM,
        ]),
      };

export const keepCourse = (keep: Keep, course: CourseFile | null): void => {
  tryKeep(() => {
    if (course === null) keep.removeItem(COURSE_KEY);
    else keep.setItem(COURSE_KEY, JSON.stringify(courseJson(course)));
  });
};

const pointOf = (value: unknown): LinePoint | null => {
  if (!Array.isArray(value)) return null;
  const [latitudeDeg, longitudeDeg, elevationM] = value as unknown[];
  if (typeof latitudeDeg !== 'number' || typeof longitudeDeg !== 'number') return null;
  return { latitudeDeg, longitudeDeg, elevationM: typeof elevationM === 'number' ? elevationM : null };
};

export const courseOfJson = (value: unknown): CourseFile | null => {
  if (typeof value !== 'object' || value === null) return null;
  const { name, points } = value as { name?: unknown; points?: unknown };
  if (typeof name !== 'string' || !Array.isArray(points)) return null;
  return { name, points: points.flatMap((p: unknown) => pointOf(p) ?? []) };
};

export const keptCourse = (keep: Keep): CourseFile | null => {
  try {
    return courseOfJson(JSON.parse(getKept(keep, COURSE_KEY) ?? 'null'));
  } catch {
    return null;
  }
};
