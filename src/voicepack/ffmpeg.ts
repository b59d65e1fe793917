import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, chmodSync, constants } from 'node:fs';
import { createRequire } from 'node:module';

const MOST_BYTES = 2 ** 28;

/** The binary of the installer's package. Install scripts may not have run, so its execute bit may have to be set here. */
const binary = (): string => {
  const { path } = createRequire(import.meta.url)('@ffmpeg-installer/ffmpeg') as { path: string };
  try {
    accessSync(path, constants.X_OK);
  } catch {
    chmodSync(path, 0o755);
  }
  return path;
};

/** Runs ffmpeg with `input` on its standard input; returns its standard output. Throws with its last words. */
export const ffmpeg = (args: readonly string[], input: Uint8Array): Buffer =>
  execFileSync(binary(), ['-hide_banner', '-loglevel', 'error', '-y', ...args], {
    input,
    maxBuffer: MOST_BYTES,
    stdio: ['pipe', 'pipe', 'pipe'],
  });

/** Loudness of a sound file by EBU R 128. */
export interface Loudness {
  /** Integrated, LUFS. */
  readonly lufs: number;
  /** True peak, dBTP. */
  readonly truePeakDb: number;
}

/** Measures any sound file that ffmpeg reads; `args` come before the input (its format, where it is raw). */
export const loudness = (args: readonly string[], input: Uint8Array): Loudness => {
  const { stderr } = spawnSync(
    binary(),
    [
      '-hide_banner',
      '-nostats',
      ...args,
      '-i',
      'pipe:0',
      '-filter:a',
      'ebur128=peak=true',
      '-f',
      'null',
      '-',
    ],
    { input, maxBuffer: MOST_BYTES, encoding: 'utf8' },
  );
  const summary = stderr.slice(stderr.lastIndexOf('Summary:'));
  const lufs = /I:\s+(-?[\d.]+) LUFS/.exec(summary)?.[1];
  const peak = /Peak:\s+(-?[\d.]+) dBFS/.exec(summary)?.[1];
  if (lufs === undefined || peak === undefined)
    throw new Error(`ffmpeg measured no loudness: ${stderr.slice(-400)}`);
  return { lufs: Number(lufs), truePeakDb: Number(peak) };
};
