import { ok, type Result } from '../core/units/result.ts';
import { spoken as english } from '../languages/en/spoken.ts';
import { voiceOf } from '../voice/utter.ts';
import { callSheet, onOneLine } from './callSheet.ts';
import { jsonLines } from './jsonLines.ts';
import { HELP, readOptions } from './options.ts';
import { practicePlanOf, rehearsePractice } from './practice.ts';
import { rehearse } from './rehearse.ts';
import { loadTape } from './tape.ts';

/** What a command leaves behind. */
export interface Left {
  readonly stdout: string;
  readonly stderr: string;
  readonly status: 0 | 2;
}

/** One line, whatever a file name or a value in it holds. */
const oneLine = (why: string): string => `rehearse: ${onOneLine(why)}\n`;

/** What goes to standard output, or why not. */
const output = (args: readonly string[]): Result<string, string> => {
  const options = readOptions(args);
  if (!options.ok) return options;
  if (options.value.help) return ok(HELP);
  const practice = practicePlanOf(options.value);
  if (!practice.ok) return practice;
  if (practice.value !== null) return rehearsePractice(practice.value, options.value);
  const tape = loadTape(options.value);
  if (!tape.ok) return tape;
  const { plan, course, believed, inputs, skipped, notes } = tape.value;
  const { json, trace } = options.value;
  const rehearsal = rehearse(
    { plan, course, voice: voiceOf(english.pack, english.words), ...believed },
    inputs,
    json && trace,
  );
  return ok(json ? jsonLines(rehearsal, skipped) : callSheet(rehearsal, plan, skipped, notes));
};

/** The rehearsal command: 0 and the call sheet or JSON lines, or 2 and one line that says which input is bad and why. */
export const runCommand = (args: readonly string[]): Left => {
  const out = output(args);
  return out.ok
    ? { stdout: out.value, stderr: '', status: 0 }
    : { stdout: '', stderr: oneLine(out.error), status: 2 };
};
