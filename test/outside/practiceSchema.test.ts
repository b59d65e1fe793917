import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { practiceFile, readPracticePlan } from '../../src/core/plan/parsePracticePlan.ts';
import { READY_MADE, readyMade } from '../../src/core/practice/sessions/readyMade.ts';
import { demoPlan } from '../../src/demo/race.ts';

// The published schema, checked and applied by ajv, an independent validator.
const schema: unknown = JSON.parse(readFileSync('public/schema/practice.v1.json', 'utf8'));
const ajv = new Ajv2020({
  strict: true,
  strictTuples: false,
  strictTypes: false,
  strictRequired: false,
  allErrors: true,
});
const validate = ajv.compile(schema as object);

const leg = { kind: 'work', for: { timeS: 900 }, target: { paceSPerKm: 296 } };
const bare = { version: 1, kind: 'practice', legs: [leg] };
const course = {
  name: 'Round the harbour',
  points: [
    [54.1, 7.3, 2],
    [54.105, 7.3],
    [54.1, 7.3, null],
  ],
};
const full = {
  ...bare,
  course: { ...course, lengthM: 1113 },
  name: '2 x 15 min',
  unit: 'km',
  place: 'road',
  penClosesAt: '2027-05-09T08:20:00Z',
  legs: [
    { kind: 'warm-up', for: 'press', target: 'free' },
    {
      repeat: 2,
      legs: [
        { ...leg, rampS: 20, heartMostBpm: 172, take: [{ item: 'gel', atS: 60 }] },
        { kind: 'recovery', for: { distanceM: 400 }, target: { effort: 'easy' } },
      ],
    },
  ],
};

describe('the schema of the practice session, version 1', () => {
  test('is itself a valid schema of draft 2020-12', () => {
    expect(ajv.validateSchema(schema as object)).toBe(true);
  });

  test.each<[string, unknown]>([
    ['every field', full],
    ['only what must be there', bare],
    ['fields of tomorrow', { ...bare, shoes: 'blue' }],
    ['absent as null', { ...bare, name: null, unit: null, penClosesAt: null, course: null }],
    ['a course with nothing beside its points', { ...bare, course: { points: course.points } }],
    ...READY_MADE.map((which): [string, unknown] => [
      which,
      JSON.parse(practiceFile(readyMade(which, demoPlan), (ms) => new Date(ms).toISOString())),
    ]),
  ])('accepts %s, and so does the reader', (_what, plan) => {
    expect(validate(plan)).toBe(true);
    expect(readPracticePlan(plan).ok).toBe(true);
  });

  test.each([
    ['no object', []],
    ['another version', { ...bare, version: 2 }],
    ['another kind', { ...bare, kind: 'race' }],
    ['no legs', { ...bare, legs: [] }],
    ['a course of one point', { ...bare, course: { points: [[54.1, 7.3]] } }],
    [
      'a course off the globe',
      {
        ...bare,
        course: {
          points: [
            [54.1, 7.3],
            [94.1, 7.3],
          ],
        },
      },
    ],
    ['a course that is shorter than it can be', { ...bare, course: { ...course, lengthM: 20 } }],
    ['a leg without an end', { ...bare, legs: [{ kind: 'work' }] }],
    ['a leg of a second', { ...bare, legs: [{ ...leg, for: { timeS: 1 } }] }],
    ['a leg round the earth', { ...bare, legs: [{ ...leg, for: { distanceM: 4e7 } }] }],
    ['a pace of a car', { ...bare, legs: [{ ...leg, target: { paceSPerKm: 30 } }] }],
    ['an effort of one’s own', { ...bare, legs: [{ ...leg, target: { effort: 'zone 4' } }] }],
    ['a repeat of nothing', { ...bare, legs: [{ repeat: 0, legs: [leg] }] }],
    ['a repeat without end', { ...bare, legs: [{ repeat: 1e6, legs: [leg] }] }],
    ['a heart of stone', { ...bare, legs: [{ ...leg, heartMostBpm: 5 }] }],
    ['something to take nowhere', { ...bare, legs: [{ ...leg, take: [{ item: 'gel' }] }] }],
    ['something unknown to take', { ...bare, legs: [{ ...leg, take: [{ item: 'pie', atS: 5 }] }] }],
  ])('refuses %s, and so does the reader', (_what, plan) => {
    expect(validate(plan)).toBe(false);
    expect(readPracticePlan(plan).ok).toBe(false);
  });

  test('with any one field replaced by any JSON: what the reader accepts, the schema accepts', () => {
    const field = fc.constantFrom('kind', 'for', 'target', 'rampS', 'heartMostBpm', 'take', 'rep');
    void fc.assert(
      fc.property(field, fc.jsonValue({ maxDepth: 2 }), (key, value) => {
        const plan = { ...bare, legs: [{ ...leg, [key]: value }] };
        if (readPracticePlan(plan).ok) expect(validate(plan)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  test('with any one field of the course replaced by any JSON: what the reader accepts, the schema accepts', () => {
    const field = fc.constantFrom('name', 'lengthM', 'points');
    void fc.assert(
      fc.property(field, fc.jsonValue({ maxDepth: 3 }), (key, value) => {
        const plan = { ...bare, course: { ...course, [key]: value } };
        if (readPracticePlan(plan).ok) expect(validate(plan)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});
