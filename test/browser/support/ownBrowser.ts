import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { type BrowserContext, chromium } from 'playwright-core';
import { chromiumPath } from './chromium.ts';

/** A whole browser of a test's own, with a profile that outlives it, so that it can be killed as a system kills it. */
export interface OwnBrowser {
  readonly context: BrowserContext;
  /** SIGKILL to every process of it: nothing gets to say goodbye. */
  readonly kill: () => Promise<void>;
}

const ARGS = [
  '--headless=new',
  '--remote-debugging-port=0',
  '--no-first-run',
  '--no-default-browser-check',
  '--mute-audio',
  // As for an installed app: sound needs no touch.
  '--autoplay-policy=no-user-gesture-required',
  '--disable-gpu',
];

/** A profile directory, and what removes it. */
export const profile = (): { readonly path: string; readonly remove: () => void } => {
  const path = mkdtempSync(join(tmpdir(), 'soundline-profile-'));
  return {
    path,
    remove: () => rmSync(path, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }),
  };
};

const endpointOf = async (child: ChildProcess): Promise<string> => {
  if (child.stderr === null) throw new Error('the browser has no stderr');
  for await (const line of createInterface({ input: child.stderr })) {
    const found = /DevTools listening on (ws:\S+)/.exec(line);
    if (found?.[1]) return found[1];
  }
  throw new Error('the browser did not say where it listens');
};

/** @param more  arguments of the browser's command line besides the usual */
export const launchOwn = async (profilePath: string, more: readonly string[] = []): Promise<OwnBrowser> => {
  const root = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const args = [...ARGS, ...more, ...root, `--user-data-dir=${profilePath}`, 'about:blank'];
  const child = spawn(chromiumPath(), args, { detached: true, stdio: ['ignore', 'ignore', 'pipe'] });
  const { pid } = child;
  if (pid === undefined) throw new Error('the browser did not start');
  const browser = await chromium.connectOverCDP(await endpointOf(child));
  child.stderr?.resume();
  const context = browser.contexts()[0];
  if (context === undefined) throw new Error('the browser has no window');
  return {
    context,
    kill: async () => {
      const gone = once(child, 'exit');
      // The group is this browser's own: its processes and nobody else's.
      process.kill(-pid, 'SIGKILL');
      await gone;
      await browser.close().catch(() => {});
    },
  };
};
