import type { Page } from 'playwright-core';

/** How far the page reaches out of the screen to the right, CSS pixels. */
export const sidewaysPx = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
