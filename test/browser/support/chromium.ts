import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Where systems put a Chromium, most likely first. */
const USUAL_PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome-stable',
  '/usr/bin/google-chrome',
  '/opt/google/chrome/chrome',
  '/snap/bin/chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

const found = (): string | undefined => USUAL_PLACES.find((path) => existsSync(path));

const installOnDebian = (): void => {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return;
  for (const args of [['update'], ['install', '-y', '--no-install-recommends', 'chromium']]) {
    spawnSync('apt-get', args, {
      stdio: 'inherit',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  }
};

/**
 * The browser that the tests drive: CHROME_PATH, else the usual places, else (as root on Debian) installed by apt.
 * @throws Error that says in one line what to do
 */
export const chromiumPath = (): string => {
  const asked = process.env['CHROME_PATH'];
  if (asked !== undefined && asked !== '') {
    if (existsSync(asked)) return asked;
    throw new Error(
      `CHROME_PATH is ${asked}, where there is no file: point it to a Chromium or Chrome, or unset it.`,
    );
  }
  const there = found();
  if (there !== undefined) return there;
  installOnDebian();
  const installed = found();
  if (installed !== undefined) return installed;
  throw new Error(
    'The browser tests need Chromium: install it (Debian: apt-get install chromium) or set CHROME_PATH.',
  );
};
