import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { PREPARE, SCREENS } from '../../src/screens/route.ts';
import { type Opened, open, SIZES } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';

/** The languages whose words are the longest. */
const LONG = ['de', 'fr'];
const PLAN = { version: 1, kind: 'race', name: 'Pier mile', distanceM: 1600, goalS: 400, pacing: 'pace' };

const openIn = async (language: string, hash: string, size: { width: number; height: number }) => {
  const opened = await open(hash, {
    size,
    plan: PLAN,
    before: (context) =>
      context.addInitScript((tag) => localStorage.setItem('soundline.language', tag), language),
  });
  await opened.page.waitForFunction((tag) => document.documentElement.lang === tag, language);
  return opened;
};

/** What reaches out of the screen to the right, other than in a box that scrolls by itself. */
const outside = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const width = document.documentElement.clientWidth;
    const scrolls = (element: Element | null): boolean =>
      element !== null &&
      (['auto', 'scroll', 'hidden', 'clip'].includes(getComputedStyle(element).overflowX) ||
        scrolls(element.parentElement));
    const wide = [...document.querySelectorAll('body *')].filter((element) => {
      const box = element.getBoundingClientRect();
      return box.width > 1 && box.right > width + 0.5 && !scrolls(element.parentElement);
    });
    const clipped = [
      ...document.querySelectorAll('button, a, label, dt, dd, th, h1, h2, summary, legend'),
    ].filter(
      (element) =>
        element.scrollWidth > element.clientWidth + 1 && getComputedStyle(element).display !== 'inline',
    );
    return [
      ...wide.map((e) => `out: ${e.outerHTML.slice(0, 100)}`),
      ...clipped
        .filter((e) => !e.closest('.unseen, [hidden]') && e.clientWidth > 1)
        .map((e) => `clipped: ${e.outerHTML.slice(0, 100)}`),
      ...(document.documentElement.scrollWidth > width ? ['the page scrolls sideways'] : []),
    ];
  });

/** Looked at by people who set FIT_SHOTS to a folder. */
const shoot = async (page: Page, name: string): Promise<void> => {
  const folder = process.env['FIT_SHOTS'];
  if (folder !== undefined) await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
};

const HASHES = [...new Set([...SCREENS, ...PREPARE, 'ready', 'share'])];

describe.each(LONG)('in %s', (language) => {
  describe.each(['phone', 'wrist'] as const)('on a %s', (name) => {
    const size = SIZES[name];
    const found = async ({ page }: Opened, state: string): Promise<readonly string[]> => {
      await shoot(page, `${language}-${name}-${state}`);
      return (await outside(page)).map((what) => `${state}: ${what}`);
    };

    test('every screen fits', { timeout: 90_000 }, async () => {
      const opened = await openIn(language, '#/rehearse', size);
      const faults: string[] = [];
      for (const hash of HASHES) {
        await opened.page.evaluate((to) => (location.hash = to), `#/${hash}`);
        await opened.page.waitForTimeout(600);
        faults.push(...(await found(opened, hash)));
      }
      expect(faults).toEqual([]);
      await opened.close();
    });

    test('a run fits, from the check to the end', { timeout: 90_000 }, async () => {
      const opened = await openIn(language, '#/ready', size);
      const { page } = opened;
      const faults: string[] = [];
      const runner = await roadRunner(page);
      await page.locator('.main-button').click();
      await runner.stand(1);
      faults.push(...(await found(opened, 'checked')));
      await page.evaluate(() => (location.hash = '#/run'));
      await page.locator('button.main-button').click();
      await runner.stand(1);
      faults.push(...(await found(opened, 'switched-on')));
      await page.locator('.start-button').last().click();
      await runner.runTo(14, 4);
      faults.push(...(await found(opened, 'face')));
      await page.locator('.hold-button').click({ delay: 2000 });
      faults.push(...(await found(opened, 'asked')));
      // A busy machine may be too slow for the second hold: then it is the first again.
      while ((await page.locator('.run-over').count()) === 0)
        await page.locator('.hold-button').click({ delay: 2000 });
      faults.push(...(await found(opened, 'over')));
      await page.locator('.run-over .buttons button').last().click();
      await page.evaluate(() => (location.hash = '#/runs'));
      await page.locator('.run-row').first().click();
      await page.locator('.review').waitFor();
      await page.waitForTimeout(500);
      faults.push(...(await found(opened, 'review')));
      expect(faults).toEqual([]);
      await opened.close();
    });
  });
});
