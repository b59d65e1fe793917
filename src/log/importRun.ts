import { parseGpx } from '../core/course/gpx.ts';
import { thinned } from '../core/course/gpxThin.ts';
import { type LinePoint, measureLine } from '../core/course/line.ts';
import { tidy } from '../core/course/tidy.ts';
import { legM } from '../core/geo/ruler.ts';
import { asImported } from '../core/plan/importedPlan.ts';
import { parsePlanFile } from '../core/plan/parseRacePlan.ts';
import { withLanguage } from '../core/plan/planLanguage.ts';
import type { RunInput } from '../core/run/settings.ts';
import { type DoorError, err, ok, type Result } from '../core/units/result.ts';
import { type KeptRun, parseBackup } from './exportBackup.ts';
import { parseFixLog } from './fixLog.ts';
import { writeLogLine } from './logLine.ts';
import { recordingOf } from './recordedTrack.ts';

/** Runs from a file, and what of it could not be used. */
export interface Imported {
  readonly runs: readonly KeptRun[];
  readonly skipped: number;
}

/** What a run is given that came without a plan: a name where it has none either, and the language it would be called in. */
export interface Unnamed {
  readonly name: string;
  /** BCP 47 tag. */
  readonly language: string;
}

const ENGLISH: Unnamed = { name: 'Imported run', language: 'en' };

/** Degrees to six decimals are a decimetre. */
const DECIMALS = 6;

/** Nobody runs so fast: a receiver's memory of another place, not a leg. */
const QUICKEST_MPS = 12;

type Timed = LinePoint & { readonly timeMs: number };

/** The way that was run: without a fix from the receiver's memory at its beginning, or points thrown aside on it. */
const wayOf = (inputs: readonly RunInput[]): readonly LinePoint[] => {
  const fixes = inputs.flatMap((i): Timed[] =>
    i.type === 'fix' ? [{ ...i.fix, elevationM: i.fix.altitudeM, timeMs: i.atMs }] : [],
  );
  const begun = fixes.findIndex((p, i) => {
    const next = fixes[i + 1];
    return next !== undefined && legM(p, next) * 1000 <= QUICKEST_MPS * (next.timeMs - p.timeMs);
  });
  return thinned(tidy(fixes.slice(Math.max(0, begun))));
};

/** A run that is none: shorter than a review could say anything about, or not to be run. */
const NO_RUN: DoorError = {
  place: 'the file',
  expected: 'a run of at least 500 m and a minute',
  found: 'less',
};
const tooQuick = (distanceM: number, goalS: number): DoorError => ({
  place: 'the file',
  expected: 'a run at a pace that a human can run',
  found: `${(distanceM / 1000).toFixed(1)} km, ${(goalS / 60).toFixed(1)} min`,
});

/**
 * The plan file of a run that came without one: its own way in its own time, so that its review is of evenness. The way is
 * its course: without it the distance is reckoned from the fixes, comes out shorter than the track that wanders, and the
 * run would seem broken off.
 */
const ownPlanFile = (
  name: string,
  language: string,
  inputs: readonly RunInput[],
): Result<string, DoorError> => {
  const points = wayOf(inputs);
  const line = measureLine(points, 1);
  const [first, last] = [inputs[0], inputs.at(-1)];
  if (line === null || first === undefined || last === undefined || line.recordedM < 500) return err(NO_RUN);
  const start = inputs.find((i) => i.type === 'event' && i.event === 'start');
  const goalS = (last.atMs - (start ?? first).atMs) / 1000;
  if (!(goalS > 60)) return err(NO_RUN);
  const distanceM = Math.round(line.recordedM);
  const plan = { version: 1, kind: 'race', name, distanceM, goalS: Math.round(goalS), pacing: 'pace' };
  const way = points.map((p) => [
    Number(p.latitudeDeg.toFixed(DECIMALS)),
    Number(p.longitudeDeg.toFixed(DECIMALS)),
    p.elevationM,
  ]);
  const withWay = JSON.stringify({ ...plan, course: { points: way } });
  const text = [withWay, JSON.stringify(plan)].find((plain) => parsePlanFile(plain).ok);
  return text === undefined
    ? err(tooQuick(distanceM, goalS))
    : ok(withLanguage(asImported(`${text}\n`), language));
};

/** Enough of a foreign file to tell which one was taken by mistake. */
const SHOWN_CHARS = 12;

const beginsWith = (text: string): string => {
  const start = text.trim().slice(0, SHOWN_CHARS);
  return start === '' ? 'nothing' : `text that begins with ${JSON.stringify(start)}`;
};

const keptOf = (
  { name, language }: Unnamed,
  inputs: readonly RunInput[],
  planFile: string | null,
): Result<KeptRun, DoorError> => {
  const plan = planFile === null ? ownPlanFile(name, language, inputs) : ok(planFile);
  const first = inputs[0];
  if (!plan.ok) return plan;
  return first === undefined
    ? err(NO_RUN)
    : ok({ id: Math.round(first.atMs), planFile: plan.value, lines: inputs.map(writeLogLine) });
};

/**
 * Runs from a file of any of our kinds: a backup or a single run with its plan, a fix log, or a GPX track with times
 * from anywhere. It is told by what is in it, not by its name.
 * @param planFile  the plan to review a log or a track against; null: its own distance in its own time
 */
export const importRuns = (
  text: string,
  planFile: string | null,
  unnamed: Unnamed = ENGLISH,
): Result<Imported, DoorError> => {
  if (/^\uFEFF?\s*</.test(text)) {
    const gpx = parseGpx(text);
    if (!gpx.ok) return gpx;
    const recording = recordingOf(gpx.value);
    if (!recording.ok) return recording;
    const { inputs, skipped } = recording.value;
    const name = gpx.value.tracks[0]?.name ?? gpx.value.name ?? unnamed.name;
    const run = keptOf({ ...unnamed, name }, inputs, planFile);
    return run.ok ? ok({ runs: [run.value], skipped }) : run;
  }
  if (/^\uFEFF?\s*\{\s*"format"/.test(text)) {
    const got = parseBackup(text);
    return got.ok ? ok({ runs: got.value.runs, skipped: got.value.cut ? 1 : 0 }) : got;
  }
  const log = parseFixLog(text);
  if (!log.ok)
    return /^\uFEFF?\s*\{/.test(text)
      ? log
      : err({
          place: 'the file',
          expected: 'a GPX track or a run saved by Soundline',
          found: beginsWith(text),
        });
  const run = keptOf(unnamed, log.value.inputs, planFile);
  return run.ok ? ok({ runs: [run.value], skipped: log.value.skipped }) : run;
};
