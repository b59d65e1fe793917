import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { sidewaysPx } from './support/fits.ts';
import { open, SIZES } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { roadRunner } from './support/roadRunner.ts';
import { endRun } from './support/runOnPage.ts';

/** Whether a thing stands inside the screen in full, as it is scrolled now. */
const isInView = async (page: Page, selector: string): Promise<boolean> => {
  const box = await page.locator(selector).first().boundingBox();
  const size = page.viewportSize();
  if (box === null || size === null) return false;
  return (
    box.x >= -0.5 &&
    box.y >= -0.5 &&
    box.x + box.width <= size.width + 0.5 &&
    box.y + box.height <= size.height + 0.5 &&
    box.width > 0 &&
    box.height > 0
  );
};

/** WCAG 2.2 contrast of an element's text against a background that is one colour. */
const contrastOf = (page: Page, selector: string, background: readonly number[]): Promise<number> =>
  page.evaluate(
    ([query, ground]) => {
      const luminance = (rgb: readonly number[]): number => {
        const [r = 0, g = 0, b = 0] = rgb.map((c) => {
          const s = c / 255;
          return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const element = document.querySelector(query);
      const colour = element ? getComputedStyle(element).color : '';
      const rgb = (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
      const [a, b] = [luminance(rgb), luminance(ground)].sort((x, y) => y - x) as [number, number];
      return (a + 0.05) / (b + 0.05);
    },
    [selector, background] as const,
  );

const each = Object.entries(SIZES);

describe.each(each)('on a %s', (name, size) => {
  test('the rehearsal fits, its one button in view', async () => {
    const { page, complaints, close } = await open('#/rehearse', { size });
    expect(await sidewaysPx(page)).toBe(0);
    await page.locator('.main-button').scrollIntoViewIfNeeded();
    expect(await isInView(page, '.main-button')).toBe(true);
    if (name !== 'wrist') expect(await page.evaluate(() => scrollY)).toBe(0);
    await page.locator('.main-button').click();
    await page.locator('.sounding').waitFor();
    expect(await sidewaysPx(page)).toBe(0);
    await page.locator('.sounding').scrollIntoViewIfNeeded();
    expect(await isInView(page, '.sounding .figure')).toBe(true);
    expect(complaints).toEqual([]);
    await close();
  });

  test('the plan fits: its form, its curve and its table', async () => {
    const { page, complaints, close } = await open('#/plan', { size });
    expect(await sidewaysPx(page)).toBe(0);
    const parts = [
      page.getByLabel('Race', { exact: true }),
      page.locator('.plan-table thead th:last-child'),
      page.locator('.chart svg'),
    ];
    for (const part of parts) {
      await part.scrollIntoViewIfNeeded();
      const box = await part.boundingBox();
      expect(box?.x).toBeGreaterThanOrEqual(0);
      expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(size.width);
    }
    await page.getByRole('button', { name: 'Add a station' }).click();
    await page.getByRole('button', { name: 'Add a gel' }).click();
    expect(await sidewaysPx(page)).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });

  test('a run fits, from the reasons to the end', async () => {
    const { page, complaints, close } = await open('#/run', { size, plan: PIER_MILE });
    expect(await sidewaysPx(page)).toBe(0);
    const runner = await roadRunner(page);
    await page.getByRole('button', { name: 'Switch on' }).click();
    await runner.stand(1);
    await page.getByText('Position to 4 m').waitFor();
    expect(await sidewaysPx(page)).toBe(0);
    await page.getByRole('button', { name: 'Start' }).click();
    await runner.runTo(8, 4);
    expect(await sidewaysPx(page)).toBe(0);
    expect(await isInView(page, '.face .sounding .figure')).toBe(true);
    expect(await isInView(page, '.face .hold-button')).toBe(true);
    const figure = await page.locator('.face .sounding .figure').boundingBox();
    expect(figure?.height).toBeGreaterThanOrEqual(size.height / 4);
    if (name !== 'wrist') {
      expect(await isInView(page, '.face-figures div:first-child dd')).toBe(true);
      expect(await isInView(page, '.face-figures div:last-child dd')).toBe(true);
    }
    const black = await page.locator('.face').evaluate((e) => getComputedStyle(e).backgroundColor);
    expect(black).toBe('rgb(0, 0, 0)');
    for (const selector of ['.face .sounding .figure', '.face-figures dd', '.face-strip', '.hold-button'])
      expect(await contrastOf(page, selector, [0, 0, 0])).toBeGreaterThanOrEqual(7);

    // Neither a touch ends it nor one hold; two do.
    await page.locator('.hold-button').click();
    await page.waitForTimeout(300);
    expect(await page.locator('.face').count()).toBe(1);
    await endRun(page, async () => {
      await page.waitForTimeout(300);
      expect(await page.locator('.face').count()).toBe(1);
    });
    await page.getByRole('heading', { name: 'Stopped' }).waitFor();
    expect(await sidewaysPx(page)).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });
});
