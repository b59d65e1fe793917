import { describe, expect, test } from 'vitest';
import { open, SIZES } from './support/open.ts';

const water = (atM: number) => ({ atM, offers: ['water'] });
const PLAN = {
  name: 'Quayside half',
  distanceM: 21_097.5,
  goalS: 6240,
  unit: 'km',
  pacing: 'pace',
  stations: [4700, 9600, 14_200].map(water),
  fuel: [{ item: 'gel', atM: 9450 }],
  secondGoal: { kind: 'safe', goalS: 6420 },
};
const PREPARE = { date: '2027-05-09', start: '09:30', penClosesMin: '15', travelMin: '40' };

const opened = (plan: object) =>
  open('#/paper', {
    size: SIZES.desk,
    plan,
    before: (context) =>
      context.addInitScript(
        (text) => localStorage.setItem('soundline.prepare', text),
        JSON.stringify(PREPARE),
      ),
  });

/** How many pages a PDF says it has. */
const pagesOf = (pdf: Buffer): number =>
  Math.max(
    ...[...pdf.toString('latin1').matchAll(/\/Type \/Pages[\s\S]{0,80}?\/Count (\d+)/g)].map((m) =>
      Number(m[1]),
    ),
  );

describe('paper', () => {
  test.each([
    ['a half by kilometres', PLAN],
    ['a marathon by kilometres', { ...PLAN, distanceM: 42_195, goalS: 13_500, name: 'Long quay' }],
    ['a ten by miles', { ...PLAN, distanceM: 10_000, goalS: 2900, unit: 'mile', stations: [], fuel: [] }],
  ])('is two pages of A4 for %s', async (_what, plan) => {
    const { page, close } = await opened(plan);
    const pdf = await page.pdf({ preferCSSPageSize: true });
    expect(pagesOf(pdf)).toBe(2);
    expect(pdf.toString('latin1')).toMatch(/\/MediaBox \[0 0 (594|595)[.\d]* (841|842)/);
    await close();
  });

  test('prints the paper alone, black on white', async () => {
    const { page, close } = await opened(PLAN);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.bar').isVisible()).toBe(false);
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    const look = await page
      .locator('.sheet-page')
      .evaluateAll((pages) =>
        pages.map((p) => [getComputedStyle(p).color, getComputedStyle(p).backgroundColor]),
      );
    expect(look).toEqual([
      ['rgb(0, 0, 0)', 'rgb(255, 255, 255)'],
      ['rgb(0, 0, 0)', 'rgb(255, 255, 255)'],
    ]);
    await close();
  });

  test('has every board, the checkpoints bold, and what to take before its line', async () => {
    const { page, close } = await opened(PLAN);
    const rows = page.locator('.band-part tbody tr');
    expect(await rows.count()).toBe(23);
    expect(await page.locator('.band-part tr[data-bold="true"] th').allTextContents()).toEqual([
      '5',
      '10',
      'half',
      '15',
      '20',
      'finish',
    ]);
    const ten = page.locator('.band-part tr', { has: page.locator('th', { hasText: /^10$/ }) });
    expect((await ten.locator('.band-marks').textContent())?.replaceAll('\u00a0', ' ')).toBe('◆ gel ○ water');
    expect(await rows.last().locator('td').first().textContent()).toBe('1:44:00');
    expect(await page.locator('.race-page').textContent()).toContain('Go');
    await close();
  });

  test('gives letters of a size that an arm’s length allows', async () => {
    const { page, close } = await opened({ ...PLAN, distanceM: 42_195, goalS: 13_500 });
    await page.emulateMedia({ media: 'print' });
    const sizes = await page
      .locator('.band-part tbody :is(th, td):not(.band-marks)')
      .evaluateAll((cells) => cells.map((c) => Number.parseFloat(getComputedStyle(c).fontSize)));
    // 9.5 CSS pixels are 7 points.
    expect(Math.min(...sizes)).toBeGreaterThan(9.5);
    await close();
  });

  test.each(['goal', 'course', 'plan', 'fuel', 'day', 'whatIf'])(
    'prints %s black on white too',
    async (name) => {
      const { page, close } = await open(`#/${name}`, { size: SIZES.desk, plan: PLAN });
      await page.emulateMedia({ media: 'print' });
      const look = await page
        .locator('h1')
        .evaluate((h) => [
          getComputedStyle(h).color,
          getComputedStyle(document.body).backgroundColor,
          getComputedStyle(document.documentElement).backgroundColor,
        ]);
      expect(look).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)', 'rgb(255, 255, 255)']);
      expect(await page.locator('.steps').isVisible()).toBe(false);
      await close();
    },
  );
});
