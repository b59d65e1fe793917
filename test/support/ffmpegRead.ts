import { spawnSync } from 'node:child_process';
import { accessSync, chmodSync, constants, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** What ffmpeg makes of a sound file. */
export interface Read {
  /** Mono samples at the file's own rate. */
  readonly samples: Float32Array;
  /** Everything that it had to say at level 'warning' and worse. */
  readonly complaints: string;
  /** What it tells of the file before it reads it: format, length, tags. */
  readonly facts: string;
}

const binary = (): string => {
  const { path } = createRequire(import.meta.url)('@ffmpeg-installer/ffmpeg') as { path: string };
  try {
    accessSync(path, constants.X_OK);
  } catch {
    chmodSync(path, 0o755);
  }
  return path;
};

const run = (args: readonly string[]): string => {
  const { stderr, status } = spawnSync(binary(), ['-hide_banner', '-nostats', ...args], { encoding: 'utf8' });
  if (status !== 0 && !stderr.includes('At least one output file')) throw new Error(stderr.slice(-600));
  return stderr;
};

/** Reads a sound file with ffmpeg, as a file, so that it can look at its length. `args` come before the input. */
export const readSound = (mp3: Uint8Array, args: readonly string[] = []): Read => {
  const folder = mkdtempSync(join(tmpdir(), 'sound-'));
  try {
    const file = join(folder, 'in.mp3');
    const out = join(folder, 'out.raw');
    writeFileSync(file, mp3);
    const facts = run(['-i', file]);
    const complaints = run(['-loglevel', 'warning', ...args, '-i', file, '-f', 'f32le', '-ac', '1', out]);
    return { facts, complaints, samples: new Float32Array(new Uint8Array(readFileSync(out)).buffer) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
