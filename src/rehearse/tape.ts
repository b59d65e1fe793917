import { parseGpx } from '../core/course/gpx.ts';
import { courseOfGpx } from '../core/course/gpxCourse.ts';
import { type CourseLine, measureLine } from '../core/course/line.ts';
import type { Input } from '../core/estimate/input.ts';
import { parsePlanFile } from '../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import { type Believed, believedIn } from '../core/run/believed.ts';
import type { RunInput } from '../core/run/settings.ts';
import { type DoorError, err, ok, type Result } from '../core/units/result.ts';
import { demoCourse } from '../demo/course.ts';
import { DEMO_PEN_S, DEMO_SEED, demoDeadM, demoPlan, demoPresses, demoRunner } from '../demo/race.ts';
import { parseFixLog } from '../log/fixLog.ts';
import { recordingOf } from '../log/recordedTrack.ts';
import { NO_PRESSES, simulate } from '../sensors/simulated.ts';
import { OPEN_SKY, TOWN } from '../sensors/simulatedReceiver.ts';
import { roadOf } from '../sensors/simulatedRoad.ts';
import { STEADY } from '../sensors/simulatedRunner.ts';
import { MAX_PLAN_BYTES, MAX_RECORDING_BYTES, readThrough } from './files.ts';
import { isNear } from './near.ts';
import type { Options } from './options.ts';

/** Everything a rehearsal needs. */
export interface Tape {
  readonly plan: RacePlan;
  readonly course: CourseLine | null;
  /** What the plan file of a run keeps of phone, pod and runner. */
  readonly believed: Believed;
  readonly inputs: readonly RunInput[];
  /** Lines or points of the recording that were left out. */
  readonly skipped: number;
  /** What the reader of the call sheet should know of the inputs. */
  readonly notes: readonly string[];
}

type Recorded = Pick<Tape, 'inputs' | 'skipped'> & { readonly faults: readonly string[] };

/** A recording is told by its first character, not by its name. */
export const readRecording = (text: string): Result<Recorded, DoorError> => {
  if (!/^\s*</.test(text)) return parseFixLog(text);
  const gpx = parseGpx(text);
  return gpx.ok ? recordingOf(gpx.value) : gpx;
};

/** A line this much longer or shorter is the course of another race, or half of one out and back: the rest would be invented. */
const MOST_TIMES_AS_LONG = 1.8;
/** From here on the reader is told: a recording is off by 3 % at most. */
const MUCH_MISMATCH = 0.05;

const km = (m: number): string => `${(m / 1000).toFixed(2)} km`;

const readCourse =
  (officialM: number) =>
  (text: string): Result<CourseLine, DoorError> => {
    const gpx = parseGpx(text);
    if (!gpx.ok) return gpx;
    const got = courseOfGpx(gpx.value, officialM);
    if (!got.ok) return got;
    const times = 1 + got.value.mismatch;
    return Math.max(times, 1 / times) <= MOST_TIMES_AS_LONG
      ? got
      : err({
          place: 'the file',
          expected: `a line of about ${km(officialM)}, as the plan has it`,
          found: km(times * officialM),
        });
  };

const mismatchNotes = (course: CourseLine | null): readonly string[] => {
  if (course === null || Math.abs(course.mismatch) < MUCH_MISMATCH) return [];
  const share = `${Math.round(100 * Math.abs(course.mismatch))} %`;
  return [`the course line is ${share} too ${course.mismatch > 0 ? 'long' : 'short'}: scaled to the race`];
};

const demoRun = (course: CourseLine, seed: number): readonly Input[] =>
  simulate({
    plan: demoPlan,
    line: course,
    runner: demoRunner,
    receiver: { ...TOWN, deadM: demoDeadM },
    presses: demoPresses,
    penS: DEMO_PEN_S,
    seed,
  }).inputs;

/** Without a line the way is known to some ten metres: who has crossed the finish ends the run by hand, this much later. */
const PRESSED_AFTER_S = 3;

const simulatedRun = (plan: RacePlan, course: CourseLine | null, seed: number): readonly Input[] => {
  const { inputs, truth, startMs } = simulate({
    plan,
    line: course ?? roadOf(plan.distanceM, seed),
    runner: STEADY,
    receiver: OPEN_SKY,
    presses: NO_PRESSES,
    penS: DEMO_PEN_S,
    seed,
  });
  const finishS = truth.crossingS(plan.distanceM);
  if (course !== null || finishS === null) return inputs;
  const atMs = Math.round(startMs + 1000 * (finishS + PRESSED_AFTER_S));
  const behind = inputs.findIndex((input) => input.atMs > atMs);
  const stop: Input = { type: 'event', atMs, event: 'stop' };
  return behind < 0 ? [...inputs, stop] : inputs.toSpliced(behind, 0, stop);
};

interface Planned {
  readonly plan: RacePlan;
  readonly own: CourseLine | null;
  readonly believed: Believed;
}

/** The plan and the line of its own course: the demo's where no file is named. */
const loadPlan = (file: string | null): Result<Planned, string> => {
  if (file === null) return ok({ plan: demoPlan, own: demoCourse(), believed: {} });
  return readThrough(file, MAX_PLAN_BYTES, (text) => {
    const got = parsePlanFile(text);
    if (!got.ok) return got;
    const { plan, course } = got.value;
    const own = course && measureLine(course, plan.distanceM);
    return course !== null && own === null
      ? err({ place: 'course.points', expected: 'two points or more, apart', found: 'one place' })
      : ok({ plan, own, believed: believedIn(text) });
  });
};

/** Reads or makes the plan, the course and the inputs; the error is one line that names the file and the place in it. */
export const loadTape = (options: Options): Result<Tape, string> => {
  const planned = loadPlan(options.plan);
  if (!planned.ok) return planned;
  const { plan, own, believed } = planned.value;
  const named =
    options.course === null
      ? ok(null)
      : readThrough(options.course, MAX_RECORDING_BYTES, readCourse(plan.distanceM));
  if (!named.ok) return named;
  const course = named.value ?? own;
  if (options.fixes === null) {
    const seed = options.seed ?? DEMO_SEED;
    const isDemo = options.plan === null && named.value === null && own !== null;
    const inputs = isDemo ? demoRun(own, seed) : simulatedRun(plan, course, seed);
    const notes = [`a simulated run, seed ${seed}`, ...mismatchNotes(course)];
    return ok({ plan, course, believed, inputs, skipped: 0, notes });
  }
  const recorded = readThrough(options.fixes, MAX_RECORDING_BYTES, readRecording);
  if (!recorded.ok) return recorded;
  const { inputs, skipped, faults } = recorded.value;
  const notes = [...mismatchNotes(course), ...faults.map((f) => `left out: ${f}`)];
  if (course === null || isNear(course, inputs))
    return ok({ plan, course, believed, inputs, skipped, notes });
  if (named.value !== null)
    return err(`${options.course}: the file: expected a course where the run was, found one elsewhere`);
  const elsewhere = 'a run elsewhere: the course is not used';
  return ok({ plan, course: null, believed, inputs, skipped, notes: [...notes, elsewhere] });
};
