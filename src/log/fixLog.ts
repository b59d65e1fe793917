import type { RunInput } from '../core/run/settings.ts';
import { type DoorError, err, ok, type Result } from '../core/units/result.ts';
import { onFirstClock } from './clockSet.ts';
import { type LineFault, type LogEntry, readLogLine } from './logLine.ts';
import { arrivalTimesMs, countsSeconds, onDeviceClock, repairEpoch, undoSetBack } from './logTimes.ts';

/** A day at ten fixes a second is 150 MB; a race at one a second is 2 MB. */
const MAX_LOG_CHARS = 64_000_000;

/** A log as the engine eats it, and what of it could not be used. */
export interface FixLog {
  /** In order of arrival; `atMs` never falls. */
  readonly inputs: readonly RunInput[];
  /** Lines left out. */
  readonly skipped: number;
  /** Why, the first few: `line 17: expected coords.latitude in degrees, -90 to 90, found null`. */
  readonly faults: readonly string[];
}

const MAX_FAULTS_KEPT = 5;

const isEntry = (x: LogEntry | LineFault): x is LogEntry => 'type' in x;

/** An entry with its times put right. A fix keeps the receiver's time beside the time of its arrival. */
const inputOf = (entry: LogEntry, timestampMs: number, atMs: number): RunInput => {
  switch (entry.type) {
    case 'fix':
      return { type: 'fix', atMs, fix: { ...entry.fix, timestampMs } };
    case 'event':
      return { type: 'event', atMs, event: entry.event };
    case 'motion':
      return { type: 'motion', atMs, stepHz: entry.stepHz };
    case 'heart':
      return { type: 'heart', atMs, bpm: entry.bpm };
    case 'footPod':
      return { type: 'footPod', atMs, speedMps: entry.speedMps, stepsPerMin: entry.stepsPerMin };
    case 'clock':
      return { type: 'clock', atMs };
    case 'notice':
      return { type: 'notice', atMs, what: entry.what };
    case 'setting': {
      const { talk, quietUntilMs } = entry;
      return {
        type: 'setting',
        atMs,
        ...(talk === undefined ? {} : { talk }),
        ...(quietUntilMs === undefined ? {} : { quietUntilMs }),
      };
    }
  }
};

/** Times of arrival: as logged where every line has one, else from the timestamps. Never falling. */
const timesOf = (entries: readonly LogEntry[]): { readonly stampsMs: number[]; readonly atMs: number[] } => {
  const repaired = repairEpoch([
    ...entries.map((e) => e.timestampMs),
    ...entries.flatMap((e) => (e.receivedMs === null ? [] : [e.receivedMs])),
  ]).slice(0, entries.length);
  if (entries.every((e) => e.receivedMs !== null)) {
    let clock = Number.NEGATIVE_INFINITY;
    const atMs = entries.map((e) => {
      clock = Math.max(clock, e.receivedMs ?? clock);
      return clock;
    });
    return { stampsMs: repaired, atMs };
  }
  const stampsMs = undoSetBack(onFirstClock(entries, repaired));
  const pressed = entries.map((e) => e.type !== 'fix');
  return { stampsMs, atMs: arrivalTimesMs(onDeviceClock(stampsMs, pressed)) };
};

/** What is left of a run where no line from a sensor could be read: what the runner pressed. */
const isPress = ({ type }: LogEntry): boolean => type === 'event' || type === 'setting';

/**
 * A fix log's text (`.jsonl`, one object a line) to inputs. A damaged line is skipped and counted; only a log is refused
 * in which no line can be used, or none but presses beside damaged ones, by its first bad line; and one whose times are
 * not in milliseconds. Never throws.
 */
export const parseFixLog = (text: string): Result<FixLog, DoorError> => {
  if (text.length > MAX_LOG_CHARS) {
    return err({ place: 'the file', expected: 'at most 64 MB of fixes', found: `${text.length} characters` });
  }
  const entries: LogEntry[] = [];
  const lineOf: number[] = [];
  const faults: DoorError[] = [];
  let skipped = 0;
  for (const [i, line] of text.split(/\r\n|\n|\r/).entries()) {
    const trimmed = line.replace(/^\uFEFF/, '').trim();
    if (trimmed === '') continue;
    const got = readLogLine(trimmed);
    if (isEntry(got)) {
      entries.push(got);
      lineOf.push(i + 1);
    } else {
      skipped++;
      if (faults.length < MAX_FAULTS_KEPT) faults.push({ place: `line ${i + 1}`, ...got });
    }
  }
  if (entries.length === 0 || (skipped > 0 && entries.every(isPress))) {
    return err(
      faults[0] ?? { place: 'line 1', expected: 'a fix or an event as a JSON object', found: 'nothing' },
    );
  }
  const firstFix = entries.findIndex((e) => e.type === 'fix');
  if (countsSeconds(entries.flatMap((e) => (e.type === 'fix' ? [e.timestampMs] : [])))) {
    return err({
      place: `line ${lineOf[firstFix]}`,
      expected: 'timestamp in milliseconds',
      found: `${entries[firstFix]?.timestampMs}: seconds`,
    });
  }
  const { stampsMs, atMs } = timesOf(entries);
  const inputs = entries.map((e, i) => inputOf(e, stampsMs[i] ?? e.timestampMs, atMs[i] ?? e.timestampMs));
  const said = faults.map((f) => `${f.place}: expected ${f.expected}, found ${f.found}`);
  return ok({ inputs, skipped, faults: said });
};
