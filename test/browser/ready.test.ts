import { describe, expect, test } from 'vitest';
import { sidewaysPx } from './support/fits.ts';
import { open, SIZES, voiceLoaded } from './support/open.ts';
import { roadRunner } from './support/roadRunner.ts';
import { spokenCalls } from './support/spoken.ts';
import { tapped } from './support/tap.ts';

describe('the check before the start', () => {
  test('tries everything, ends in one word, and leads to the start', async () => {
    const { page, complaints, close } = await open('#/ready');
    const runner = await roadRunner(page);
    await voiceLoaded(page);
    await page.getByRole('button', { name: 'Begin the check' }).click();
    await page.getByText('Nothing yet.').waitFor();
    await runner.stand(1);
    await page.getByText('To 4 m.').waitFor();
    await page.getByText('Stays on.').waitFor();
    await page.getByText('Still open: sound.').waitFor();
    await page.getByRole('button', { name: 'Play the sample' }).click();
    await page.getByText('Did you hear it?').waitFor();
    await expect.poll(async () => spokenCalls((await tapped(page)).started).length).toBe(1);
    await page.getByRole('button', { name: 'No', exact: true }).click();
    await page.getByRole('heading', { name: 'Not ready yet' }).waitFor();
    await page.getByText('Not ready: sound.').waitFor();
    await page.getByRole('button', { name: 'Play the sample' }).click();
    await page.getByRole('button', { name: 'Yes' }).click();
    await page.getByRole('heading', { name: 'Ready', exact: true }).waitFor();
    await page.getByText('Works without a network.').waitFor({ timeout: 20_000 });
    await page.getByRole('link', { name: 'To the start' }).click();
    await page.getByRole('button', { name: 'Switch on' }).waitFor();
    expect(complaints).toEqual([]);
    await close();
  });

  test('measures how late the earphones are by the taps of a finger', async () => {
    const { page, close } = await open('#/ready');
    await voiceLoaded(page);
    await page.getByRole('button', { name: 'Begin the check' }).click();
    await page.getByRole('button', { name: 'Measure' }).click();
    await page.getByRole('button', { name: 'Tap with each beat' }).waitFor();
    // A finger that is 180 ms late, on the beats that the loudspeaker really got.
    const beats = await page.evaluate(async () => {
      const { tap } = window as unknown as {
        tap: { started: { pageMs: number; whenS: number; nowS: number; bufferS: number }[] };
      };
      const sounds = tap.started.filter((s) => s.bufferS > 0.01);
      const at = sounds.map((s) => s.pageMs + 1000 * (s.whenS - s.nowS));
      const pad = document.querySelector('.tap-here');
      for (const ms of at) {
        await new Promise((done) => setTimeout(done, Math.max(0, ms + 180 - performance.now())));
        pad?.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true }));
      }
      return at.length;
    });
    expect(beats).toBe(8);
    const said = page.getByText(/About -?\d+ ms, your finger included/);
    await said.waitFor({ timeout: 10_000 });
    const lateMs = Number(/About (-?\d+)/.exec((await said.textContent()) ?? '')?.[1]);
    expect(lateMs).toBeGreaterThan(120);
    expect(lateMs).toBeLessThan(300);
    await close();
  });

  test('says what to do where position and screen lock are refused', async () => {
    const { page, close } = await open('#/ready', {
      before: (context) =>
        context.addInitScript(() => {
          navigator.wakeLock.request = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
        }),
    });
    const cdp = await page.context().newCDPSession(page);
    await cdp.send('Browser.setPermission', { permission: { name: 'geolocation' }, setting: 'denied' });
    await page.getByRole('button', { name: 'Begin the check' }).click();
    await page.getByText('Not ready: position, screen.').waitFor();
    await page.getByText('Allow it for this page').waitFor();
    await page.getByText('Switch low-power mode off.').waitFor();
    await close();
  });

  test.each(Object.entries(SIZES))('fits on a %s', async (_name, size) => {
    const { page, close } = await open('#/ready', { size });
    await page.getByRole('button', { name: 'Begin the check' }).click();
    await page.getByRole('link', { name: 'To the start all the same' }).waitFor();
    expect(await sidewaysPx(page)).toBe(0);
    await close();
  });
});
