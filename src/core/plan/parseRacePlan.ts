import type { LinePoint } from '../course/line.ts';
import { type DoorError, ok, type Result } from '../units/result.ts';
import { M_PER_KM } from '../units/units.ts';
import { defaultCheckpointsM, tidyCheckpointsM } from './checkpoints.ts';
import { parseJson } from './json.ts';
import { planCourse } from './planCourse.ts';
import { type PlanFields, planFields } from './planFields.ts';
import { presetAt } from './presets.ts';
import type { RacePlan } from './racePlan.ts';
import { fields, orElse, refuse, show } from './shape.ts';

/** The quickest anybody ran 100 m is a mean of 10.4 m/s; above this a goal or a leg is a slip of the hand. */
const QUICKEST_MPS = 12;
const QUICKEST_S_PER_KM = M_PER_KM / QUICKEST_MPS;

type Checked = Result<unknown, DoorError>;
const fine: Checked = ok(null);

const head = fields({ version: orElse(ok, 1), kind: orElse(ok, 'race') });

/** What the parts of a plan owe each other; the first breach is the error. */
const checkTogether = (f: PlanFields): Checked => {
  const { distanceM, goalS, opening, push } = f;
  const paceSPerKm = (goalS / distanceM) * M_PER_KM;
  const onCourse = (name: string, atM: number): Checked =>
    atM <= distanceM ? fine : refuse(name, `a place on the course of ${distanceM} m`, atM);
  const runnable = (name: string, legPaceSPerKm: number, found: number): Checked =>
    legPaceSPerKm >= QUICKEST_S_PER_KM
      ? fine
      : refuse(name, `a pace that a human can run (slower than ${QUICKEST_MPS} m/s)`, found);
  const untilM = opening?.untilM ?? 0;
  const openingWin = opening?.quickerSPerKm ?? 0;
  const pushWin = push?.quickerSPerKm ?? 0;
  const checks: readonly (() => Checked)[] = [
    () => runnable('goalS', paceSPerKm, goalS),
    () => onCourse('opening.untilM', untilM),
    () => runnable('opening.quickerSPerKm', paceSPerKm - openingWin, openingWin),
    () => onCourse('push.fromM', push?.fromM ?? 0),
    () =>
      push === null || push.fromM >= untilM
        ? fine
        : refuse('push.fromM', `a place after the opening, which ends at ${untilM} m`, push.fromM),
    () => (pushWin >= 0 ? fine : refuse('push.quickerSPerKm', '0 or more seconds per kilometre', pushWin)),
    () => runnable('push.quickerSPerKm', paceSPerKm - pushWin, pushWin),
    ...(f.checkpointsM ?? []).map((atM, i) => () => onCourse(`checkpointsM[${i}]`, atM)),
    ...f.stations.map((s, i) => () => onCourse(`stations[${i}].atM`, s.atM)),
    ...f.fuel.map((s, i) => () => onCourse(`fuel[${i}].atM`, s.atM)),
  ];
  for (const check of checks) {
    const got = check();
    if (!got.ok) return got;
  }
  return fine;
};

/** A leg that wins nothing or lies nowhere is no leg. */
const planOf = (f: PlanFields): RacePlan => ({
  ...f,
  version: 1,
  kind: 'race',
  name: f.name ?? presetAt(f.distanceM)?.name ?? 'Race',
  opening: f.opening && f.opening.untilM > 0 && f.opening.quickerSPerKm !== 0 ? f.opening : null,
  push: f.push && f.push.fromM < f.distanceM && f.push.quickerSPerKm > 0 ? f.push : null,
  checkpointsM: f.checkpointsM
    ? tidyCheckpointsM(f.checkpointsM, f.distanceM)
    : defaultCheckpointsM(f.distanceM),
  stations: [...f.stations].sort((a, b) => a.atM - b.atM),
  fuel: [...f.fuel].sort((a, b) => a.atM - b.atM),
});

/** The kinds of plan file and who reads each. */
const readers: Readonly<Record<string, (value: unknown) => Result<RacePlan, DoorError>>> = {
  race: (value) => {
    const got = planFields(value, '');
    if (!got.ok) return got;
    const together = checkTogether(got.value);
    return together.ok ? ok(planOf(got.value)) : together;
  },
};

/**
 * A race plan, version 1, of a value as JSON gives it. `version` and `kind` may be left out (1, "race"); another version
 * or kind is refused, and so is whatever would make a schedule that is not strictly increasing.
 */
export const readRacePlan = (value: unknown): Result<RacePlan, DoorError> => {
  const top = head(value, '');
  if (!top.ok) return top;
  if (top.value.version !== 1) return refuse('version', '1', top.value.version);
  const kind = top.value.kind;
  const reader = typeof kind === 'string' && Object.hasOwn(readers, kind) ? readers[kind] : undefined;
  if (reader) return reader(value);
  return refuse('kind', Object.keys(readers).map(show).join(' or '), kind);
};

/** A race plan file's text; at most 1 MB, never throws. */
export const parseRacePlan = (text: string): Result<RacePlan, DoorError> => parseJson(text, readRacePlan);

/** A plan file: the plan, and the line of its own course where it has one. */
export interface PlanFile {
  readonly plan: RacePlan;
  readonly course: readonly LinePoint[] | null;
}

/** As parseRacePlan, the plan's own course included. */
export const parsePlanFile = (text: string): Result<PlanFile, DoorError> =>
  parseJson(text, (value) => {
    const plan = readRacePlan(value);
    if (!plan.ok) return plan;
    const own = fields({ course: planCourse })(value, '');
    return own.ok ? ok({ plan: plan.value, course: own.value.course }) : own;
  });
