import { signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import type { WhatIf, WhatIfWish } from '../../../src/core/prepare/whatIf/whatIf.ts';
import { demoCourse } from '../../../src/demo/course.ts';
import { demoPlan } from '../../../src/demo/race.ts';
import { spoken as english } from '../../../src/languages/en/spoken.ts';
import { planSheetOf } from '../../../src/session/plan/planCurve.ts';
import { createShelf } from '../../../src/session/plan/planShelf.ts';
import { createUndo } from '../../../src/session/plan/planUndo.ts';
import { type DaySheet, dayCalendar, daySheetOf } from '../../../src/session/prepare/prepareDay.ts';
import { blankPrepare, type PrepareDraft, prepareOf } from '../../../src/session/prepare/prepareDraft.ts';
import { fuelSheetOf } from '../../../src/session/prepare/prepareFuel.ts';
import { goalSheetOf } from '../../../src/session/prepare/prepareGoal.ts';
import { createReminders } from '../../../src/session/prepare/prepareReminders.ts';
import { createWhatIf, whatIfWishOf } from '../../../src/session/prepare/prepareWhatIf.ts';
import { voiceOf } from '../../../src/voice/utter.ts';

const draft: PrepareDraft = {
  ...blankPrepare('id-1'),
  results: [{ distance: '10', time: '46:40', weeksAgo: '4' }],
  weekly: '45',
  massKg: '68',
  date: '2027-05-09',
  start: '09:30',
};
const today = { year: 2027, month: 5, day: 1 };
const memory = () => {
  const map = new Map<string, string>();
  return {
    getItem: (key: string) => map.get(key) ?? null,
    setItem: (key: string, value: string) => void map.set(key, value),
    removeItem: (key: string) => void map.delete(key),
  };
};

describe('what was kept of the preparation', () => {
  test('comes back, and nonsense gives way to the blank', () => {
    const blank = blankPrepare('new');
    expect(prepareOf(JSON.parse(JSON.stringify(draft)), blank)).toEqual(draft);
    expect(prepareOf(null, blank)).toEqual(blank);
    expect(prepareOf({ results: [{ distance: 5 }], runDays: [9], item: 'pie', start: 7 }, blank)).toEqual(
      blank,
    );
  });
});

describe('the goal sheet', () => {
  test('judges the plan’s goal by the results, and hills beside it', () => {
    const sheet = goalSheetOf(draft, demoPlan, demoCourse());
    expect(sheet.verdict?.grade).toBe('inside');
    expect(sheet.hillRatio).toBeGreaterThan(1);
    expect(sheet.hillRatio).toBeLessThan(1.02);
    expect(sheet.climbM).toBeGreaterThan(30);
  });

  test.each([
    ['a distance that is a word', { distance: 'far', time: '40:00', weeksAgo: '' }, 'Write the distance'],
    ['a time that is none', { distance: '10', time: 'soon', weeksAgo: '' }, 'Write the time'],
    ['weeks that are none', { distance: '10', time: '40:00', weeksAgo: 'x' }, 'Write the weeks'],
    ['a time that nobody runs', { distance: '10', time: '12:00', weeksAgo: '' }, 'between 2:14 and 16:40'],
  ])('refuses %s beside its row', (_what, row, words) => {
    const sheet = goalSheetOf({ ...draft, results: [row] }, demoPlan, null);
    expect(sheet.errors[0]).toContain(words);
    expect(sheet.prediction).toBeNull();
  });

  test('says nothing on an empty row, and uses the others', () => {
    const results = [{ distance: '', time: '', weeksAgo: '' }, ...draft.results];
    const sheet = goalSheetOf({ ...draft, results }, demoPlan, null);
    expect(sheet.errors).toEqual([null, null]);
    expect(sheet.prediction?.byResult).toHaveLength(1);
  });

  test('takes distances in the plan’s unit', () => {
    const results = [{ distance: '10', time: '1:16:00', weeksAgo: '' }];
    const sheet = goalSheetOf({ ...draft, results }, { ...demoPlan, unit: 'mile' }, null);
    expect(sheet.prediction?.byResult[0]?.result.distanceM).toBeCloseTo(16_093.44, 6);
  });
});

describe('the fuel sheet', () => {
  test('asks for figures that can be read', () => {
    expect(fuelSheetOf({ ...draft, fuelHow: 'rate', gPerHour: 'much' }, demoPlan, null).error).toContain(
      'grams an hour',
    );
    expect(fuelSheetOf({ ...draft, itemG: '0' }, demoPlan, null).error).toContain('packet');
    expect(fuelSheetOf(draft, demoPlan, null).fuel?.stops).toHaveLength(1);
    expect(fuelSheetOf({ ...draft, massKg: '68' }, demoPlan, null).breakfast.carbohydrate.grams).toEqual({
      lower: 68,
      upper: 272,
    });
  });
});

describe('the day sheet', () => {
  test('counts the days, plans the taper, and makes a calendar', () => {
    const sheet = daySheetOf(draft, demoPlan, null, today);
    expect(sheet.daysAway).toBe(8);
    expect(sheet.taper?.days).toHaveLength(15);
    expect(dayCalendar(sheet, 'id-1', 0)).toContain('DTSTART:20270509T093000');
    expect(dayCalendar({ ...sheet, date: null }, 'id-1', 0)).toBeNull();
  });

  test.each([
    ['start', { start: '' }],
    ['penClosesMin', { penClosesMin: '500' }],
    ['travelMin', { travelMin: 'long' }],
  ] as const)('says what %s needs', (field, change) => {
    const sheet = daySheetOf({ ...draft, ...change }, demoPlan, null, today);
    expect(sheet.items).toEqual([]);
    expect(sheet.errors[field]).toMatch(/^This needs .*\.$/);
  });

  test('takes no date that is none', () => {
    expect(daySheetOf({ ...draft, date: '2027-02-30' }, demoPlan, null, today).date).toBeNull();
  });
});

describe('the plan’s table', () => {
  test('holds the second goal, the rival and the cut-offs against the plan', () => {
    const sheet = planSheetOf(
      {
        ...demoPlan,
        secondGoal: { kind: 'safe', goalS: 6540 },
        rival: { name: 'Ines', splits: [{ atM: demoPlan.distanceM, timeS: 6300 }] },
        cutOffs: [{ atM: 15_000, timeS: 4000 }],
      },
      null,
    );
    const finish = sheet.rows.at(-1);
    expect((finish?.secondS ?? 0) - (finish?.timeS ?? 0)).toBeCloseTo(300, 6);
    expect(finish?.rivalGapS).toBeCloseTo(6300 - (finish?.timeS ?? 0), 6);
    expect(sheet.cutOffs[0]?.leftS).toBeLessThan(0);
  });
});

describe('undo', () => {
  test('takes back step by step, letters of one field as one, and again after it', () => {
    const form = signal({ name: 'a', goal: '1', list: [1] });
    const { undo, canUndo } = createUndo(form);
    form.value = { ...form.value, name: 'ab' };
    form.value = { ...form.value, name: 'abc' };
    form.value = { ...form.value, list: [1, 2] };
    form.value = { ...form.value, list: [1, 2, 3] };
    undo();
    expect(form.value.list).toEqual([1, 2]);
    undo();
    undo();
    expect(form.value).toEqual({ name: 'a', goal: '1', list: [1] });
    expect(canUndo.value).toBe(false);
    undo();
    form.value = { ...form.value, name: 'x' };
    expect(canUndo.value).toBe(true);
  });
});

describe('plans put aside', () => {
  test('are there at the next visit, damaged ones left out', () => {
    const keep = memory();
    const shelf = createShelf(keep);
    const id = shelf.put(demoPlan, {
      name: 'c',
      points: [{ latitudeDeg: 54, longitudeDeg: 7, elevationM: null }],
    });
    shelf.put({ ...demoPlan, name: 'Second' }, null);
    const again = createShelf(keep).plans.value;
    expect(again.map((k) => k.plan.name)).toEqual([demoPlan.name, 'Second']);
    expect(again[0]?.course?.points).toHaveLength(1);
    shelf.remove(id);
    expect(shelf.plans.value).toHaveLength(1);
    keep.setItem('soundline.plans', '[{"plan": {"goalS": 1}}, {"plan": null}, 7]');
    expect(createShelf(keep).plans.value).toEqual([]);
    keep.setItem('soundline.plans', '{');
    expect(createShelf(keep).plans.value).toEqual([]);
  });

  test('say so where the storage is full', () => {
    const full = {
      ...memory(),
      setItem: () => {
        throw new Error('full');
      },
    };
    const shelf = createShelf(full);
    shelf.put(demoPlan, null);
    expect(shelf.stored.value).toBe(false);
    expect(shelf.plans.value).toHaveLength(1);
  });
});

describe('the reminders of race day', () => {
  const sheet = daySheetOf(draft, demoPlan, null, today);
  const atMs = (clockMin: number): number => new Date(2027, 4, 9).getTime() + clockMin * 60_000;
  const minuteOf = (kind: string): number => sheet.items.find((i) => i.kind === kind)?.clockMin ?? Number.NaN;

  const set = (beginMin: number) => {
    const told: string[] = [];
    let wallMs = atMs(beginMin);
    let tick = (): void => {};
    const reminders = createReminders({
      day: signal<DaySheet>(sheet),
      ear: {
        say: (utterance) => {
          told.push(utterance.text);
          return 'scheduled';
        },
        takeBack: () => {},
        hush: () => {},
      },
      wake: async () => true,
      voice: voiceOf(english.pack, english.words),
      time: {
        nowMs: () => wallMs,
        every: (_ms, run) => {
          tick = run;
          return () => {
            tick = () => {};
          };
        },
      },
      wallMs: () => wallMs,
    });
    const at = (clockMin: number): void => {
      wallMs = atMs(clockMin);
      tick();
    };
    return { told, reminders, at };
  };

  test('are each told once, at their time', async () => {
    const { told, reminders, at } = set(minuteOf('wake') - 10);
    await reminders.begin();
    expect(told).toEqual([]);
    for (let m = minuteOf('wake') - 1; m <= minuteOf('gun') + 3; m += 0.25) at(m);
    expect(told).toHaveLength(sheet.items.length);
    expect(told[0]).toBe('Time to get up.');
    expect(new Set(told).size).toBe(told.length);
    expect(reminders.next.value).toBeNull();
  });

  test('that were slept through are told while they are true, and not later', async () => {
    const { told, reminders, at } = set(minuteOf('leave') - 5);
    await reminders.begin();
    at(minuteOf('leave') + 2);
    expect(told).toEqual(['Time to leave.']);
    at(minuteOf('lastDrink') + 20);
    expect(told).not.toContain('Last full drink.');
  });

  test('of before the page was asked are not told, and an end is an end', async () => {
    const { told, reminders, at } = set(minuteOf('breakfast') + 1);
    await reminders.begin();
    expect(reminders.state.value).toBe('waiting');
    reminders.end();
    at(minuteOf('leave') + 1);
    expect(told).toEqual([]);
  });
});

describe('what if', () => {
  const wish = whatIfWishOf(draft, goalSheetOf(draft, demoPlan, null), demoPlan, null);

  test('rests on the results where there are any, on the goal where there are none', () => {
    const bare = { ...draft, results: [] };
    const without = whatIfWishOf(bare, goalSheetOf(bare, demoPlan, null), demoPlan, null);
    expect(without.spread.middleS).toBe(demoPlan.goalS);
    expect(wish.spread.middleS).not.toBe(demoPlan.goalS);
    expect(wish.runs).toBe(1000);
  });

  test('shows the answer to the latest question only, and a failure in words', async () => {
    const answers: ((result: WhatIf) => void)[] = [];
    const model = createWhatIf(() => new Promise((resolve) => answers.push(resolve)));
    const other: WhatIfWish = { ...wish, seed: 7 };
    const result = { plan: {}, openings: [] } as unknown as WhatIf;
    model.ask(wish);
    model.ask(other);
    answers[0]?.(result);
    await Promise.resolve();
    expect(model.state.value).toBeNull();
    answers[1]?.(result);
    await Promise.resolve();
    expect(model.state.value?.wish).toBe(other);
    const broken = createWhatIf(() => Promise.reject(new Error('no worker')));
    broken.ask(wish);
    await new Promise((resolve) => setTimeout(resolve));
    expect(broken.trouble.value).toContain('could not be run');
    expect(broken.busy.value).toBe(false);
  });
});
