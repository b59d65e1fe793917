import { parseJson } from '../core/plan/json.ts';
import { fields, listOf, numberThat, oneOf, orElse, type Read, textUpTo } from '../core/plan/shape.ts';
import { type DoorError, err, ok, type Result } from '../core/units/result.ts';

/** One run as it is kept: its plan file's text and its log's lines. */
export interface KeptRun {
  /** Epoch ms when it was made: its name. */
  readonly id: number;
  readonly planFile: string;
  readonly lines: readonly string[];
}

/** Everything on this device, as one file. */
export interface Backup {
  readonly runs: readonly KeptRun[];
  /** The page's own settings and plans, by key: text as it was stored. */
  readonly settings: Readonly<Record<string, string>>;
}

const FORMAT = 'soundline-backup';
const MAX_CHARS = 512_000_000;
const MAX_RUNS = 10_000;
const MAX_LINES = 2_000_000;
const MAX_LINE_CHARS = 4000;
const MAX_PLAN_CHARS = 1_000_000;

/** Head, settings, then for each run a head line and its log lines: a file that can be read line by line. */
export const backupText = ({ runs, settings }: Backup): string => {
  const head = JSON.stringify({ format: FORMAT, version: 1, settings });
  const rows = runs.flatMap(({ id, planFile, lines }) => [
    JSON.stringify({ run: id, planFile, lines: lines.length }),
    ...lines,
  ]);
  return `${[head, ...rows].join('\n')}\n`;
};

const anyText: Read<Readonly<Record<string, string>>> = (found) => {
  if (typeof found !== 'object' || found === null || Array.isArray(found)) return ok({});
  const texts = Object.entries(found).filter((e): e is [string, string] => typeof e[1] === 'string');
  return ok(Object.fromEntries(texts));
};

const headOf = fields({
  format: oneOf([FORMAT]),
  version: numberThat('1', (n) => n === 1),
  settings: orElse(anyText, {}),
});

const runHeadOf = fields({
  run: numberThat('a time in milliseconds', (n) => Number.isSafeInteger(n) && n >= 0),
  planFile: textUpTo(MAX_PLAN_CHARS),
  lines: numberThat('a count of lines', (n) => Number.isInteger(n) && n >= 0 && n <= MAX_LINES),
});

const at = (line: number, e: DoorError): DoorError => ({ ...e, place: `line ${line}: ${e.place}` });

/** A backup file's text; the error names the line. A file cut short keeps the runs that are whole. Never throws. */
export const parseBackup = (text: string): Result<Backup & { readonly cut: boolean }, DoorError> => {
  if (text.length > MAX_CHARS)
    return err({ place: 'the file', expected: 'at most 512 MB', found: `${text.length} characters` });
  const rows = text.replace(/^\uFEFF/, '').split(/\r\n|\n/);
  if (rows.at(-1) === '') rows.pop();
  const head = parseJson(rows[0] ?? '', (value) => headOf(value, ''));
  if (!head.ok) return err(at(1, head.error));
  const runs: KeptRun[] = [];
  let i = 1;
  while (i < rows.length && runs.length < MAX_RUNS) {
    const got = parseJson(rows[i] ?? '', (value) => runHeadOf(value, ''));
    // A file that ends in the midst of a line was cut; one that goes on is damaged.
    if (!got.ok)
      return i === rows.length - 1
        ? ok({ ...wholeOf(head.value, runs), cut: true })
        : err(at(i + 1, got.error));
    const { run: id, planFile, lines: count } = got.value;
    const lines = listOf(textUpTo(MAX_LINE_CHARS), MAX_LINES)(rows.slice(i + 1, i + 1 + count), 'log');
    if (!lines.ok) return err(at(i + 2, lines.error));
    if (lines.value.length < count) return ok({ ...wholeOf(head.value, runs), cut: true });
    runs.push({ id, planFile, lines: lines.value });
    i += 1 + count;
  }
  return ok({ ...wholeOf(head.value, runs), cut: false });
};

const wholeOf = (head: { readonly settings: Backup['settings'] }, runs: readonly KeptRun[]): Backup => ({
  runs,
  settings: head.settings,
});

/** One run as a file of its own: a backup with a single run and no settings. */
export const runFile = (run: KeptRun): string => backupText({ runs: [run], settings: {} });
