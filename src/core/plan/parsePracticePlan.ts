import { type DoorError, ok, type Result } from '../units/result.ts';
import type { DistanceUnit } from '../units/units.ts';
import { parseJson } from './json.ts';
import { type PlanFile, readPlanFile } from './parseRacePlan.ts';
import { type PracticeCourse, practiceCourse, practiceCourseText } from './practiceCourse.ts';
import { instant, practiceLegs } from './practiceFields.ts';
import type { Leg, PracticePlan } from './practicePlan.ts';
import { fields, oneOf, orElse, refuse, textUpTo } from './shape.ts';

const MAX_NAME_CHARS = 200;

const head = fields({ version: orElse(ok, 1), kind: orElse(ok, 'race') });

interface PracticeFields {
  readonly name: string;
  readonly unit: DistanceUnit;
  readonly place: PracticePlan['place'];
  readonly penClosesAt: number | null;
  readonly course: PracticeCourse | null;
  readonly legs: readonly Leg[];
}

const practiceFields = fields<PracticeFields>({
  name: orElse(textUpTo(MAX_NAME_CHARS), 'Practice'),
  unit: orElse(oneOf(['km', 'mile']), 'km'),
  place: orElse(oneOf(['road', 'indoors']), 'road'),
  penClosesAt: orElse(instant, null),
  course: practiceCourse,
  legs: practiceLegs,
});

/** A practice session of a value as JSON gives it; repeats are written out. Never throws. */
export const readPracticePlan = (value: unknown): Result<PracticePlan, DoorError> => {
  const top = head(value, '');
  if (!top.ok) return top;
  if (top.value.version !== 1) return refuse('version', '1', top.value.version);
  if (top.value.kind !== 'practice') return refuse('kind', '"practice"', top.value.kind);
  const got = practiceFields(value, '');
  if (!got.ok) return got;
  const { penClosesAt, course, ...rest } = got.value;
  const way = course === null ? {} : { course };
  return ok({ version: 1, kind: 'practice', ...rest, ...way, penClosesMs: penClosesAt });
};

/** A plan file of either kind. */
export type AnyPlan =
  | ({ readonly kind: 'race' } & PlanFile)
  | { readonly kind: 'practice'; readonly plan: PracticePlan };

const readAnyPlan = (value: unknown): Result<AnyPlan, DoorError> => {
  const top = head(value, '');
  if (top.ok && top.value.kind === 'practice') {
    const plan = readPracticePlan(value);
    return plan.ok ? ok({ kind: 'practice', plan: plan.value }) : plan;
  }
  const file = readPlanFile(value);
  if (file.ok) return ok({ kind: 'race', ...file.value });
  return file.error.place === 'kind'
    ? refuse('kind', '"race" or "practice"', top.ok ? top.value.kind : null)
    : file;
};

/** A plan file's text, race or practice; at most 1 MB, never throws. */
export const parseAnyPlan = (text: string): Result<AnyPlan, DoorError> => parseJson(text, readAnyPlan);

/** The leg as the file holds it. */
const legFile = ({ extent, target, take, ...rest }: Leg): object => ({
  ...rest,
  for:
    extent.by === 'time'
      ? { timeS: extent.timeS }
      : extent.by === 'distance'
        ? { distanceM: extent.distanceM }
        : 'press',
  target:
    target.by === 'pace'
      ? { paceSPerKm: target.paceSPerKm }
      : target.by === 'effort'
        ? { effort: target.effort }
        : 'free',
  take: take.map(({ item, at }) => ('timeS' in at ? { item, atS: at.timeS } : { item, atM: at.distanceM })),
});

/**
 * The file that gives this plan back, repeats written out.
 * @param isoOf  an epoch instant as ISO 8601 text; the core knows no calendar
 */
export const practiceFile = (plan: PracticePlan, isoOf: (ms: number) => string): string => {
  const { penClosesMs, legs, course, ...rest } = plan;
  const file = {
    ...rest,
    penClosesAt: penClosesMs === null ? null : isoOf(penClosesMs),
    legs: legs.map(legFile),
  };
  const text = JSON.stringify(file, null, 2);
  return course === undefined
    ? `${text}\n`
    : `${text.replace(/\n\}$/, '')},\n  "course": ${practiceCourseText(course)}\n}\n`;
};
