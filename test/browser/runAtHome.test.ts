import { describe, expect, test } from 'vitest';
import { open } from './support/open.ts';
import { spokenCalls } from './support/spoken.ts';
import { leftOfRuns } from './support/stored.ts';
import { tapped } from './support/tap.ts';

const PLAN = { version: 1, kind: 'race', name: 'Pier dash', distanceM: 170, goalS: 36, pacing: 'pace' };

describe('where the browser gives no position', () => {
  test('says so, and the clock runs all the same', async () => {
    const opened = await open('#/run', {
      plan: PLAN,
      before: (context) =>
        context.addInitScript(() => {
          navigator.wakeLock.request = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
        }),
    });
    const { page } = opened;
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Browser.setPermission', { permission: { name: 'geolocation' }, setting: 'denied' });
    await page.getByRole('button', { name: 'Switch on' }).click();
    await page.getByText('Position refused').waitFor();
    await page.getByText('Screen may go dark').waitFor();
    await page.getByRole('button', { name: 'Start' }).click();
    await page.getByText('No position: by the clock').waitFor();
    await expect
      .poll(() => page.locator('.face-figures .figure').first().textContent(), { timeout: 10_000 })
      .toMatch(/^0:0[2-9]$/);
    await opened.close();
  });
});

describe('the day, practised at home', () => {
  test('goes through the very same screens with a simulated runner, and leaves no run behind', async () => {
    const opened = await open('#/run', { plan: { ...PLAN, distanceM: 70, goalS: 16, checkpointsM: [40] } });
    const { page } = opened;
    await page.getByRole('button', { name: 'Practise the day at home' }).click();
    await page.getByText('A simulated runner waits for your start').waitFor();
    await page.getByText(/^Position/).waitFor();
    await page.getByRole('button', { name: /^Start/ }).click();
    await page.locator('.face .sounding').waitFor();
    await page.getByRole('heading', { name: 'Finished' }).waitFor({ timeout: 55_000 });
    expect(spokenCalls((await tapped(page)).started).at(-1)?.words).toMatch(/^finish/);
    await page.getByRole('button', { name: 'Done' }).click();
    await expect.poll(() => leftOfRuns(page)).toEqual([0, 0, 0]);
    expect(opened.complaints).toEqual([]);
    await opened.close();
  }, 90_000);
});
