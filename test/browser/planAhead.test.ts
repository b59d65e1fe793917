import { text } from 'node:stream/consumers';
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { sidewaysPx } from './support/fits.ts';
import { type Opened, open, SIZES, show } from './support/open.ts';

describe('the goal', () => {
  test('comes from a result, and stands in the plan', async () => {
    const { page, complaints, close } = await open('#/goal');
    await page.getByLabel('Time', { exact: true }).fill('46:40');
    await page.getByLabel('You run in a week').fill('45');
    await page.locator('.verdict[data-grade]').waitFor();
    await page.getByLabel('Your goal').fill('1:20:00');
    await expect.poll(() => page.locator('.verdict').getAttribute('data-grade')).toBe('beyond');
    await page.getByRole('heading', { name: 'What it would take' }).waitFor();
    await page.getByRole('button', { name: /^Middle of the range/ }).click();
    await expect.poll(() => page.locator('.verdict').getAttribute('data-grade')).toBe('inside');
    const goal = await page.getByLabel('Your goal').inputValue();
    expect(goal).toMatch(/^1:4\d:[03]0$/);
    await page.getByRole('link', { name: 'Plan', exact: true }).last().click();
    expect(await page.getByLabel('Goal time').inputValue()).toBe(goal);
    expect(complaints).toEqual([]);
    await close();
  });

  test('says so where the plan’s form takes nothing', async () => {
    const { page, close } = await open('#/plan');
    await page.getByLabel('Distance').fill('far');
    await page.goto(page.url().replace('#/plan', '#/fuel'));
    await page.getByRole('link', { name: 'Mend it first.' }).waitFor();
    await close();
  });

  test('says what is wrong with a result', async () => {
    const { page, close } = await open('#/goal');
    await page.getByLabel('Time', { exact: true }).fill('12:00');
    await page.getByRole('alert').getByText('between 2:14 and 16:40 per km').waitFor();
    await close();
  });
});

describe('the plan form', () => {
  test('takes back what was changed, letter by letter typed as one', async () => {
    const { page, close } = await open('#/plan', { size: SIZES.desk });
    const goal = page.getByLabel('Goal time');
    const before = await goal.inputValue();
    await goal.fill('1:39:00');
    await page.getByLabel('Name').pressSequentially(' again');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.getByLabel('Name').inputValue()).not.toContain('again');
    expect(await goal.inputValue()).toBe('1:39:00');
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await goal.inputValue()).toBe(before);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await close();
  });

  test('keeps several plans over a visit', async () => {
    const { page, close } = await open('#/plan', { size: SIZES.desk });
    await page.getByLabel('Name').fill('Pier to pier');
    await page.getByRole('button', { name: 'Put a copy aside' }).click();
    await page.getByLabel('Name').fill('Another day');
    await page.reload();
    await page.getByRole('button', { name: /^Take Pier to pier/ }).click();
    expect(await page.getByLabel('Name').inputValue()).toBe('Pier to pier');
    await page.getByRole('button', { name: /^Take Another day/ }).waitFor();
    await close();
  });

  test('counts a long opening to 2 km and says what it costs', async () => {
    const { page, close } = await open('#/plan', { size: SIZES.desk });
    await page.getByLabel('Until').fill('4');
    await page.getByText('counts for 2 km at most').waitFor();
    await page.getByText('The opening wins 12 s').waitFor();
    await close();
  });

  test('holds the second goal, the rival and the cut-offs beside the plan', async () => {
    const { page, close } = await open('#/plan', { size: SIZES.desk });
    await page.getByText('Second goal, pacer, rival, cut-offs').click();
    await page.getByLabel('Its time').fill('1:50:00');
    await page.getByLabel('Who').fill('Ines');
    await page.getByLabel('Their finish').fill('1:45:00');
    await page.getByRole('button', { name: 'Add a cut-off' }).click();
    await page.getByLabel('Cut-off 1 at').fill('15');
    await page.getByLabel('Cut-off 1 time').fill('1:10:00');
    expect(await page.locator('.plan-table thead').textContent()).toContain('Safe');
    expect(await page.locator('.plan-table thead').textContent()).toContain('On Ines');
    await page.getByText(/too late/).waitFor();
    await close();
  });
});

describe('fuel', () => {
  test('is moved to just before water and put into the plan', async () => {
    const { page, close } = await open('#/fuel', { size: SIZES.desk });
    await page.getByRole('radio', { name: 'By the hour' }).check();
    await page.getByLabel('Carbohydrate an hour').fill('50');
    await page.getByLabel('Body mass').fill('60');
    await page.getByText('60 to 240 g of carbohydrate').waitFor();
    await page.getByRole('button', { name: 'Put into the plan' }).click();
    const plan = JSON.parse((await page.evaluate(() => localStorage.getItem('soundline.plan'))) ?? '{}');
    const waters = plan.stations.map((s: { atM: number }) => s.atM);
    expect(plan.fuel.length).toBeGreaterThan(1);
    for (const { atM } of plan.fuel) expect(waters.map((w: number) => w - atM)).toContain(150);
    expect(await page.locator('.cautions').textContent()).toContain('diabetes');
    await close();
  });
});

describe('race day', () => {
  test('goes into a calendar that an independent reader understands', async () => {
    const { page, close } = await open('#/day');
    await page.getByLabel('Date of the race').fill('2027-05-09');
    await page.getByLabel('The gun goes at').fill('09:30');
    await page.getByLabel('You run in a week').fill('45');
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: /calendar/ }).click();
    const file = await text(await (await download).createReadStream());
    const events = new ICAL.Component(ICAL.parse(file))
      .getAllSubcomponents('vevent')
      .map((e) => new ICAL.Event(e));
    const gun = events.find((e) => e.summary === 'Gun');
    expect(gun?.startDate.toString()).toBe('2027-05-09T09:30:00');
    expect(events.filter((e) => e.startDate.isDate).length).toBeGreaterThan(5);
    expect(new Set(events.map((e) => e.uid)).size).toBe(events.length);
    await close();
  });
});

describe('what if', () => {
  test('runs off the page’s own thread, the same each time, with its limits in view', async () => {
    const { page, complaints, close } = await open('#/whatIf', { size: SIZES.desk });
    await page.locator('.what-came table').last().waitFor({ timeout: 20_000 });
    const first = await page.locator('.what-came table').last().textContent();
    expect(await page.getByText('A model, not a forecast').isVisible()).toBe(true);
    expect(await page.getByText('Nikolaidis').isVisible()).toBe(true);
    await page.reload();
    await page.locator('.what-came table').last().waitFor({ timeout: 20_000 });
    expect(await page.locator('.what-came table').last().textContent()).toBe(first);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe.each(Object.entries(SIZES))('on a %s', (_name, size) => {
  let opened: Opened;
  beforeAll(async () => {
    opened = await open('', { size });
  });
  afterAll(() => opened?.close());

  test.each(['goal', 'course', 'plan', 'fuel', 'day', 'paper', 'whatIf'])('%s fits', async (name) => {
    await show(opened.page, `#/${name}`);
    expect(await sidewaysPx(opened.page)).toBe(0);
    expect(opened.complaints).toEqual([]);
  });
});
