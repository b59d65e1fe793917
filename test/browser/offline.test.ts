import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { offlineReady, open, voiceLoaded } from './support/open.ts';
import { endRun, startRun } from './support/runOnPage.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.mp3': 'audio/mpeg',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

/** A server of files that can be told to change a file, which is what a release does. */
const serve = async (from: string) => {
  const dir = mkdtempSync(join(tmpdir(), 'soundline-site-'));
  cpSync(from, dir, { recursive: true });
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    const file = join(dir, path === '/' ? 'index.html' : path);
    try {
      const body = readFileSync(file);
      response.writeHead(200, {
        'Content-Type': TYPES[extname(file)] ?? 'text/plain',
        'Cache-Control': 'no-cache',
      });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return {
    origin: `http://localhost:${address.port}`,
    dir,
    close: async () => {
      server.closeAllConnections();
      await new Promise((done) => server.close(done));
      rmSync(dir, { recursive: true, force: true });
    },
  };
};

describe('without a network', () => {
  test('a second visit opens, the voice speaks, and every screen is there', async () => {
    const { page, close } = await open('');
    await offlineReady(page);
    await page.context().setOffline(true);
    const navigation = (): Promise<number> =>
      page.evaluate(
        () => performance.getEntriesByType('navigation')[0]?.toJSON()['domContentLoadedEventEnd'] as number,
      );
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    const openedMs = await navigation();
    console.info(`offline reload: ${Math.round(openedMs)} ms`);
    await voiceLoaded(page);
    await offlineReady(page);
    await page.goto(`${inject('origin')}/#/share`);
    await page.locator('svg.code').waitFor();
    await page.goto(`${inject('origin')}/#/run`);
    await page.getByRole('button', { name: 'Switch on' }).waitFor();
    await close();
  });

  test('the days before a race are there, figures and all, and remember from screen to screen', async () => {
    const { page, close } = await open('');
    await offlineReady(page);
    await page.context().setOffline(true);
    await page.reload();
    const visit = async (screen: string, name: string): Promise<void> => {
      await page.goto(`${inject('origin')}/#/${screen}`);
      await page.getByRole('heading', { level: 1, name, exact: true }).waitFor();
    };
    const date = page.getByLabel('Date of the race');
    await visit('day', 'Race day');
    await date.fill('2027-05-02');
    await visit('goal', 'Goal');
    await visit('fuel', 'Fuel');
    await visit('paper', 'Paper');
    await visit('whatIf', 'What if');
    await visit('learn', 'The tones');
    await visit('day', 'Race day');
    expect(await date.inputValue()).toBe('2027-05-02');
    await close();
  });

  test('can be installed: a manifest with its icons, and a worker', async () => {
    const { page, close } = await open('');
    await offlineReady(page);
    const cdp = await page.context().newCDPSession(page);
    const { errors } = await cdp.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    const { installabilityErrors } = await cdp.send('Page.getInstallabilityErrors');
    // A private window, as every test has one, is never installable; nothing else may stand in the way.
    expect(installabilityErrors.map((e) => e.errorId).filter((id) => id !== 'in-incognito')).toEqual([]);
    await close();
  });
});

test('the first load is less than 150 kB of script, as it travels, the voice apart', () => {
  const html = readFileSync(join(inject('outDir'), 'index.html'), 'utf8');
  const scripts = [...html.matchAll(/(?:src|href)="(\/assets\/[^"]+\.js)"/g)].map((m) => m[1] ?? '');
  expect(scripts.length).toBeGreaterThan(0);
  const bytes = scripts.map((path) => gzipSync(readFileSync(join(inject('outDir'), path))).length);
  console.info(`first load: ${bytes.join(' + ')} bytes of script`);
  expect(bytes.reduce((sum, n) => sum + n, 0)).toBeLessThan(150_000);
});

describe('a newer version', () => {
  let site: Awaited<ReturnType<typeof serve>>;
  beforeAll(async () => {
    site = await serve(inject('outDir'));
  });
  afterAll(() => site.close());

  const release = (): void => {
    const worker = join(site.dir, 'sw.js');
    const script = readFileSync(worker, 'utf8');
    writeFileSync(worker, `${script}\n// another release ${script.length}`);
  };

  test('waits for the runner, never comes in a run, and is taken when they say so', async () => {
    const { page, close } = await open('');
    await page.goto(`${site.origin}/`);
    await offlineReady(page);
    // From here on the worker serves the page.
    await page.reload();
    await offlineReady(page);
    await page.goto(`${site.origin}/#/run`);
    const runner = await startRun(page);
    await page.locator('.face .sounding').waitFor();
    release();
    await page.evaluate(() => {
      Object.assign(window, { mine: true });
      document.dispatchEvent(new Event('visibilitychange'));
    });
    // Even where the browser finds it by itself, the run is not touched.
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await expect
      .poll(
        () => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.waiting !== null),
        { timeout: 20_000 },
      )
      .toBe(true);
    await runner.stand(1);
    expect(await page.locator('.face .sounding').count()).toBe(1);
    expect(await page.evaluate(() => 'mine' in window)).toBe(true);
    await endRun(page);
    await page.getByRole('button', { name: 'Done' }).click();
    await page.getByRole('button', { name: 'Take it now' }).click();
    await expect.poll(() => page.evaluate(() => 'mine' in window), { timeout: 15_000 }).toBe(false);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await close();
  });
});
