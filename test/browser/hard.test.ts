import { expect, test } from 'vitest';
import { open } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';
import { heardWords, spokenCalls } from './support/spoken.ts';
import { tapped } from './support/tap.ts';

const PLAN = { version: 1, kind: 'race', name: 'Pier mile', distanceM: 1600, goalS: 400, pacing: 'pace' };

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
  const runner = await roadRunner(page);
  await page.getByRole('button', { name: 'Switch on' }).click();
  await runner.stand(1);
  await page.getByRole('button', { name: /^Start/ }).click();
  await runner.runTo(20, 4);
  await page.locator('.face-strip', { hasText: 'not recorded' }).waitFor({ timeout: 10_000 });
  const words = async (): Promise<string> =>
    spokenCalls((await tapped(page)).started)
      .map((c) => heardWords(c.words))
      .join(' | ');
  await expect.poll(words, { timeout: 45_000 }).toMatch(/not recording/);
  expect(complaints).toEqual([]);
  await close();
});

test('position that is taken away in mid-run is told once, and the clock goes on', async () => {
  const { page, close } = await open('#/run', { plan: PLAN });
  const runner = await roadRunner(page);
  await page.getByRole('button', { name: 'Switch on' }).click();
  await runner.stand(1);
  await page.getByRole('button', { name: /^Start/ }).click();
  await runner.runTo(30, 4);
  const cdp = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  await page.context().clearPermissions();
  await cdp.send('Browser.setPermission', {
    permission: { name: 'geolocation' },
    setting: 'denied',
    origin,
  });
  const words = async (): Promise<string[]> =>
    spokenCalls((await tapped(page)).started).map((c) => heardWords(c.words));
  const refusals = async (): Promise<number> =>
    (await words()).filter((w) => w.includes('position refused')).length;
  await expect.poll(refusals, { timeout: 45_000 }).toBe(1);
  const shown = (): Promise<string | null> => page.locator('.face-figures .figure').first().textContent();
  const before = await shown();
  await expect.poll(shown, { timeout: 5000 }).not.toBe(before);
  expect(await refusals()).toBe(1);
  await close();
}, 90_000);
