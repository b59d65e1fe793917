import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect, inject } from 'vitest';
import { tapSound } from './tap.ts';

/** Screens that the page must work on, CSS pixels. */
export const SIZES = {
  phone: { width: 360, height: 740 },
  desk: { width: 1280, height: 800 },
  wrist: { width: 200, height: 200 },
} as const;

export interface Opened {
  readonly page: Page;
  /** What the page complained of: uncaught errors, console errors, breaches of its own policy. */
  readonly complaints: readonly string[];
  /** Every address that the page asked for. */
  readonly requests: readonly string[];
  readonly close: () => Promise<void>;
}

interface Wish {
  readonly size?: { readonly width: number; readonly height: number };
  /** A plan file to find in the page's storage. */
  readonly plan?: object;
  /** Tag of the language that the runner chose. */
  readonly language?: string;
  /** Lets the test's own script into the page, which its policy would refuse. */
  readonly bypassPolicy?: boolean;
  /** Runs before the page's own scripts. */
  readonly before?: (context: BrowserContext) => Promise<unknown>;
}

let browser: Browser | null = null;

/** A fresh page of the built app, as if opened for the first time, with the tap on its sound. */
export const open = async (path: string, wish: Wish = {}): Promise<Opened> => {
  browser ??= await chromium.connect(inject('browserAt'));
  const context = await browser.newContext({
    viewport: wish.size ?? SIZES.phone,
    acceptDownloads: true,
    bypassCSP: wish.bypassPolicy ?? false,
  });
  const complaints: string[] = [];
  const requests: string[] = [];
  await wish.before?.(context);
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`policy: ${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  const page = await context.newPage();
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('request', (request) => requests.push(request.url()));
  await tapSound(page);
  const kept = {
    ...(wish.plan && { 'soundline.plan': JSON.stringify(wish.plan) }),
    ...(wish.language && { 'soundline.language': wish.language }),
  };
  await page.addInitScript((texts) => {
    for (const [key, text] of Object.entries(texts)) localStorage.setItem(key, text);
  }, kept);
  await page.goto(`${inject('origin')}/${path}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  return { page, complaints, requests, close: () => context.close() };
};

/** A hand near the page: what takes long is loaded at the first sign of one, and only after some seconds without. */
const stir = async (page: Page): Promise<void> => {
  await page.mouse.move(1, 1);
  await page.mouse.move(2, 2);
};

/** Waits until everything is stored that a visit without a network needs. */
export const offlineReady = async (page: Page): Promise<void> => {
  await stir(page);
  await page.locator('[data-offline="ready"]').waitFor({ timeout: 30_000 });
};

/** Waits until the voice has been loaded. */
export const voiceLoaded = async (page: Page): Promise<void> => {
  await stir(page);
  await page.locator('[data-sound]:not([data-sound="loading"])').waitFor({ state: 'attached' });
};

/** Waits until the file of a voice lies on the device: from then on it is there without a network. */
export const voiceKept = async (page: Page, file: string): Promise<void> => {
  const status = (): Promise<number | undefined> =>
    page.evaluate(async (path) => (await caches.match(path))?.status, `/voice/${file}`);
  await expect.poll(status, { timeout: 30_000 }).toBe(200);
};

/** Goes to a screen of an open page by its address, and waits until it is there. */
export const show = async (page: Page, hash: string): Promise<void> => {
  await page.evaluate((to) => {
    if (location.hash === to) return;
    document.querySelector('main')?.setAttribute('data-left', '');
    location.hash = to;
  }, hash);
  await page.locator('main:not([data-left]) h1').waitFor();
};
