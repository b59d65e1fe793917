import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export const freePort = async (): Promise<number> => {
  const server = createServer();
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  await new Promise((done) => server.close(done));
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
};

const XVFB = '/usr/bin/Xvfb';
const PULSE = '/usr/bin/pulseaudio';

/** What the machine lacks for browsers that want a screen and a loudspeaker; empty where nothing is. */
export const lacking = (): readonly string[] =>
  [XVFB, PULSE].filter((path) => !existsSync(path)).map((path) => `no ${path}`);

const until = async (there: () => boolean): Promise<void> => {
  for (const untilMs = Date.now() + 20_000; Date.now() < untilMs; ) {
    if (there()) return;
    await new Promise((done) => setTimeout(done, 50));
  }
  throw new Error('the pretended screen or loudspeaker did not begin');
};

/** A screen that nobody sees and a loudspeaker that nobody hears, in this process's environment; returns what ends them. */
export const pretendDevices = async (): Promise<() => void> => {
  const dir = mkdtempSync(join(tmpdir(), 'soundline-devices-'));
  const children: ChildProcess[] = [];
  const start = (path: string, args: readonly string[]): ChildProcess => {
    const env = { ...process.env, XDG_RUNTIME_DIR: dir, HOME: dir };
    const child = spawn(path, args, { stdio: ['ignore', 'pipe', 'ignore'], env });
    children.push(child);
    return child;
  };
  // The screen takes a free number itself and says which, on its standard output, once it is there.
  let display = '';
  start(XVFB, ['-displayfd', '1', '-screen', '0', '1400x1000x24', '-nolisten', 'tcp']).stdout?.on(
    'data',
    (told: Buffer) => {
      display += told.toString();
    },
  );
  const socket = join(dir, 'native');
  start(PULSE, [
    '-n',
    '--daemonize=no',
    '--exit-idle-time=-1',
    '-L',
    'module-null-sink',
    '-L',
    `module-native-protocol-unix auth-anonymous=1 socket=${socket}`,
  ]);
  const end = (): void => {
    for (const child of children) child.kill('SIGKILL');
    rmSync(dir, { recursive: true, force: true });
  };
  try {
    await until(() => existsSync(socket) && display.endsWith('\n'));
  } catch (error) {
    // Left alone they would hold this process open for good.
    end();
    throw error;
  }
  process.env['DISPLAY'] = `:${display.trim()}`;
  process.env['PULSE_SERVER'] = `unix:${socket}`;
  return end;
};
