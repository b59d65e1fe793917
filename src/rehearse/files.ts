import { existsSync, readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { type DoorError, err, ok, type Result, sayDoorError } from '../core/units/result.ts';
import { decodeText } from '../log/decodeText.ts';

/** Refused by its size before it is read. */
export const MAX_PLAN_BYTES = 1_000_000;
export const MAX_RECORDING_BYTES = 64_000_000;

const notReadable = (e: unknown): string => {
  const code = e instanceof Error && 'code' in e ? e.code : '';
  if (code === 'ENOENT') return 'no such file';
  if (code === 'EACCES') return 'no permission to read it';
  return e instanceof Error ? e.message : String(e);
};

/** npm runs a command in the project's folder and says here where it was called from: that is what a name is meant from. */
const whereMeant = (file: string): string => {
  const from = process.env['INIT_CWD'];
  const meant = from === undefined ? file : resolve(from, file);
  return existsSync(meant) ? meant : file;
};

/**
 * Reads a file and parses it; the error is one line that begins with the file's name.
 * @param maxBytes  a longer file is refused unread
 */
export const readThrough = <T>(
  file: string,
  maxBytes: number,
  parse: (text: string) => Result<T, DoorError>,
): Result<T, string> => {
  const say = (e: DoorError): Result<never, string> => err(`${file}: ${sayDoorError(e)}`);
  const path = whereMeant(file);
  try {
    const stat = statSync(path);
    if (!stat.isFile())
      return err(`${file}: expected a file, found ${stat.isDirectory() ? 'a folder' : 'a device'}`);
    if (stat.size > maxBytes) {
      const mb = (bytes: number): string => `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`;
      return say({ place: 'the file', expected: `at most ${mb(maxBytes)}`, found: mb(stat.size) });
    }
    const text = decodeText(readFileSync(path));
    if (!text.ok) return say(text.error);
    const parsed = parse(text.value);
    return parsed.ok ? ok(parsed.value) : say(parsed.error);
  } catch (e) {
    return err(`${file}: ${notReadable(e)}`);
  }
};
