import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { heardWords, spokenCalls } from './spoken.ts';
import { contextsOf, tapped } from './tap.ts';

/** The calls that were set so far, each by its words. */
export const wordsHeard = async (page: Page): Promise<readonly string[]> =>
  spokenCalls((await tapped(page)).started).map((call) => heardWords(call.words));

/** Waits until all that was set so far has sounded: the next call is not in the way of it. */
export const heardOut = async (page: Page): Promise<void> => {
  const restS = async (): Promise<number> => {
    const { started } = await tapped(page);
    const nowS = (await contextsOf(page)).at(-1)?.currentTime ?? 0;
    return Math.max(0, ...started.map((s) => s.whenS + (s.lengthS ?? s.bufferS) - nowS));
  };
  await expect.poll(restS, { timeout: 20_000 }).toBe(0);
};

/** Does something that the voice answers, and hears the answer out. */
export const answered = async (page: Page, act: () => Promise<unknown>): Promise<void> => {
  const before = (await wordsHeard(page)).length;
  await act();
  await expect.poll(async () => (await wordsHeard(page)).length, { timeout: 20_000 }).toBeGreaterThan(before);
  await heardOut(page);
};
