import type { RunConfig } from '../../core/run/run.ts';
import type { RunInput } from '../../core/run/settings.ts';
import { parseFixLog } from '../../log/fixLog.ts';
import { type LogStore, linesOf, type RunHead, type RunSnapshot } from '../../log/store.ts';
import { handOver } from './handOver.ts';
import type { Folded, RunCell } from './runCell.ts';
import type { ClockPair } from './runClock.ts';

/** A run whose page went away before its end. */
export interface Unfinished {
  readonly head: RunHead;
  readonly lines: readonly string[];
  /** Both clocks when it was last heard of. */
  readonly last: ClockPair;
  readonly snapshot: RunSnapshot | null;
}

/** Nobody runs on after this without having looked. */
const FORGOTTEN_MS = 6 * 3_600_000;

const hasBegun = (lines: readonly string[]): boolean =>
  lines.some((line) => /"event":"(start|gun)"/.test(line)) || lines.length > MANY_LINES;
/** Without a press the start is found from the fixes: so many are no waiting in a pen. */
const MANY_LINES = 120;

/** The latest run, if it has begun, is not over and not forgotten. Rejects where the store cannot be read. */
export const findUnfinished = async (store: LogStore, wallMs: number): Promise<Unfinished | null> => {
  const head = (await store.heads())[0];
  if (head === undefined || head.simulated === true) return null;
  const last = await store.lastBatch(head.id);
  if (last === null || last.over || wallMs - last.wallMs > FORGOTTEN_MS) return null;
  const [batches, snapshot] = await Promise.all([store.batches(head.id), store.snapshot(head.id)]);
  const lines = linesOf(batches);
  return hasBegun(lines) ? { head, lines, last, snapshot } : null;
};

/** What came in, by a log's lines; nothing where they are no log. */
export const inputsOf = (lines: readonly string[]): readonly RunInput[] => {
  const log = parseFixLog(lines.join('\n'));
  return log.ok ? log.value.inputs : [];
};

/**
 * Brings a fresh cell to where the run was: from the snapshot if this build made it and the log contains it, and from
 * the log alone otherwise. Then time passes up to the last sign of life, so that everything called by then counts as said.
 */
export const refoldRun = (unfinished: Unfinished, build: string, cell: RunCell): void => {
  const { lines, snapshot, last } = unfinished;
  const usable = snapshot !== null && snapshot.build === build && snapshot.lines <= lines.length;
  if (usable) cell.restore(snapshot.folded as Folded);
  cell.refold(inputsOf(usable ? lines.slice(snapshot.lines) : lines));
  cell.refold([{ type: 'clock', atMs: last.engineMs }]);
};

/** The same for later, once: then the log's lines are let go of, megabytes after some hours. */
export const refolding = (unfinished: Unfinished, build: string): ((cell: RunCell) => void) => {
  const left = handOver(unfinished);
  return (cell) => {
    const past = left();
    if (past !== null) refoldRun(past, build, cell);
  };
};

/** What a run's head holds, read again; null where this build cannot. */
export type ReadConfig = (planFile: string) => RunConfig | null;
