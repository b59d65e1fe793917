import { parseGpx } from '../core/course/gpx.ts';
import type { Call } from '../core/cues/call.ts';
import { parseAnyPlan } from '../core/plan/parsePracticePlan.ts';
import type { PracticeCourse } from '../core/plan/practiceCourse.ts';
import type { PracticePlan } from '../core/plan/practicePlan.ts';
import type { Going } from '../core/practice/going.ts';
import { beginPractice, goingOf, practiceView } from '../core/practice/practice.ts';
import { practiceFlush, practiceStep } from '../core/practice/step.ts';
import { practiceCourseOfGpx } from '../core/practice/way/fromGpx.ts';
import { layCourse, roadOn } from '../core/practice/way/lay.ts';
import { type Believed, believedIn } from '../core/run/believed.ts';
import type { RunInput } from '../core/run/settings.ts';
import { type DoorError, ok, type Result } from '../core/units/result.ts';
import { metresPer } from '../core/units/units.ts';
import { spoken as english } from '../languages/en/spoken.ts';
import { SESSION_STEADY, simulateSession } from '../sensors/simulatedPractice.ts';
import { OPEN_SKY } from '../sensors/simulatedReceiver.ts';
import { voiceOf } from '../voice/utter.ts';
import { clock, onOneLine } from './callSheet.ts';
import { MAX_PLAN_BYTES, MAX_RECORDING_BYTES, readThrough } from './files.ts';
import { cueLine, type End, rounded, withEnd } from './jsonLines.ts';
import type { Options } from './options.ts';
import { readRecording } from './tape.ts';

const PEN_S = 10;
const SEED = 1;

/** A session, and what its file keeps of phone and pod. */
interface Planned {
  readonly plan: PracticePlan;
  readonly believed: Believed;
}

const readCourse = (text: string): Result<PracticeCourse, DoorError> => {
  const gpx = parseGpx(text);
  return gpx.ok ? practiceCourseOfGpx(gpx.value, '') : gpx;
};

/** The plan with the course that is named beside it instead of its own. */
const onCourse = (plan: PracticePlan, file: string | null): Result<PracticePlan, string> => {
  if (file === null) return ok(plan);
  const got = readThrough(file, MAX_RECORDING_BYTES, readCourse);
  return got.ok ? ok({ ...plan, course: got.value }) : got;
};

/** The plan file as a session; null where it is none, or no file is named. */
export const practicePlanOf = (options: Options): Result<Planned | null, string> => {
  if (options.plan === null) return ok(null);
  return readThrough(options.plan, MAX_PLAN_BYTES, (text) => {
    const got = parseAnyPlan(text);
    if (!got.ok) return got;
    return ok(got.value.kind === 'practice' ? { plan: got.value.plan, believed: believedIn(text) } : null);
  });
};

interface Trace {
  readonly atMs: number;
  readonly going: Going | null;
  readonly ahead: { readonly aheadS: number; readonly sdS: number } | null;
}

type Outcome = { readonly call: Call } | { readonly trace: Trace };

const sheet = (
  plan: PracticePlan,
  outcomes: readonly Outcome[],
  zeroMs: number,
  notes: readonly string[],
  end: End,
): string => {
  const rows = outcomes.flatMap((o) =>
    'trace' in o
      ? []
      : [
          [
            clock((o.call.startMs - zeroMs) / 1000, true).padStart(10),
            clock((o.call.endMs - zeroMs) / 1000, true).padStart(10),
            o.call.saying.kind.padEnd(10),
            o.call.utterance.text === '' ? '(tone)' : o.call.utterance.text,
          ].join('  '),
        ],
  );
  const km = (end.distanceM / metresPer(plan.unit)).toFixed(2);
  return `${[
    onOneLine(plan.name),
    `${plan.legs.length} legs`,
    ...courseNote(plan),
    ...notes,
    '',
    `${'sound from'.padStart(10)}  ${'to'.padStart(10)}  ${'kind'.padEnd(10)}  words`,
    ...rows,
    '',
    end.finishS === null ? 'not done to the end' : `done: ${clock(end.finishS, true)}`,
    `way: ${km} ${plan.unit}`,
    `calls: ${rows.length}`,
    `fixes: ${end.fixes}${end.skipped > 0 ? `, ${end.skipped} left out` : ''}`,
  ].join('\n')}\n`;
};

