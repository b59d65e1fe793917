import type { Locator, Page } from 'playwright-core';
import { type RoadRunner, roadRunner } from './roadRunner.ts';

/** From the screen of the run to its face: the position allowed, switched on, stood for a second, started. */
export const startRun = async (page: Page): Promise<RoadRunner> => {
  const runner = await roadRunner(page);
  await page.getByRole('button', { name: 'Switch on' }).click();
  await runner.stand(1);
  await page.getByRole('button', { name: /^Start/ }).click();
  return runner;
};

/** Presses on something until what the hold does is there: as long as the page takes, however busy the machine. */
export const holdUntil = async (
  held: Locator,
  done: Locator,
  state: 'visible' | 'detached' = 'visible',
): Promise<void> => {
  await held.hover();
  const { mouse } = held.page();
  await mouse.down();
  await done.waitFor({ state });
  await mouse.up();
};

/** Ends a run by its two holds, in any language. @param asked  is done when the page asks for the second */
export const endRun = async (page: Page, asked: () => Promise<unknown> = async () => {}): Promise<void> => {
  const stop = page.locator('.hold-button');
  const label = (await stop.textContent()) ?? '';
  await holdUntil(stop, stop.filter({ hasNotText: label }));
  await asked();
  await holdUntil(stop, page.locator('.run-over'));
};

/** The kinds of the calls in the summary of a run, the latest first. */
export const kindsCalled = (page: Page): Promise<readonly (string | null)[]> =>
  page.locator('.call').evaluateAll((calls) => calls.map((call) => call.getAttribute('data-kind')));
