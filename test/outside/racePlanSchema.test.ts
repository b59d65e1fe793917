import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsePlanFile, readRacePlan } from '../../src/core/plan/parseRacePlan.ts';
import { ITEMS, OFFERS } from '../../src/core/plan/supplies.ts';
import { demoPlan } from '../../src/demo/race.ts';

// The published schema, checked and applied by ajv, an independent validator.
const schema: unknown = JSON.parse(readFileSync('public/schema/race-plan.v1.json', 'utf8'));
const ajv = new Ajv2020({ strict: true, strictTypes: false, strictTuples: false, allErrors: true });
const validate = ajv.compile(schema as object);

/** A plan with every field, and one with only those that must be there. */
const full = {
  version: 1,
  kind: 'race',
  name: 'Harbour half',
  distanceM: 21_097.5,
  goalS: 6240,
  goalBy: 'gun',
  unit: 'km',
  pacing: 'effort',
  opening: { untilM: 1500, quickerSPerKm: 6 },
  push: { fromM: 18_097.5, quickerSPerKm: 4 },
  checkpointsM: [5000, 10_000, 15_000, 20_000],
  stations: [{ atM: 4700, offers: ['water'] }, { atM: 9000 }],
  fuel: [{ item: 'gel', atM: 10_550 }],
  openingWins: 'spent',
  secondGoal: { kind: 'safe', goalS: 6420 },
  pacer: { flagS: 6300, by: 'gun' },
  rival: {
    name: 'Ines',
    splits: [
      { atM: 10_000, timeS: 3000 },
      { atM: 21_097.5, timeS: 6300 },
    ],
  },
  cutOffs: [{ atM: 15_000, timeS: 6600 }],
  tunnels: [{ fromM: 8000, toM: 8400 }],
  wrongBoards: [{ saysM: 12_000, standsAtM: 12_080 }, { saysM: 13_000 }],
  course: {
    points: [
      [54.1, 7.3, 12],
      [54.2, 7.3],
    ],
  },
};
const bare = { distanceM: 10_000, goalS: 2700 };

