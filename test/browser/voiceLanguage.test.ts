import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { spoken as english } from '../../src/languages/en/spoken.ts';
import { spoken as spanish } from '../../src/languages/es/spoken.ts';
import { spoken as italian } from '../../src/languages/it/spoken.ts';
import { type Opened, offlineReady, open, voiceKept, voiceLoaded } from './support/open.ts';
import { heardWords, spokenCalls } from './support/spoken.ts';
import { tapped } from './support/tap.ts';

const hearDemo = async (page: Page): Promise<void> => {
  await voiceLoaded(page);
  await page.getByLabel('60×').check();
  await page.locator('.helm button').first().click();
  await page.locator('.call .call-words').first().waitFor({ timeout: 20_000 });
};

const voicesAskedFor = ({ requests }: Opened): readonly string[] =>
  requests.filter((url) => /\/voice\/.*\.mp3/.test(url)).map((url) => new URL(url).pathname);

describe('the voice in another language', () => {
  test('says what the page shows, out of its own sound, and no other is fetched for the page', async () => {
    const opened = await open('', { language: 'es' });
    const { page, complaints } = opened;
    await hearDemo(page);
    await expect
      .poll(async () => spokenCalls((await tapped(page)).started, spanish.pack).length, { timeout: 30_000 })
      .toBeGreaterThanOrEqual(2);
    const shown = await page.locator('.call .call-words').allTextContents();
    const heard = spokenCalls((await tapped(page)).started, spanish.pack).map(({ words }) =>
      heardWords(words),
    );
    expect(heard[0]).toBe('el reloj corre');
    for (const words of heard.slice(0, 2)) expect(shown.map(heardWords)).toContain(words);
    expect(new Set(voicesAskedFor(opened))).toEqual(new Set([`/voice/${spanish.pack.variants.normal.file}`]));
    expect(complaints).toEqual([]);
    await opened.close();
  });

  test('follows the choice without a new visit', async () => {
    const { page, close } = await open('', { language: 'es' });
    await voiceLoaded(page);
    await page.locator('.language select').selectOption('it');
    await expect
      .poll(() => page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name)))
      .toContainEqual(expect.stringContaining(italian.pack.variants.normal.file));
    await expect.poll(() => page.locator('.language select').inputValue()).toBe('it');
    await page.locator('.language[data-voice="here"]').waitFor();
    await hearDemo(page);
    expect(await page.locator('.call .call-words').last().textContent()).toBe('Il cronometro va.');
    await expect
      .poll(async () => spokenCalls((await tapped(page)).started, italian.pack)[0]?.words ?? '')
      .toBe('il cronometro va');
    await close();
  });

  test('is there without a network on the second visit', async () => {
    const { page, close } = await open('', { language: 'it' });
    await offlineReady(page);
    await voiceKept(page, italian.pack.variants.normal.file);
    await page.context().setOffline(true);
    await page.goto(`${inject('origin')}/`);
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    await hearDemo(page);
    expect(await page.locator('.call .call-words').last().textContent()).toBe('Il cronometro va.');
    await close();
  });

  test('gives way to English where its sound cannot be had, and the page says so', async () => {
    const { page, close } = await open('', {
      language: 'es',
      before: (context) => context.route('**/voice/es-*.mp3', (route) => route.abort()),
    });
    await page.locator('.language [role="status"]').waitFor({ timeout: 20_000 });
    await hearDemo(page);
    expect(await page.locator('.call .call-words').last().textContent()).toBe('Clock running.');
    await expect
      .poll(async () => spokenCalls((await tapped(page)).started)[0]?.words ?? '')
      .toBe('clock running');
    await close();
  });
});

describe('the loud voice', () => {
  test('is chosen before a run, speaks from then on, and is there without a network on the second visit', async () => {
    const opened = await open('#/run');
    const { page, complaints, close } = opened;
    await voiceLoaded(page);
    await page.getByLabel('Loud voice').check();
    const loud = english.pack.variants.loud.file;
    await expect
      .poll(() => page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name)))
      .toContainEqual(expect.stringContaining(loud));
    await offlineReady(page);
    await voiceKept(page, loud);
    await page.context().setOffline(true);
    await page.goto(`${inject('origin')}/`);
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    await hearDemo(page);
    await expect
      .poll(async () => spokenCalls((await tapped(page)).started, english.pack)[0]?.words ?? '')
      .toBe('clock running');
    expect(complaints).toEqual([]);
    await close();
  });
});
