import { parseArgs } from 'node:util';
import { err, ok, type Result } from '../core/units/result.ts';

/** What the command line asks for. */
export interface Options {
  readonly plan: string | null;
  readonly fixes: string | null;
  readonly course: string | null;
  readonly json: boolean;
  readonly trace: boolean;
  readonly seed: number | null;
  readonly help: boolean;
}

export const HELP = `Rehearse a race: runs the engine of the page over a recorded or simulated run, faster than real
time, and prints what the runner would have heard.

  npm run --silent rehearse -- [--plan FILE] [--fixes FILE] [--course FILE] [--json] [--trace] [--seed N]

  --plan FILE    a race plan or a practice session (JSON); left out: the built-in demo
  --fixes FILE   a recorded run: a fix log (.jsonl) or a GPX 1.1 track with times; left out: a simulated run of the plan
  --course FILE  the course line (GPX 1.1); left out: the plan's own, else distance comes from the fixes alone
  --json         JSON lines instead of the call sheet
  --trace        with --json: also the estimate after every fix
  --seed N       the chance of the simulated run, a whole number
  --help         this text

Exit status: 0 rehearsed; 2 an input is bad, with one line on standard error that says which and why.
`;

/** Node's first sentence; an option that lacks its value in our words. */
const reasonOf = (e: unknown): string => {
  const first = e instanceof Error ? (e.message.split(/[.\n]/)[0] ?? '') : String(e);
  const [, option, what] = /^Option '(--\w+).*(ambiguous|missing)$/.exec(first) ?? [];
  if (option === undefined) return first;
  return `${option}: expected a value, found ${what === 'missing' ? 'nothing' : 'a word that begins with a dash'}`;
};

/** The command line's words to options, or one line that says what is wrong with them. */
export const readOptions = (args: readonly string[]): Result<Options, string> => {
  try {
    const { values } = parseArgs({
      args: [...args],
      strict: true,
      allowPositionals: false,
      options: {
        plan: { type: 'string' },
        fixes: { type: 'string' },
        course: { type: 'string' },
        json: { type: 'boolean', default: false },
        trace: { type: 'boolean', default: false },
        seed: { type: 'string' },
        help: { type: 'boolean', short: 'h', default: false },
      },
    });
    if (values.seed !== undefined && !/^\d{1,9}$/.test(values.seed)) {
      return err(
        `--seed: expected a whole number of at most nine digits, found ${JSON.stringify(values.seed)}`,
      );
    }
    for (const name of ['plan', 'fixes', 'course'] as const)
      if (values[name] === '') return err(`--${name}: expected a file, found an empty name`);
    return ok({
      plan: values.plan ?? null,
      fixes: values.fixes ?? null,
      course: values.course ?? null,
      json: values.json,
      trace: values.trace,
      seed: values.seed === undefined ? null : Number(values.seed),
      help: values.help,
    });
  } catch (e) {
    return err(`${reasonOf(e)}; see --help`);
  }
};
