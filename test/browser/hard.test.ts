import { expect, test } from 'vitest';
import { wordsHeard } from './support/heard.ts';
import { open } from './support/open.ts';
import { PIER_MILE } from './support/plans.ts';
import { startRun } from './support/runOnPage.ts';

test('where the browser keeps nothing at all, the run goes on, and both eye and ear are told', async () => {
  const { page, complaints, close } = await open('#/run', {
    before: (context) =>
      context.addInitScript(() => {
        const denied = () => {
          throw new DOMException('denied', 'SecurityError');
        };
        Object.defineProperty(window, 'localStorage', { get: denied });
        IDBFactory.prototype.open = denied;
      }),
  });
  await (await startRun(page)).runTo(8, 4);
  await page.locator('.face-strip', { hasText: 'not recorded' }).waitFor({ timeout: 10_000 });
  await expect
    .poll(() => wordsHeard(page), { timeout: 45_000 })
    .toContainEqual(expect.stringContaining('not recording'));
  expect(complaints).toEqual([]);
  await close();
});

test('position that is taken away in mid-run is told once, and the clock goes on', async () => {
  const { page, close } = await open('#/run', { plan: PIER_MILE });
  await (await startRun(page)).runTo(8, 4);
  const cdp = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  await page.context().clearPermissions();
  await cdp.send('Browser.setPermission', {
    permission: { name: 'geolocation' },
    setting: 'denied',
    origin,
  });
  const refusals = async (): Promise<number> =>
    (await wordsHeard(page)).filter((words) => words.includes('position refused')).length;
  await expect.poll(refusals, { timeout: 45_000 }).toBe(1);
  const shown = (): Promise<string | null> => page.locator('.face-figures .figure').first().textContent();
  const before = await shown();
  await expect.poll(shown, { timeout: 5000 }).not.toBe(before);
  expect(await refusals()).toBe(1);
  await close();
}, 90_000);
