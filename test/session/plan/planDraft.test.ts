import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RacePlan } from '../../../src/core/plan/racePlan.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import {
  atDistance,
  draftOf,
  inUnit,
  type PlanDraft,
  readDraft,
} from '../../../src/session/plan/planDraft.ts';
import { secondsOf } from '../../../src/session/plan/planTexts.ts';

const draft = draftOf(demoPlan);
const fullPlan: RacePlan = {
  ...demoPlan,
  openingWins: 'spent',
  secondGoal: { kind: 'dream', goalS: 6150 },
  pacer: { flagS: 6300, by: 'gun' },
  rival: {
    name: 'Ines',
    splits: [
      { atM: 10_000, timeS: 2950 },
      { atM: demoPlan.distanceM, timeS: 6260 },
    ],
  },
  cutOffs: [{ atM: 15_000, timeS: 6600 }],
  tunnels: [{ fromM: 8000, toM: 8300 }],
  wrongBoards: [{ saysM: 12_000, standsAtM: null }],
};
const reading = (change: Partial<PlanDraft>) => readDraft({ ...draft, ...change });

describe('the form of a plan', () => {
  test('gives back the plan it was filled from', () => {
    expect(readDraft(draft)).toEqual({ ok: true, plan: demoPlan, notice: null });
  });

  test('gives back a plan that says everything', () => {
    expect(readDraft(draftOf(fullPlan))).toEqual({ ok: true, plan: fullPlan, notice: null });
  });

  test('counts an opening to 2 km and says why', () => {
    const got = reading({ openingUntil: '3' });
    expect(got.ok && got.plan.opening?.untilM).toBe(2000);
    expect(got.ok && got.notice).toContain('at the finish than from an even start');
  });

  test.each([
    ['a second goal that is a word', { secondGoal: 'soon' }, 'secondGoal', null],
    ['a flag that is a word', { pacerFlag: 'red' }, 'pacerFlag', null],
    ['a cut-off without a time', { cutOffs: [{ at: '5', time: '' }] }, 'cutOffs', 0],
    ['a cut-off beyond the finish', { cutOffs: [{ at: '25', time: '3:00:00' }] }, 'cutOffs', 0],
    [
      'a rival who runs back in time',
      { rivalFinish: '1:40:00', rivalSplits: [{ at: '10', time: '1:45:00' }] },
      'rivalSplits',
      1,
    ],
  ] as const)('refuses %s and says at which field', (_what, change, field, row) => {
    const got = reading(change);
    if (got.ok) throw new Error('it was taken');
    expect(got.errors.map((e) => [e.field, e.row])).toContainEqual([field, row]);
  });

  test('takes 1:45 over a half marathon for hours and minutes, and 1:45 over 400 m for minutes and seconds', () => {
    const half = reading({ goal: '1:45' });
    expect(half.ok && half.plan.goalS).toBe(6300);
    const lap = readDraft({ ...atDistance(draft, 400), goal: '1:45' });
    expect(lap.ok && lap.plan.goalS).toBe(105);
  });

  test.each([
    ['a goal of nothing', { goal: '0' }, 'Write a time as hours, minutes and seconds: 1:44:00.'],
    [
      'a goal of five minutes',
      { goal: '0:05:00' },
      'That is quicker than anybody can run. Write hours, minutes and seconds: 1:44:00.',
    ],
    ['no distance', { distance: '0' }, 'Write a distance above 0, such as 10 or 21.1.'],
    [
      'a checkpoint beyond the finish',
      { checkpoints: '5, 30' },
      'The race ends at 21.1 km: this lies beyond it.',
    ],
    ['a push in the opening', { pushFrom: '1' }, 'The opening ends at 1.5 km: this lies before that.'],
  ] as const)('says of %s what to write, in no metres and no bare seconds', (_what, change, text) => {
    const got = reading(change);
    expect(got.ok ? [] : got.errors.map((e) => e.text)).toEqual([text]);
  });

  test('gives back a plan in miles to the millimetre', () => {
    const plan = { ...demoPlan, unit: 'mile' as const };
    const got = readDraft(draftOf(plan));
    expect(got.ok && Math.abs(got.plan.distanceM - plan.distanceM)).toBeLessThan(0.001);
    expect(got.ok && got.plan.checkpointsM.map((m) => Number(m.toFixed(2)))).toEqual(plan.checkpointsM);
  });

  test('means the same race after a change of unit and back', () => {
    const back = readDraft(inUnit(inUnit(draft, 'mile'), 'km'));
    expect(back.ok && Math.abs(back.plan.distanceM - demoPlan.distanceM)).toBeLessThan(0.001);
    expect(inUnit(draft, 'mile').openingQuicker).toBe('9.656064');
    expect(inUnit({ ...draft, goal: 'soon' }, 'mile')).toEqual({ ...draft, goal: 'soon', unit: 'mile' });
  });

  test('is a whole plan again at any other distance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 400, max: 100_000 }), (distanceM) => {
        const got = readDraft(atDistance(draft, distanceM));
        expect(got.ok && got.plan.distanceM).toBe(distanceM);
      }),
    );
    const ten = readDraft(atDistance(draft, 10_000));
    if (!ten.ok) throw new Error('refused');
    expect(ten.plan.push?.fromM).toBe(7000);
    expect(ten.plan.stations.map((s) => s.atM)).toEqual([4700, 8900]);
    // Like effort: quicker than at the half, slower than half its time.
    expect(ten.plan.goalS / 10_000).toBeLessThan(demoPlan.goalS / demoPlan.distanceM);
  });

  const refusals: readonly (readonly [
    what: string,
    change: Partial<PlanDraft>,
    field: string,
    row: number | null,
  ])[] = [
    ['a distance that is no number', { distance: 'far' }, 'distance', null],
    ['a negative distance', { distance: '-5' }, 'distance', null],
    ['no goal', { goal: '' }, 'goal', null],
    ['a goal of nothing', { goal: '0:00' }, 'goal', null],
    ['seconds beyond 59', { goal: '1:44:60' }, 'goal', null],
    ['half an opening', { openingUntil: '1.5', openingQuicker: '' }, 'openingQuicker', null],
    ['an opening longer than the race', { openingUntil: '30' }, 'openingUntil', null],
    ['a push before the opening ends', { pushFrom: '1' }, 'pushFrom', null],
    ['a checkpoint beyond the finish', { checkpoints: '5, 10, 25' }, 'checkpoints', null],
    ['a checkpoint that is a word', { checkpoints: '5, half' }, 'checkpoints', null],
    ['a station nowhere', { stations: [{ at: '', offers: ['water'] }] }, 'stations', 0],
    [
      'a gel beyond the finish',
      {
        fuel: [
          { item: 'gel', at: '8' },
          { item: 'gel', at: '80' },
        ],
      },
      'fuel',
      1,
    ],
  ];
  test.each(refusals)('refuses %s and says at which field', (_what, change, field, row) => {
    const got = reading(change);
    if (got.ok) throw new Error('it was taken');
    expect(got.errors.map((e) => [e.field, e.row])).toContainEqual([field, row]);
    expect(got.errors.every((e) => /^[A-Z].*\.$/.test(e.text))).toBe(true);
  });

  test.each([
    ['5, 10, 15', [5000, 10_000, 15_000]],
    ['5,10,15', [5000, 10_000, 15_000]],
    ['5 10 15', [5000, 10_000, 15_000]],
    ['5; 10,5; 15', [5000, 10_500, 15_000]],
  ])('reads places written as %s', (checkpoints, metres) => {
    const got = reading({ checkpoints });
    expect(got.ok && got.plan.checkpointsM).toEqual(metres);
  });

  test('leaves an opening out where both fields are empty', () => {
    const got = reading({ openingUntil: '', openingQuicker: ' ' });
    expect(got.ok && got.plan.opening).toBeNull();
  });

  test('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), fc.string(), (distance, goal, checkpoints) => {
        expect(typeof reading({ distance, goal, checkpoints }).ok).toBe('boolean');
      }),
    );
  });
});

describe('a goal time', () => {
  test.each([
    ['1:44:00', 6240],
    ['44:10', 2650],
    ['104', 6240],
    [' 1:30:05 ', 5405],
    ['', null],
    ['1:2:3:4', null],
    ['4:71', null],
    ['-3:00', null],
    ['1.5', null],
  ])('%j is %j seconds', (text, seconds) => {
    expect(secondsOf(text)).toBe(seconds);
  });
});
