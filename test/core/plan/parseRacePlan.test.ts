import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseRacePlan } from '../../../src/core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { sayDoorError } from '../../../src/core/units/result.ts';

const parse = (fields: object): RacePlan => {
  const got = parseRacePlan(JSON.stringify({ distanceM: 21_097.5, goalS: 6240, ...fields }));
  if (!got.ok) throw new Error(sayDoorError(got.error));
  return got.value;
};

const refusal = (text: string): string => {
  const got = parseRacePlan(text);
  return got.ok ? 'accepted' : sayDoorError(got.error);
};

describe('parseRacePlan: what may be left out', () => {
  it('takes distance and goal alone', () => {
    expect(parse({})).toEqual({
      version: 1,
      kind: 'race',
      name: 'Half marathon',
      distanceM: 21_097.5,
      goalS: 6240,
      goalBy: 'own',
      unit: 'km',
      pacing: 'effort',
      opening: null,
      push: null,
      checkpointsM: [5000, 10_000, 10_548.75, 15_000, 20_000],
      stations: [],
      fuel: [],
    });
  });

  it('has half-way once where it is also a 5 km mark', () => {
    expect(parse({ distanceM: 10_000 }).checkpointsM).toEqual([5000]);
    expect(parse({ distanceM: 3000, goalS: 900 }).checkpointsM).toEqual([1500]);
  });

  it('takes an empty list of checkpoints at its word', () => {
    expect(parse({ checkpointsM: [] }).checkpointsM).toEqual([]);
  });

  it('takes null for left out', () => {
    expect(parse({ opening: null, push: null, stations: null, name: null }).opening).toBeNull();
  });
});

describe('parseRacePlan: what it puts in order', () => {
  it('sorts checkpoints, stations and fuel, and names each checkpoint once', () => {
    const plan = parse({
      checkpointsM: [15_000, 5000, 15_000, 21_097.5],
      stations: [{ atM: 9000 }, { atM: 4700, offers: ['Water', 'gel'] }],
      fuel: [
        { item: 'gel', atM: 12_000 },
        { item: 'caffeine gel', atM: 6000 },
      ],
    });
    expect(plan.checkpointsM).toEqual([5000, 15_000]);
    expect(plan.stations).toEqual([
      { atM: 4700, offers: ['water', 'gel'] },
      { atM: 9000, offers: ['water'] },
    ]);
    expect(plan.fuel.map((f) => f.atM)).toEqual([6000, 12_000]);
  });

  it('has no leg where a leg wins nothing or lies nowhere', () => {
    const plan = parse({
      opening: { untilM: 0, quickerSPerKm: 6 },
      push: { fromM: 21_097.5, quickerSPerKm: 4 },
    });
    expect([plan.opening, plan.push]).toEqual([null, null]);
  });

  it('takes a plan with a byte order mark, fields of others, doubles and __proto__', () => {
    const got = parseRacePlan(
      '\uFEFF{"distanceM": 1, "distanceM": 5000, "goalS": 1500, "__proto__": {"unit": "mile"}, "shoes": [[[{}]]]}',
    );
    expect(got).toMatchObject({ ok: true, value: { distanceM: 5000, unit: 'km' } });
    expect(({} as Record<string, unknown>)['unit']).toBeUndefined();
  });
});

