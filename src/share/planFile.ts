import type { LinePoint } from '../core/course/line.ts';
import type { SharedPlan } from './code.ts';

type JsonPoint = readonly [number, number, (number | null)?];

const pointOf = ([latitudeDeg, longitudeDeg, elevationM = null]: JsonPoint): LinePoint => ({
  latitudeDeg,
  longitudeDeg,
  elevationM,
});

/** A plan file of ours, its course apart from the rest. */
export const sharedOf = (planFile: string): SharedPlan => {
  const { course, ...plan } = JSON.parse(planFile) as { course?: { points: JsonPoint[] } | null };
  return { plan, course: course == null ? null : course.points.map(pointOf) };
};

/** And back, for the plan file's own reader to judge. */
export const textOf = ({ plan, course }: SharedPlan): string =>
  JSON.stringify({
    ...plan,
    ...(course === null
      ? {}
      : { course: { points: course.map((p) => [p.latitudeDeg, p.longitudeDeg, p.elevationM]) } }),
  });
