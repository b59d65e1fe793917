import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import pack from '../../src/languages/de/pack.json';
import { screen as german } from '../../src/languages/de/screen.ts';
import { offlineReady, open, SIZES, voiceKept, voiceLoaded } from './support/open.ts';

const chooser = (page: Page) => page.locator('.language select');
const heading = (page: Page) => page.getByRole('heading', { level: 1 });
const langOf = (page: Page): Promise<string> => page.evaluate(() => document.documentElement.lang);
const rehearse = String(german['Rehearse||verb']);

/** A browser that asks for these languages, the dearest first. */
const asksFor =
  (...languages: string[]) =>
  (context: BrowserContext) =>
    context.addInitScript((wanted) => {
      Object.defineProperty(navigator, 'languages', { get: () => wanted });
    }, languages);

const inGerman = (page: Page): Promise<void> => heading(page).filter({ hasText: rehearse }).waitFor();

describe('the language of the page', () => {
  test('is English until it is chosen, then German at once, after a reload, and without a network', async () => {
    const { page, complaints, close } = await open('#/rehearse');
    expect(await langOf(page)).toBe('en');
    expect(await heading(page).textContent()).toBe('Rehearse');
    expect(await chooser(page).locator('option').allTextContents()).toEqual(
      expect.arrayContaining(['Deutsch', 'English', 'Español', 'Français', 'Italiano']),
    );
    await offlineReady(page);
    await chooser(page).selectOption({ label: 'Deutsch' });
    await inGerman(page);
    expect(await langOf(page)).toBe('de');
    await page.reload();
    await inGerman(page);
    await voiceKept(page, pack.variants.normal.file);
    await page.context().setOffline(true);
    await page.reload();
    await inGerman(page);
    expect(await chooser(page).inputValue()).toBe('de');
    // The voice is there as well.
    await voiceLoaded(page);
    expect(await page.locator('.language .note').count()).toBe(0);
    expect(complaints).toEqual([]);
    await close();
  });

  test('follows the browser on the first visit, and asks for no other voice and no other texts', async () => {
    const { page, requests, close } = await open('#/rehearse', { before: asksFor('nl', 'de-AT', 'en') });
    await inGerman(page);
    expect(await langOf(page)).toBe('de');
    await voiceLoaded(page);
    await offlineReady(page);
    const voices = requests
      .filter((address) => address.endsWith('.mp3'))
      .map((address) => address.split('/').at(-1));
    expect(new Set(voices)).toEqual(new Set([pack.variants.normal.file]));
    // One script with the texts, one with the words and the places of the clips.
    expect(requests.filter((address) => /\/screen-/.test(address))).toHaveLength(1);
    expect(requests.filter((address) => /\/spoken-/.test(address))).toHaveLength(1);
    await close();
  });

  test('is English where the browser asks for none that is here', async () => {
    const { page, requests, close } = await open('#/rehearse', { before: asksFor('nl') });
    await page.locator('.language').waitFor();
    expect(await heading(page).textContent()).toBe('Rehearse');
    expect(requests.filter((address) => /screen-/.test(address))).toEqual([]);
    await close();
  });

  test.each(Object.entries(SIZES))('the chooser fits on a %s', async (_, size) => {
    const { page, close } = await open('#/run', { size });
    await chooser(page).scrollIntoViewIfNeeded();
    const box = await chooser(page).boundingBox();
    expect(box && box.x >= 0 && box.x + box.width <= size.width).toBe(true);
    expect(box?.height).toBeGreaterThanOrEqual(44);
    await close();
  });
});
