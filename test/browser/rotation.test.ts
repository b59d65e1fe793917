import type { Locator, Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import { findings } from './support/axe.ts';
import { type Opened, open, SIZES } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { roadRunner } from './support/roadRunner.ts';
import { holdUntil, startRun } from './support/runOnPage.ts';

const ON_ITS_SIDE = [
  { width: 740, height: 360 },
  { width: 568, height: 320 },
  { width: 932, height: 430 },
];

const boxOf = async (what: Locator) => {
  const box = await what.boundingBox();
  if (box === null) throw new Error(`not seen: ${what}`);
  return box;
};

/** The figure is a quarter of the screen at least, and neither it nor its word is cut by the sounding that it stands in. */
const expectWhole = async (page: Page): Promise<void> => {
  const sounding = await boxOf(page.locator('.face .sounding'));
  const figure = await boxOf(page.locator('.face .sounding .figure'));
  for (const { x, y, width, height } of [figure, await boxOf(page.locator('.face .sounding-word'))]) {
    expect(y).toBeGreaterThanOrEqual(sounding.y);
    expect(y + height).toBeLessThanOrEqual(sounding.y + sounding.height + 0.5);
    expect(x + width).toBeLessThanOrEqual(sounding.x + sounding.width + 0.5);
  }
  const screen = page.viewportSize() ?? SIZES.phone;
  expect(figure.height / screen.height).toBeGreaterThanOrEqual(0.25);
  for (const one of await page.locator('.face-figures .figure, .face-buttons button').all()) {
    const { x, y, width, height } = await boxOf(one);
    expect(x + width).toBeLessThanOrEqual(screen.width);
    expect(y + height).toBeLessThanOrEqual(screen.height);
  }
};

/** As it is set in the browser: before the page's own styles are read. */
const largeText = (page: Page): Promise<unknown> =>
  page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync('html { font-size: 200% !important; }');
    document.adoptedStyleSheets = [sheet];
  });

describe('a phone that is turned', () => {
  let opened: Opened;
  afterEach(() => opened?.close());

  test('shows the start without a look for it, and the whole face ahead and behind, and the run goes on', async () => {
    opened = await open('#/run', { size: SIZES.phone, plan: PIER_MILE });
    const { page } = opened;
    const first = await roadRunner(page);
    await page.getByRole('button', { name: 'Switch on' }).click();
    await first.stand(1);
    const start = page.locator('.main-button.start-button');
    for (const size of [...ON_ITS_SIDE, SIZES.wrist]) {
      await page.setViewportSize(size);
      const { y, height } = await boxOf(start);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y + height).toBeLessThanOrEqual(size.height);
      expect(await findings(page)).toEqual([]);
    }
    await start.click();
    const side = page.locator('.face .sounding');
    const becomes = async (which: string): Promise<boolean> =>
      (await side.getAttribute('data-side')) === which;
    const startedMs = Date.now();
    await first.follow(
      () => (6 * (Date.now() - startedMs)) / 1000,
      () => becomes('up'),
      6,
    );
    for (const size of [...ON_ITS_SIDE, SIZES.phone, SIZES.desk]) {
      await page.setViewportSize(size);
      await expectWhole(page);
    }
    await page.setViewportSize({ width: 740, height: 360 });
    expect(await findings(page)).toEqual([]);
    await first.follow(first.atM, () => becomes('down'), 0);
    for (const size of [...ON_ITS_SIDE, SIZES.phone, SIZES.desk]) {
      await page.setViewportSize(size);
      await expectWhole(page);
    }
    expect(opened.complaints).toEqual([]);
  });

  test('cuts nothing of the face where text is set twice as large', async () => {
    opened = await open('#/run', { size: SIZES.phone, plan: PIER_MILE });
    const { page } = opened;
    await startRun(page);
    await page.locator('.face').waitFor();
    await largeText(page);
    for (const size of [...ON_ITS_SIDE, SIZES.phone]) {
      await page.setViewportSize(size);
      const sounding = await boxOf(page.locator('.face .sounding'));
      const figure = await boxOf(page.locator('.face .sounding .figure'));
      expect(figure.y).toBeGreaterThanOrEqual(sounding.y);
      expect(figure.y + figure.height).toBeLessThanOrEqual(sounding.y + sounding.height + 0.5);
    }
  });

  test('keeps its guard shut when it is turned, and opens on its side', async () => {
    opened = await open('#/run', { size: SIZES.phone, plan: PIER_MILE });
    const { page } = opened;
    await page.getByLabel('In a pocket or on an arm').check();
    await startRun(page);
    const guard = page.locator('.guard');
    await guard.waitFor();
    await page.setViewportSize({ width: 740, height: 360 });
    const text = await boxOf(page.locator('.guard-text'));
    const sounding = await boxOf(page.locator('.face .sounding'));
    expect(text.x).toBeGreaterThanOrEqual(sounding.x + sounding.width);
    await holdUntil(guard, guard, 'detached');
    expect(await page.locator('.face .hold-button').isVisible()).toBe(true);
  });
});

test('the check on a wrist shows its verdict once it begins, not its foot', async () => {
  const opened = await open('#/ready', { size: SIZES.wrist });
  const { page } = opened;
  await page.getByRole('button', { name: 'Begin the check' }).click();
  await page.getByRole('heading', { name: 'Not ready yet' }).waitFor();
  await expect.poll(() => page.evaluate(() => scrollY)).toBe(0);
  await opened.close();
});
