import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium } from 'playwright-core';
import { build, preview } from 'vite';
import { chromiumPath } from '../../browser/support/chromium.ts';

/** The production build, served, and browsers of the bench's own. */
export interface Served {
  readonly origin: string;
  /** A browser that has just been started, as on a phone that did something else before. */
  readonly launch: () => Promise<Browser>;
  readonly close: () => Promise<void>;
}

export const serveBuild = async (): Promise<Served> => {
  const outDir = mkdtempSync(join(tmpdir(), 'soundline-bench-'));
  await build({ logLevel: 'warn', build: { outDir, emptyOutDir: true } });
  const server = await preview({
    logLevel: 'warn',
    build: { outDir },
    preview: { port: 4289, host: '127.0.0.1' },
  });
  const args = [
    ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
    // As for an installed app: sound needs no touch.
    '--autoplay-policy=no-user-gesture-required',
  ];
  const address = server.httpServer.address();
  if (address === null || typeof address === 'string') throw new Error('the server has no port');
  return {
    origin: `http://localhost:${address.port}`,
    launch: () => chromium.launch({ executablePath: chromiumPath(), args }),
    close: async () => {
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
};
