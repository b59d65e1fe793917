import { describe, expect, test } from 'vitest';
import { wayM } from '../../../src/core/geo/ruler.ts';
import { parseAnyPlan, practiceFile, readPracticePlan } from '../../../src/core/plan/parsePracticePlan.ts';
import { sayDoorError } from '../../../src/core/units/result.ts';

/** Two points a kilometre apart and back. */
const points = [
  [54.1, 7.3, 4.25],
  [54.109, 7.3, 5],
  [54.1, 7.3, 4.25],
];
const planWith = (course: unknown) =>
  readPracticePlan({ kind: 'practice', course, legs: [{ for: { timeS: 600 } }] });

describe('the course of a session', () => {
  test('has the form of the race’s, and may be named and its length known', () => {
    const got = planWith({ points, name: 'The dyke', lengthM: 2000 });
    expect(got.ok && got.value.course).toMatchObject({
      name: 'The dyke',
      lengthM: 2000,
      points: [{ latitudeDeg: 54.1, longitudeDeg: 7.3, elevationM: 4.25 }, {}, {}],
    });
  });

  test('may be left out', () => {
    const got = planWith(undefined);
    expect(got.ok && 'course' in got.value).toBe(false);
  });

  test.each([
    ['no points', {}, 'course.points: expected a list, found nothing'],
    ['a point', { points: [points[0]] }, 'course.points: expected two points or more, found a list of 1'],
    [
      'a point off the globe',
      {
        points: [
          [54, 7],
          [154, 7],
        ],
      },
      'course.points[1][0]: expected degrees of latitude, -90 to 90, found 154',
    ],
    [
      'a step',
      {
        points: [
          [54.1, 7.3],
          [54.1001, 7.3],
        ],
      },
      'course.points: expected a line of 100 m to 100 km, found 11 m',
    ],
    [
      'a continent',
      {
        points: [
          [54.1, 7.3],
          [44.1, 7.3],
        ],
      },
      'course.points: expected a line of 100 m to 100 km, found 1112117 m',
    ],
    [
      'a length of another line',
      { points, lengthM: 400 },
      'course.points: expected a line of about 400 m, as lengthM says, found 2004 m',
    ],
    ['a length that is no number', { points, lengthM: 'x' }, 'course.lengthM: expected'],
    ['a name that is none', { points, name: 7 }, 'course.name: expected a text'],
  ])('with %s is refused by field, expected and found', (_what, course, error) => {
    const got = planWith(course);
    expect(got.ok).toBe(false);
    if (!got.ok) expect(sayDoorError(got.error)).toContain(error);
  });

  test('goes through the plan’s own file and back, to the last digit', () => {
    const fine = points.map(([lat, lon], i) => [(lat ?? 0) + 1.23456789e-5 * i, lon]);
    const got = planWith({ points: fine });
    if (!got.ok) throw new Error('refused');
    const named = planWith({ points: fine, name: 'Round the "lake"', lengthM: 2004 });
    if (!named.ok) throw new Error('refused');
    expect(named.value.course).toMatchObject({ name: 'Round the "lake"', lengthM: 2004 });
    const namedText = practiceFile(named.value, (ms) => new Date(ms).toISOString());
    expect(parseAnyPlan(namedText)).toEqual({ ok: true, value: { kind: 'practice', plan: named.value } });
    const text = practiceFile(got.value, (ms) => new Date(ms).toISOString());
    expect(parseAnyPlan(text)).toEqual({ ok: true, value: { kind: 'practice', plan: got.value } });
    expect(wayM(got.value.course?.points ?? [])).toBeCloseTo(2004, -1);
  });
});
