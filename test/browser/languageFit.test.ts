import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { PREPARE, SCREENS } from '../../src/screens/route.ts';
import { type Opened, open, SIZES, show } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { roadRunner } from './support/roadRunner.ts';
import { endRun } from './support/runOnPage.ts';

/** The languages whose words are the longest. */
const LONG = ['de', 'fr'];

const openIn = async (language: string, hash: string, size: { width: number; height: number }) => {
  const opened = await open(hash, { size, plan: PIER_MILE, language });
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

/** A sixth of a second at sixty a second. */
const STILL_FRAMES = 10;
/** A screen may still compute what it shows, and draw by its width: waits until it has stood still for some frames. */
const settled = (page: Page): Promise<unknown> =>
  page.evaluate(async (frames) => {
    const looks = (): string => `${document.body.innerHTML.length} ${document.body.scrollHeight}`;
    for (let same = 0, before = ''; same < frames; ) {
      await new Promise((drawn) => requestAnimationFrame(drawn));
      const now = looks();
      same = now === before ? same + 1 : 0;
      before = now;
    }
  }, STILL_FRAMES);

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
        await show(opened.page, `#/${hash}`);
        await settled(opened.page);
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
      await show(page, '#/run');
      await page.locator('button.main-button').click();
      await runner.stand(1);
      faults.push(...(await found(opened, 'switched-on')));
      await page.locator('.start-button').last().click();
      await runner.runTo(8, 4);
      faults.push(...(await found(opened, 'face')));
      await endRun(page, async () => faults.push(...(await found(opened, 'asked'))));
      faults.push(...(await found(opened, 'over')));
      await page.locator('.run-over .buttons button').last().click();
      await show(page, '#/runs');
      await page.locator('.run-row').first().click();
      await page.locator('.review').waitFor();
      await settled(page);
      faults.push(...(await found(opened, 'review')));
      expect(faults).toEqual([]);
      await opened.close();
    });
  });
});