describe('the schema of the race plan, version 1', () => {
  test('is itself a valid schema of draft 2020-12', () => {
    expect(ajv.validateSchema(schema as object)).toBe(true);
  });

  test.each([
    ['every field', full],
    ['only what must be there', bare],
    ['the demo', demoPlan],
    ['fields of tomorrow', { ...bare, shoes: 'blue' }],
    ['absent as null', { ...bare, opening: null, checkpointsM: null, name: null }],
  ])('accepts %s, and so does the reader', (_what, plan) => {
    expect(validate(plan)).toBe(true);
    expect(parsePlanFile(JSON.stringify(plan)).ok).toBe(true);
  });

  test.each([
    ['no object', []],
    ['another version', { ...bare, version: 2 }],
    ['another kind', { ...bare, kind: 'swim' }],
    ['no distance', { version: 1, kind: 'race', goalS: 2700 }],
    ['no goal', { version: 1, kind: 'race', distanceM: 10_000 }],
    ['a goal of zero', { ...bare, goalS: 0 }],
    ['a goal as text', { ...bare, goalS: '45:00' }],
    ['a negative distance', { ...bare, distanceM: -5 }],
    ['a distance to the moon', { ...bare, distanceM: 384_400_000 }],
    ['an unknown unit', { ...bare, unit: 'league' }],
    ['an unknown clock', { ...bare, goalBy: 'sundial' }],
    ['an unknown pacing', { ...bare, pacing: 'hope' }],
    ['an opening without a length', { ...bare, opening: { quickerSPerKm: 6 } }],
    ['an opening before the start', { ...bare, opening: { untilM: -1, quickerSPerKm: 6 } }],
    ['a push that is slower', { ...bare, push: { fromM: 8000, quickerSPerKm: -4 } }],
    ['a checkpoint as text', { ...bare, checkpointsM: ['5K'] }],
    ['a checkpoint at the start', { ...bare, checkpointsM: [0] }],
    ['a station that offers beer', { ...bare, stations: [{ atM: 5000, offers: ['beer'] }] }],
    ['a station nowhere', { ...bare, stations: [{ offers: ['water'] }] }],
    ['fuel of an unknown kind', { ...bare, fuel: [{ item: 'pie', atM: 5000 }] }],
    ['fuel nowhere', { ...bare, fuel: [{ item: 'gel' }] }],
    ['an opening that is lost', { ...bare, openingWins: 'lost' }],
    ['a second goal of no kind', { ...bare, secondGoal: { goalS: 2800 } }],
    ['a pacer without a flag', { ...bare, pacer: { by: 'gun' } }],
    ['a rival without times', { ...bare, rival: { name: 'Ines' } }],
    ['a cut-off without a time', { ...bare, cutOffs: [{ atM: 5000 }] }],
    ['a tunnel without an end', { ...bare, tunnels: [{ fromM: 500 }] }],
    ['a board that says nothing', { ...bare, wrongBoards: [{ standsAtM: 500 }] }],
    ['a name without end', { ...bare, name: 'x'.repeat(201) }],
    ['checkpoints without end', { ...bare, checkpointsM: Array.from({ length: 501 }, () => 5000) }],
  ])('refuses %s, and so does the reader', (_what, plan) => {
    expect(validate(plan)).toBe(false);
    expect(readRacePlan(plan).ok).toBe(false);
  });

  test('what the schema accepts and the course allows, the reader accepts', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    const sometimes = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
    const plans = fc
      .record({
        distanceM: fc.double({ min: 1000, max: 100_000, noNaN: true }),
        paceSPerKm: fc.double({ min: 160, max: 900, noNaN: true }),
        cuts: fc.tuple(part, part),
        opening: sometimes(fc.double({ min: -60, max: 60, noNaN: true })),
        push: sometimes(fc.double({ min: 0, max: 60, noNaN: true })),
        checkpoints: sometimes(fc.array(fc.double({ min: 0.001, max: 1, noNaN: true }), { maxLength: 20 })),
        stations: sometimes(fc.array(fc.tuple(part, fc.subarray([...OFFERS])), { maxLength: 20 })),
        fuel: sometimes(fc.array(fc.tuple(part, fc.constantFrom(...ITEMS)), { maxLength: 9 })),
        unit: fc.constantFrom('km', 'mile', null),
        goalBy: fc.constantFrom('own', 'gun', null),
      })
      .map(({ distanceM, paceSPerKm, cuts, ...p }) => ({
        version: 1,
        kind: 'race',
        distanceM,
        goalS: (paceSPerKm * distanceM) / 1000,
        unit: p.unit,
        goalBy: p.goalBy,
        opening:
          p.opening === null ? null : { untilM: Math.min(...cuts) * distanceM, quickerSPerKm: p.opening },
        push: p.push === null ? null : { fromM: Math.max(...cuts) * distanceM, quickerSPerKm: p.push },
        checkpointsM: p.checkpoints?.map((x) => x * distanceM) ?? null,
        stations: p.stations?.map(([x, offers]) => ({ atM: x * distanceM, offers })) ?? null,
        fuel: p.fuel?.map(([x, item]) => ({ item, atM: x * distanceM })) ?? null,
      }));
    void fc.assert(
      fc.property(plans, (plan) => {
        expect(validate(plan)).toBe(true);
        expect(readRacePlan(plan).ok).toBe(true);
      }),
    );
  });

  test('with any one field replaced by any JSON: what the reader accepts, the schema accepts', () => {
    const plausible = fc.oneof(
      fc.double({ min: 0, max: 30_000, noNaN: true }),
      fc.constantFrom(null, [], [5000], {}, 'km', 'gun', 'pace', 'x'),
      fc.record({
        untilM: fc.nat(9000),
        fromM: fc.nat(20_000),
        quickerSPerKm: fc.integer({ min: -9, max: 9 }),
      }),
      fc.array(
        fc.record({
          atM: fc.nat(20_000),
          item: fc.constantFrom('gel', 'pie'),
          offers: fc.constant(['water']),
        }),
      ),
    );
    const field = fc.constantFrom(...(Object.keys(full) as (keyof typeof full)[]));
    let taken = 0;
    void fc.assert(
      fc.property(field, fc.oneof(plausible, fc.jsonValue({ maxDepth: 2 })), (key, value) => {
        const plan = { ...full, [key]: value };
        if (!parsePlanFile(JSON.stringify(plan)).ok) return;
        taken++;
        expect(validate(plan)).toBe(true);
      }),
      { numRuns: 500 },
    );
    expect(taken).toBeGreaterThan(10);
  });
});
