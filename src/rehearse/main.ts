import { ok, type Result } from '../core/units/result.ts';
import { englishPack } from '../voice/packs/english.ts';
import { voiceOf } from '../voice/utter.ts';
import { callSheet } from './callSheet.ts';
import { jsonLines } from './jsonLines.ts';
import { HELP, readOptions } from './options.ts';
import { rehearse } from './rehearse.ts';
import { loadTape } from './tape.ts';

const BAD_INPUT = 2;

/** One line, whatever a file name or a value in it holds. */
const oneLine = (why: string): string => `rehearse: ${why.replace(/\s+/g, ' ')}\n`;

/** What goes to standard output, or why not. */
const output = (args: readonly string[]): Result<string, string> => {
  const options = readOptions(args);
  if (!options.ok) return options;
  if (options.value.help) return ok(HELP);
  const tape = loadTape(options.value);
  if (!tape.ok) return tape;
  const { plan, course, inputs, skipped, notes } = tape.value;
  const { json, trace } = options.value;
  const rehearsal = rehearse({ plan, course, voice: voiceOf(englishPack) }, inputs, json && trace);
  return ok(json ? jsonLines(rehearsal, skipped) : callSheet(rehearsal, plan, skipped, notes));
};

const out = output(process.argv.slice(2));
if (out.ok) process.stdout.write(out.value);
else {
  process.stderr.write(oneLine(out.error));
  process.exitCode = BAD_INPUT;
}
