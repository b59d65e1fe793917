import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { open } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { roadRunner } from './support/roadRunner.ts';
import { startRun } from './support/runOnPage.ts';

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
/**
 * Where two things stand at one instant. What stands in the other half changes sides with the figure, once a second at
 * most: measured one after the other, they could be of different seconds.
 */
const boxesOf = async (page: Page, selectors: readonly [string, string]): Promise<readonly [Box, Box]> =>
  page.evaluate(([a, b]) => {
    const boxOf = (selector: string) => {
      const { x, y, width, height } = document.querySelector(selector)?.getBoundingClientRect() ?? {};
      if (x === undefined || y === undefined || width === undefined || height === undefined)
        throw new Error(`no ${selector}`);
      return { x, y, width, height };
    };
    return [boxOf(a), boxOf(b)] as const;
  }, selectors);
/** Of the four corners, how far the farthest is from the middle of the screen. */
const reach = ({ x, y, width, height }: Box, size: number): number =>
  Math.max(
    ...[x, x + width].flatMap((cx) => [y, y + height].map((cy) => Math.hypot(cx - size / 2, cy - size / 2))),
  );

const SIZES = [160, 180, 240];

describe('on a wrist', () => {
  const expectInside = async (page: Page, size: number, upper: boolean): Promise<void> => {
    await page.setViewportSize({ width: size, height: size });
    const [figure, stop] = await boxesOf(page, ['.face .sounding .figure', '.face .hold-button']);
    expect(figure.height).toBeGreaterThanOrEqual(size / 4);
    expect(figure.y + figure.height / 2 < size / 2).toBe(upper);
    expect(reach(figure, size)).toBeLessThan(size / 2);
    // Nothing lies over the figure.
    expect(stop.y + stop.height <= figure.y || stop.y >= figure.y + figure.height).toBe(true);
    expect(reach(stop, size)).toBeLessThan(size / 2);
    // A finger finds it: 44 px, and as much as a small round screen has room for.
    expect(stop.height).toBeGreaterThanOrEqual(Math.min(44, 0.22 * size) - 0.5);
    expect(await page.locator('.face-figures').isVisible()).toBe(false);
  };

  test('one figure, its side told by place and shape, inside a round screen as well', async () => {
    const { page, complaints, close } = await open('#/run', {
      size: { width: 180, height: 180 },
      plan: PIER_MILE,
    });
    const runner = await startRun(page);
    const sounding = page.locator('.face .sounding');
    const becomes = async (side: string): Promise<boolean> =>
      (await sounding.getAttribute('data-side')) === side;
    const startedMs = Date.now();
    await runner.follow(
      () => (6 * (Date.now() - startedMs)) / 1000,
      () => becomes('up'),
      6,
    );
    expect(await page.locator('.waterline .float').count()).toBe(1);
    for (const size of SIZES) await expectInside(page, size, true);
    await runner.follow(runner.atM, () => becomes('down'), 0);
    expect(await page.locator('.waterline .lead').count()).toBe(1);
    for (const size of SIZES) await expectInside(page, size, false);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe('on a wrist, guarded', () => {
  test('the guard says how it is opened, inside a round screen, and nothing else looks like a button', async () => {
    const size = 200;
    const { page, close } = await open('#/run', { size: { width: size, height: size }, plan: PIER_MILE });
    const runner = await roadRunner(page);
    await page.getByLabel('In a pocket or on an arm').check();
    await page.getByRole('button', { name: 'Switch on' }).click();
    await runner.stand(1);
    await page.locator('.main-button.start-button').waitFor();
    // Nobody has to look for it.
    await expect.poll(() => page.evaluate(() => scrollY)).toBe(0);
    await page.locator('.main-button.start-button').click();
    await page.locator('.guard').waitFor();
    await runner.runTo(12, 6);
    const [text, figure] = await boxesOf(page, ['.guard-text', '.face .sounding .figure']);
    expect(reach(text, size)).toBeLessThan(size / 2);
    expect(text.y >= figure.y + figure.height || text.y + text.height <= figure.y).toBe(true);
    expect(await page.locator('.hold-button').isVisible()).toBe(false);
    await close();
  });
});

describe('a plan on its way to another device', () => {
  const handOver = async (): Promise<{ link: string; picture: Buffer }> => {
    const { page, close } = await open('#/share', { plan: PIER_MILE });
    await page.locator('svg.code').waitFor();
    const link = await page.getByLabel(/^The link/).inputValue();
    const picture = await page.locator('svg.code').screenshot();
    await close();
    return { link, picture };
  };

  test('by its link: shown, taken, and there', async () => {
    const { link } = await handOver();
    const { page, close } = await open('');
    await page.goto(link);
    await page.getByText('A plan is here: Pier mile').waitFor();
    await page.getByRole('button', { name: 'Take this plan' }).click();
    await page.getByText('Taken.').waitFor();
    await page.goto(`${new URL(page.url()).origin}/#/run`);
    await page.getByText('Pier mile: 1.6 km in 6:40').waitFor();
    await close();
  });

  test('by a picture of its code; a picture of anything else, and a link cut short, say so', async () => {
    const { link, picture } = await handOver();
    const { page, close } = await open('#/share');
    const file = page.getByLabel('Open a picture of a code');
    await file.setInputFiles({ name: 'code.png', mimeType: 'image/png', buffer: picture });
    await page.getByText('A plan is here: Pier mile').waitFor();
    const empty = await page.locator('h1').screenshot();
    await file.setInputFiles({ name: 'else.png', mimeType: 'image/png', buffer: empty });
    await page.getByText('No code was found in this picture').waitFor();
    await file.setInputFiles({ name: 'text.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
    await page.getByText('This file is no picture').waitFor();
    await page.getByLabel('Paste a link here').fill(link.slice(0, -20));
    await page.getByLabel('Paste a link here').blur();
    await page.getByText(/This code has been cut off: \d+ of its \d+ characters/).waitFor();
    await close();
  });
});
