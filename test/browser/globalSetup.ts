import { rmSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { chromiumPath } from './support/chromium.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Origin of the served production build, without a slash at the end. */
    origin: string;
    /** Where the build lies. */
    outDir: string;
    /** Where the one browser listens for the tests. */
    browserAt: string;
  }
}

/** Apart from `dist`, so that a run of the tests does not change what `npm start` serves; and each run its own. */
const OUT_DIR = `node_modules/.soundline-browser-test/${process.pid}`;

interface Site {
  readonly origin: string;
  readonly browserAt: string;
  readonly close: () => Promise<void>;
}

const setUp = async (): Promise<Site> => {
  // As it is shipped: under the tests' own NODE_ENV the build would carry names for debugging, 7 kB of them.
  const { NODE_ENV } = process.env;
  process.env['NODE_ENV'] = 'production';
  await build({ logLevel: 'warn', build: { outDir: OUT_DIR, emptyOutDir: true } });
  process.env['NODE_ENV'] = NODE_ENV;
  const server = await preview({
    logLevel: 'warn',
    build: { outDir: OUT_DIR },
    preview: { port: 4189, host: '127.0.0.1' },
  });
  const browser = await chromium.launchServer({
    executablePath: chromiumPath(),
    // Chromium's sandbox refuses to run as root, as in a container.
    args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
  });
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  return {
    // Geolocation wants a secure context: localhost counts as one.
    origin: `http://localhost:${address.port}`,
    browserAt: browser.wsEndpoint(),
    close: async () => {
      await browser.close();
      await server.close();
      rmSync(OUT_DIR, { recursive: true, force: true });
    },
  };
};

/** This file is loaded once for each project of the browser tests; the process has one site for all of them. */
const shared = globalThis as { soundlineSite?: { readonly site: Promise<Site>; users: number } };

/** One production build, one server and one browser for all browser tests. */
export default async ({ provide }: TestProject): Promise<() => Promise<void>> => {
  shared.soundlineSite ??= { site: setUp(), users: 0 };
  const mine = shared.soundlineSite;
  mine.users++;
  const site = await mine.site;
  provide('origin', site.origin);
  provide('outDir', OUT_DIR);
  provide('browserAt', site.browserAt);
  return async () => {
    mine.users--;
    if (mine.users === 0) await site.close();
  };
};
