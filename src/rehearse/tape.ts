import { parseGpx } from '../core/course/gpx.ts';
import { courseOfGpx } from '../core/course/gpxCourse.ts';
import type { CourseLine } from '../core/course/line.ts';
import type { Input } from '../core/estimate/input.ts';
import { parseRacePlan } from '../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import { type DoorError, ok, type Result } from '../core/units/result.ts';
import { demoCourse } from '../demo/course.ts';
import { DEMO_PEN_S, DEMO_SEED, demoDeadM, demoPlan, demoPresses, demoRunner } from '../demo/race.ts';
import { parseFixLog } from '../log/fixLog.ts';
import { recordingOf } from '../sensors/recorded.ts';
import { NO_PRESSES, simulate } from '../sensors/simulated.ts';
import { OPEN_SKY, TOWN } from '../sensors/simulatedReceiver.ts';
import { roadOf } from '../sensors/simulatedRoad.ts';
import { STEADY } from '../sensors/simulatedRunner.ts';
import { MAX_PLAN_BYTES, MAX_RECORDING_BYTES, readThrough } from './files.ts';
import type { Options } from './options.ts';

/** Everything a rehearsal needs. */
export interface Tape {
  readonly plan: RacePlan;
  readonly course: CourseLine | null;
  readonly inputs: readonly Input[];
  /** Lines or points of the recording that were left out. */
  readonly skipped: number;
  /** What the reader of the call sheet should know of the inputs. */
  readonly notes: readonly string[];
}

type Recorded = Pick<Tape, 'inputs' | 'skipped'> & { readonly faults: readonly string[] };

/** A recording is told by its first character, not by its name. */
const readRecording = (text: string): Result<Recorded, DoorError> => {
  if (!/^\s*</.test(text)) return parseFixLog(text);
  const gpx = parseGpx(text);
  return gpx.ok ? recordingOf(gpx.value) : gpx;
};

const readCourse =
  (officialM: number) =>
  (text: string): Result<CourseLine, DoorError> => {
    const gpx = parseGpx(text);
    return gpx.ok ? courseOfGpx(gpx.value, officialM) : gpx;
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

const simulatedRun = (plan: RacePlan, course: CourseLine | null, seed: number): readonly Input[] =>
  simulate({
    plan,
    line: course ?? roadOf(plan.distanceM, seed),
    runner: STEADY,
    receiver: OPEN_SKY,
    presses: NO_PRESSES,
    penS: DEMO_PEN_S,
    seed,
  }).inputs;

/** Reads or makes the plan, the course and the inputs; the error is one line that names the file and the place in it. */
export const loadTape = (options: Options): Result<Tape, string> => {
  const planFile =
    options.plan === null ? ok(demoPlan) : readThrough(options.plan, MAX_PLAN_BYTES, parseRacePlan);
  if (!planFile.ok) return planFile;
  const plan = planFile.value;
  const courseFile =
    options.course === null
      ? ok(options.plan === null ? demoCourse() : null)
      : readThrough(options.course, MAX_RECORDING_BYTES, readCourse(plan.distanceM));
  if (!courseFile.ok) return courseFile;
  const course = courseFile.value;
  if (options.fixes === null) {
    const isDemo = options.plan === null && options.course === null && course !== null;
    const seed = options.seed ?? DEMO_SEED;
    const inputs = isDemo ? demoRun(course, seed) : simulatedRun(plan, course, seed);
    return ok({ plan, course, inputs, skipped: 0, notes: [`a simulated run, seed ${seed}`] });
  }
  const recorded = readThrough(options.fixes, MAX_RECORDING_BYTES, readRecording);
  if (!recorded.ok) return recorded;
  const { inputs, skipped, faults } = recorded.value;
  return ok({ plan, course, inputs, skipped, notes: faults.map((f) => `left out: ${f}`) });
};
