import { spawnSync } from 'node:child_process';
import { chromiumPath } from './chromium.ts';

/*
 * The first step of `npm test`: the browser is looked for, and asked whether it runs, before minutes of other tests; where
 * there is none, one line says what to do.
 */

const whyNot = (): string | null => {
  try {
    const path = chromiumPath();
    const { status, error, stderr } = spawnSync(path, ['--version'], { encoding: 'utf8' });
    if (status === 0) return null;
    const reason = (error?.message ?? stderr ?? '').trim().split('\n')[0] ?? '';
    return `${path} does not run (${reason}): point CHROME_PATH to a Chromium or Chrome.`;
  } catch (e) {
    return e instanceof Error ? e.message : String(e);
  }
};

const why = whyNot();
if (why !== null) {
  process.stderr.write(`${why}\n`);
  process.exitCode = 1;
}
