import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startGroup } from './group.ts';
import { freePort } from './machine.ts';
import { type OtherPage, otherPage, type Wire } from './webDriver.ts';

const DRIVER = '/usr/bin/WebKitWebDriver';
const START_WITHIN_MS = 60_000;

export interface WebKitPlaces {
  readonly driver: string;
  readonly browser: string;
}

/** Where WebKitGTK's driver and its MiniBrowser are; null where they are not. */
export const webKitPlaces = (): WebKitPlaces | null => {
  if (!existsSync(DRIVER)) return null;
  const browser = readdirSync('/usr/lib')
    .flatMap((arch) =>
      ['webkit2gtk-4.1', 'webkitgtk-6.0'].map((kind) => `/usr/lib/${arch}/${kind}/MiniBrowser`),
    )
    .find((path) => existsSync(path));
  return browser === undefined ? null : { driver: DRIVER, browser };
};

/** Where a command stands in the driver's own addresses (W3C WebDriver, section 5). */
const ROUTES: Record<Parameters<Wire['send']>[0], (id: string) => readonly [method: string, path: string]> = {
  Navigate: () => ['POST', '/url'],
  Refresh: () => ['POST', '/refresh'],
  ExecuteAsyncScript: () => ['POST', '/execute/async'],
  FindElement: () => ['POST', '/element'],
  ElementClick: (id) => ['POST', `/element/${id}/click`],
  ElementClear: (id) => ['POST', `/element/${id}/clear`],
  ElementSendKeys: (id) => ['POST', `/element/${id}/value`],
  PerformActions: () => ['POST', '/actions'],
  SetWindowRect: () => ['POST', '/window/rect'],
  TakeScreenshot: () => ['GET', '/screenshot'],
  DeleteSession: () => ['DELETE', ''],
};

/** Longer than the longest script of a page may take. */
const ANSWER_WITHIN_MS = 70_000;

const ask = async (url: string, method: string, given: unknown): Promise<unknown> => {
  const response = await fetch(url, {
    method,
    // The driver answers a command when its page does: one that hangs would hold it for five minutes.
    signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
    ...(method === 'POST'
      ? { body: JSON.stringify(given), headers: { 'Content-Type': 'application/json' } }
      : {}),
  });
  const { value } = (await response.json()) as { value: unknown };
  if (!response.ok) {
    const { error, message } = value as { error: string; message: string };
    throw new Error(`${error}: ${message}`);
  }
  return value;
};

const answers = async (url: string): Promise<void> => {
  for (const untilMs = Date.now() + START_WITHIN_MS; Date.now() < untilMs; ) {
    if (
      await fetch(`${url}/status`, { signal: AbortSignal.timeout(5000) }).then(
        (r) => r.ok,
        () => false,
      )
    )
      return;
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error('WebKitWebDriver does not answer');
};

export const openWebKit = async ({ driver, browser }: WebKitPlaces): Promise<OtherPage> => {
  const home = mkdtempSync(join(tmpdir(), 'soundline-webkit-'));
  const port = await freePort();
  const group = startGroup(driver, [`--port=${port}`], {
    ...process.env,
    HOME: home,
    XDG_CACHE_HOME: home,
    XDG_DATA_HOME: home,
    XDG_CONFIG_HOME: home,
  });
  const end = async (): Promise<void> => {
    await group.end();
    rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  };
  const url = `http://127.0.0.1:${port}`;
  try {
    await answers(url);
    const options = { binary: browser, args: ['--automation'] };
    const { sessionId } = (await ask(`${url}/session`, 'POST', {
      capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': options, timeouts: { script: 60_000 } } },
    })) as { sessionId: string };
    return otherPage({
      send: (command, given) => {
        const [method, path] = ROUTES[command](String(given['id'] ?? ''));
        return ask(`${url}/session/${sessionId}${path}`, method, given);
      },
      end,
    });
  } catch (error) {
    await end();
    throw error;
  }
};