describe('parseRacePlan: what it refuses, and how it says so', () => {
  const base = '"distanceM": 5000, "goalS": 1200';
  const rows: readonly (readonly [string, string])[] = [
    ['{"goalS": 1200}', 'distanceM: expected a number of metres from 1 to 1000000, found nothing'],
    [
      '{"distanceM": -5000, "goalS": 1200}',
      'distanceM: expected a number of metres from 1 to 1000000, found -5000',
    ],
    [
      '{"distanceM": "5000", "goalS": 1}',
      'distanceM: expected a number of metres from 1 to 1000000, found "5000"',
    ],
    [
      '{"distanceM": 5000, "goalS": 0}',
      'goalS: expected a number of seconds above 0 and at most 2592000, found 0',
    ],
    [
      '{"distanceM": 5000, "goalS": NaN}',
      'goalS: expected a number of seconds above 0 and at most 2592000, found "NaN"',
    ],
    [
      '{"distanceM": 5000, "goalS": 1e999}',
      'goalS: expected a number of seconds above 0 and at most 2592000, found Infinity',
    ],
    [
      '{"distanceM": 5000, "goalS": 300}',
      'goalS: expected a pace that a human can run (slower than 12 m/s), found 300',
    ],
    [`{"version": 2, ${base}}`, 'version: expected 1, found 2'],
    [`{"version": "1", ${base}}`, 'version: expected 1, found "1"'],
    [`{"kind": "swim", ${base}}`, 'kind: expected "race", found "swim"'],
    [`{"unit": "league", ${base}}`, 'unit: expected "km" or "mile", found "league"'],
    [
      `{${base}, "opening": {"untilM": 6000, "quickerSPerKm": 6}}`,
      'opening.untilM: expected a place on the course of 5000 m, found 6000',
    ],
    [
      `{${base}, "opening": {"untilM": 900}}`,
      'opening.quickerSPerKm: expected a number of seconds per kilometre, found nothing',
    ],
    [
      `{${base}, "opening": {"untilM": 900, "quickerSPerKm": 200}}`,
      'opening.quickerSPerKm: expected a pace that a human can run (slower than 12 m/s), found 200',
    ],
    [
      `{${base}, "push": {"fromM": 4000, "quickerSPerKm": 300}}`,
      'push.quickerSPerKm: expected a pace that a human can run (slower than 12 m/s), found 300',
    ],
    [
      `{${base}, "push": {"fromM": 4000, "quickerSPerKm": -4}}`,
      'push.quickerSPerKm: expected 0 or more seconds per kilometre, found -4',
    ],
    [
      `{${base}, "push": {"fromM": 5001, "quickerSPerKm": 4}}`,
      'push.fromM: expected a place on the course of 5000 m, found 5001',
    ],
    [
      `{${base}, "opening": {"untilM": 2000, "quickerSPerKm": 6}, "push": {"fromM": 1500, "quickerSPerKm": 4}}`,
      'push.fromM: expected a place after the opening, which ends at 2000 m, found 1500',
    ],
    [
      `{${base}, "checkpointsM": [1000, 5001]}`,
      'checkpointsM[1]: expected a place on the course of 5000 m, found 5001',
    ],
    [
      `{${base}, "checkpointsM": [1000, null]}`,
      'checkpointsM[1]: expected a number of metres from 1 to 1000000, found null',
    ],
    [`{${base}, "checkpointsM": 1000}`, 'checkpointsM: expected a list, found 1000'],
    [
      `{${base}, "stations": [{"atM": 100, "offers": ["beer"]}]}`,
      'stations[0].offers[0]: expected "water" or "drink" or "gel" or "food" or "sponge", found "beer"',
    ],
    [
      `{${base}, "fuel": [{"item": "gel", "atM": -3}]}`,
      'fuel[0].atM: expected metres from the start, 0 or more, found -3',
    ],
    [
      `{${base}, "secondGoal": {"kind": "dream", "goalS": 440}, "push": {"fromM": 4000, "quickerSPerKm": 10}}`,
      'secondGoal.goalS: expected a pace that a human can run (slower than 12 m/s), found 440',
    ],
    [
      `{${base}, "secondGoal": {"kind": "wild", "goalS": 1100}}`,
      'secondGoal.kind: expected "safe" or "dream", found "wild"',
    ],
    [
      `{${base}, "cutOffs": [{"atM": 2000, "timeS": 900}, {"atM": 3000, "timeS": 900}]}`,
      'cutOffs[1]: expected a later place and a later time than the row before, found 3000',
    ],
    [
      `{${base}, "rival": {"splits": [{"atM": 2500, "timeS": 600}]}}`,
      'rival.splits: expected a last row at the finish, 5000 m, found 2500',
    ],
    [
      `{${base}, "tunnels": [{"fromM": 900, "toM": 900}]}`,
      "tunnels[0].toM: expected a place after the tunnel's mouth at 900 m, found 900",
    ],
    [
      `{${base}, "wrongBoards": [{"saysM": 1000, "standsAtM": 5001}]}`,
      'wrongBoards[0].standsAtM: expected a place on the course of 5000 m, found 5001',
    ],
    [
      `{${base}, "openingWins": "spent", "opening": {"untilM": 4900, "quickerSPerKm": -150}}`,
      'openingWins: expected a pace that a human can run (slower than 12 m/s), found -150',
    ],
    // Quotes without an end: looked for anew from each of them, they take minutes.
    [`{${base}, "name": "${'\\"'.repeat(499_000)}`, 'the file: expected JSON, found text that is none'],
    [`{${base}, "shoes": NaN}`, 'the file: expected JSON, found text that is none'],
    ['[]', 'the file: expected an object, found a list of 0'],
    ['', 'the file: expected a plan as JSON, found nothing'],
    ['{"distanceM": ', 'the file: expected JSON, found text that is none'],
    [`${'['.repeat(400_000)}`, 'the file: expected JSON, found text that is none'],
    [' '.repeat(1_000_001), 'the file: expected at most 1 MB of text, found 1000001 characters'],
  ];
  it.each(rows)('%.60s', (text, expected) => {
    expect(refusal(text)).toContain(expected);
  });

  it('takes a second goal that can be run with the push in it, and one who is as quick as anybody ever was', () => {
    const dream = { secondGoal: { kind: 'dream', goalS: 1000 }, push: { fromM: 4000, quickerSPerKm: 10 } };
    expect(parse({ distanceM: 5000, goalS: 1200, ...dream }).secondGoal).toEqual(dream.secondGoal);
    expect(parse({ distanceM: 6000, goalS: 500 }).goalS).toBe(500);
  });

  it('never throws on any text, and what it accepts holds together', () => {
    const field = fc.oneof(fc.double(), fc.integer({ min: -5, max: 30_000 }), fc.jsonValue());
    const likely = fc.record(
      {
        version: fc.oneof(fc.constant(1), field),
        kind: fc.oneof(fc.constant('race'), field),
        distanceM: field,
        goalS: field,
        opening: fc.oneof(field, fc.record({ untilM: field, quickerSPerKm: field })),
        push: fc.oneof(field, fc.record({ fromM: field, quickerSPerKm: field })),
        checkpointsM: fc.oneof(field, fc.array(field)),
        stations: fc.oneof(field, fc.array(fc.record({ atM: field }))),
      },
      { requiredKeys: ['distanceM', 'goalS'] },
    );
    const texts = fc.oneof(
      fc.string(),
      fc.json(),
      likely.map((v) => JSON.stringify(v)),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const got = parseRacePlan(text);
        if (!got.ok) return got.error.place !== '' && got.error.expected !== '';
        const { distanceM, goalS, checkpointsM, opening, push } = got.value;
        return (
          distanceM > 0 &&
          distanceM / goalS <= 12 &&
          checkpointsM.every((m, i) => m > (checkpointsM[i - 1] ?? 0) && m < distanceM) &&
          (opening?.untilM ?? 0) <= (push?.fromM ?? distanceM)
        );
      }),
      { numRuns: 500 },
    );
  });
});
