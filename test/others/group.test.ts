import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { startGroup, within } from './group.ts';

let dir = '';
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'soundline-group-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

const lives = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return !/\) Z /.test(readFileSync(`/proc/${pid}/stat`, 'utf8'));
  } catch {
    return false;
  }
};

/** A shell that starts a sleeper and says its number in a file. */
const sleeper = async (then: string) => {
  const file = join(dir, 'pid');
  const group = startGroup('/bin/sh', [
    '-c',
    `sleep 300 & echo $! > ${file}.new; mv ${file}.new ${file}; ${then}`,
  ]);
  while (!existsSync(file)) await new Promise((done) => setTimeout(done, 10));
  return { group, pid: Number(readFileSync(file, 'utf8')) };
};

describe('a browser of the tests', () => {
  test('ends with all that it started', async () => {
    const { group, pid } = await sleeper('wait');
    expect(lives(pid)).toBe(true);
    await group.end();
    await expect.poll(() => lives(pid)).toBe(false);
    await group.end();
  });

  test('that crashed before can be ended all the same, with what it left behind', async () => {
    const { group, pid } = await sleeper('kill -SEGV $$');
    await new Promise((done) => setTimeout(done, 200));
    expect(lives(pid)).toBe(true);
    await group.end();
    await expect.poll(() => lives(pid)).toBe(false);
  });

  test('that is not there is no reason to wait', async () => {
    await startGroup(join(dir, 'none'), []).end();
  });

  test('is not waited for longer than is said', async () => {
    await expect(within(20, 'a page that hangs', new Promise(() => {}))).rejects.toThrow('a page that hangs');
    expect(await within(1000, 'a page', Promise.resolve(7))).toBe(7);
  });
});
