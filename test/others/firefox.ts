import { once } from 'node:events';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startGroup, within } from './group.ts';
import { type OtherPage, otherPage, type Wire } from './webDriver.ts';

const PLACES = [
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
];
const START_WITHIN_MS = 60_000;

/** Where Firefox is; null where it is not. */
export const firefoxPath = (): string | null =>
  [process.env['FIREFOX_PATH'] ?? '', ...PLACES].find((path) => path !== '' && existsSync(path)) ?? null;

/** A free port is found by Firefox, and no page of its own asks the network. Position is refused without a question. */
const PREFERENCES = `
user_pref('marionette.port', 0);
user_pref('app.normandy.enabled', false);
user_pref('browser.shell.checkDefaultBrowser', false);
user_pref('datareporting.policy.dataSubmissionEnabled', false);
user_pref('permissions.default.geo', 2);
user_pref('toolkit.telemetry.reportingpolicy.firstRun', false);
`;

type Reply = readonly [
  type: number,
  id: number,
  error: { error: string; message: string } | null,
  value: unknown,
];

const GONE = { error: 'gone', message: 'Firefox shut its socket' };

/** Marionette: W3C WebDriver's commands as JSON over a socket, each after its length and a colon. */
const marionette = async (socket: Socket): Promise<Wire['send']> => {
  let got = Buffer.alloc(0);
  let nextId = 1;
  const waiting = new Map<number, (reply: Reply) => void>();
  let hello: () => void = () => {};
  const greeted = new Promise<void>((done) => {
    hello = done;
  });
  let isShut = false;
  // A browser that crashed answers nobody any more.
  const shut = (): void => {
    isShut = true;
    for (const [id, answer] of waiting) answer([1, id, GONE, null]);
  };
  socket.on('error', () => {});
  socket.on('close', shut);
  socket.on('data', (bytes) => {
    got = Buffer.concat([got, bytes]);
    for (;;) {
      const colon = got.indexOf(':');
      const length = Number(got.subarray(0, Math.max(0, colon)).toString());
      if (colon < 0 || got.length < colon + 1 + length) return;
      const message: unknown = JSON.parse(got.subarray(colon + 1, colon + 1 + length).toString());
      got = got.subarray(colon + 1 + length);
      if (!Array.isArray(message)) hello();
      else waiting.get((message as unknown as Reply)[1])?.(message as unknown as Reply);
    }
  });
  await within(START_WITHIN_MS, 'Firefox greets', greeted);
  const ask = (name: string, given: unknown): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const id = nextId++;
      waiting.set(id, ([, , error, value]) => {
        waiting.delete(id);
        if (error) reject(new Error(`${error.error}: ${error.message}`));
        else resolve(value);
      });
      const text = JSON.stringify([0, id, name, given]);
      socket.write(`${Buffer.byteLength(text)}:${text}`);
      if (isShut) shut();
    });
  await ask('WebDriver:NewSession', { strictFileInteractability: false, timeouts: { script: 60_000 } });
  return async (command, given) => {
    const value = await ask(`WebDriver:${command}`, given);
    // A bare value stands in an object of its own.
    return typeof value === 'object' && value !== null && 'value' in value ? value.value : value;
  };
};

const portOf = async (profile: string): Promise<number> => {
  const file = join(profile, 'MarionetteActivePort');
  for (const untilMs = Date.now() + START_WITHIN_MS; Date.now() < untilMs; ) {
    const port = existsSync(file) ? Number(readFileSync(file, 'utf8')) : 0;
    if (port > 0) return port;
    await new Promise((done) => setTimeout(done, 100));
  }
  throw new Error('Firefox did not say where it listens');
};

export const openFirefox = async (path: string): Promise<OtherPage> => {
  const profile = mkdtempSync(join(tmpdir(), 'soundline-firefox-'));
  writeFileSync(join(profile, 'user.js'), PREFERENCES);
  const group = startGroup(path, ['--headless', '--marionette', '--profile', profile, 'about:blank']);
  let socket: Socket | null = null;
  const end = async (): Promise<void> => {
    socket?.destroy();
    await group.end();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  };
  try {
    socket = connect(await portOf(profile), '127.0.0.1');
    await within(START_WITHIN_MS, 'the socket of Firefox', once(socket, 'connect'));
    return otherPage({ send: await marionette(socket), end });
  } catch (error) {
    await end();
    throw error;
  }
};