/** What the reader of the call sheet should know of the course. */
const courseNote = ({ course, place }: PracticePlan): string[] => {
  if (course === undefined) return [];
  if (place === 'indoors') return ['indoors: the course is not used'];
  const laid = layCourse(course);
  if (laid === null) return [];
  return [
    `on ${course.name === '' ? 'its course' : onOneLine(course.name)}: ${Math.round(laid.lengthM)} m, ${laid.lapM === null ? 'one way' : 'again and again'}`,
  ];
};

const json = (outcomes: readonly Outcome[], zeroMs: number, end: End): string => {
  const lines = outcomes.map((o) =>
    'call' in o
      ? cueLine(o.call, zeroMs)
      : {
          type: 'trace',
          tS: rounded((o.trace.atMs - zeroMs) / 1000),
          distanceM: rounded(o.trace.going?.distanceM ?? 0),
          distanceSdM: rounded(o.trace.going?.distanceSdM ?? 0),
          speedMps: rounded(o.trace.going?.speedMps ?? 0),
          aheadS: o.trace.ahead && rounded(o.trace.ahead.aheadS),
          aheadSdS: o.trace.ahead && rounded(o.trace.ahead.sdS),
        },
  );
  return withEnd(
    lines,
    outcomes.flatMap((o) => ('call' in o ? [o.call] : [])),
    end,
  );
};

interface Session {
  readonly inputs: readonly RunInput[];
  readonly skipped: number;
  readonly notes: readonly string[];
}

const loadSession = (plan: PracticePlan, options: Options): Result<Session, string> => {
  if (options.fixes === null) {
    const seed = options.seed ?? SEED;
    const sim = simulateSession({
      plan,
      runner: SESSION_STEADY,
      receiver: OPEN_SKY,
      penS: PEN_S,
      seed,
      podShare: null,
      road: plan.course === undefined ? null : roadOn(plan.course),
    });
    return ok({ inputs: sim.inputs, skipped: 0, notes: [`a simulated session, seed ${seed}`] });
  }
  const got = readThrough(options.fixes, MAX_RECORDING_BYTES, readRecording);
  if (!got.ok) return got;
  const { inputs, skipped, faults } = got.value;
  return ok({ inputs, skipped, notes: faults.map((f) => `left out: ${f}`) });
};

/** A session rehearsed: the call sheet or JSON lines, or why not. */
export const rehearsePractice = (planned: Planned, options: Options): Result<string, string> => {
  const { believed } = planned;
  const named = onCourse(planned.plan, options.course);
  if (!named.ok) return named;
  const plan = named.value;
  const loaded = loadSession(plan, options);
  if (!loaded.ok) return loaded;
  const { inputs, skipped, notes } = loaded.value;
  let practice = beginPractice({
    plan,
    voice: voiceOf(english.pack, english.words),
    ...believed,
  });
  const outcomes: Outcome[] = [];
  for (const input of inputs) {
    const next = practiceStep(practice, input);
    practice = next.practice;
    for (const call of next.calls) outcomes.push({ call });
    if (options.json && options.trace && input.type === 'fix') {
      const { going, ahead } = practiceView(practice, practice.atMs);
      outcomes.push({ trace: { atMs: practice.atMs, going, ahead } });
    }
  }
  for (const call of practiceFlush(practice).calls) outcomes.push({ call });
  const { startMs, endMs, results } = practice;
  const zeroMs = startMs ?? inputs[0]?.atMs ?? 0;
  const isDone = endMs !== null && results.length === plan.legs.length;
  const end: End = {
    finishS: isDone ? (endMs - zeroMs) / 1000 : null,
    distanceM: goingOf(practice, practice.atMs)?.distanceM ?? 0,
    fixes: inputs.filter((i) => i.type === 'fix').length,
    skipped: skipped + practice.estimate.skipped,
  };
  return ok(options.json ? json(outcomes, zeroMs, end) : sheet(plan, outcomes, zeroMs, notes, end));
};
