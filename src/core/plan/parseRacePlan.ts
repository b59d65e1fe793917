import type { LinePoint } from '../course/line.ts';
import { type DoorError, ok, type Result } from '../units/result.ts';
import { defaultCheckpointsM, tidyCheckpointsM } from './checkpoints.ts';
import { parseJson } from './json.ts';
import { planCourse } from './planCourse.ts';
import { type PlanFields, planFields } from './planFields.ts';
import { checkTogether } from './planTogether.ts';
import { presetAt } from './presets.ts';
import type { RacePlan } from './racePlan.ts';
import { fields, orElse, refuse, show } from './shape.ts';

const head = fields({ version: orElse(ok, 1), kind: orElse(ok, 'race') });

/** What is there stays, what is null is left out: a plan holds no empty fields of ours. */
const extrasOf = (f: PlanFields): Partial<RacePlan> => ({
  ...(f.openingWins === 'spent' && f.opening !== null ? { openingWins: f.openingWins } : {}),
  ...(f.secondGoal === null ? {} : { secondGoal: f.secondGoal }),
  ...(f.pacer === null ? {} : { pacer: f.pacer }),
  ...(f.rival === null ? {} : { rival: f.rival }),
  ...(f.cutOffs === null || f.cutOffs.length === 0 ? {} : { cutOffs: f.cutOffs }),
  ...(f.tunnels === null || f.tunnels.length === 0
    ? {}
    : { tunnels: [...f.tunnels].sort((a, b) => a.fromM - b.fromM) }),
  ...(f.wrongBoards === null || f.wrongBoards.length === 0
    ? {}
    : { wrongBoards: [...f.wrongBoards].sort((a, b) => a.saysM - b.saysM) }),
});

/** A leg that wins nothing or lies nowhere is no leg. */
const planOf = (f: PlanFields): RacePlan => ({
  version: 1,
  kind: 'race',
  name: f.name ?? presetAt(f.distanceM)?.name ?? 'Race',
  distanceM: f.distanceM,
  goalS: f.goalS,
  goalBy: f.goalBy,
  unit: f.unit,
  pacing: f.pacing,
  opening: f.opening && f.opening.untilM > 0 && f.opening.quickerSPerKm !== 0 ? f.opening : null,
  push: f.push && f.push.fromM < f.distanceM && f.push.quickerSPerKm > 0 ? f.push : null,
  checkpointsM: f.checkpointsM
    ? tidyCheckpointsM(f.checkpointsM, f.distanceM)
    : defaultCheckpointsM(f.distanceM),
  stations: [...f.stations].sort((a, b) => a.atM - b.atM),
  fuel: [...f.fuel].sort((a, b) => a.atM - b.atM),
  ...extrasOf(f),
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

/** As readRacePlan, the plan's own course included. */
export const readPlanFile = (value: unknown): Result<PlanFile, DoorError> => {
  const plan = readRacePlan(value);
  if (!plan.ok) return plan;
  const own = fields({ course: planCourse })(value, '');
  return own.ok ? ok({ plan: plan.value, course: own.value.course }) : own;
};

/** As parseRacePlan, the plan's own course included. */
export const parsePlanFile = (text: string): Result<PlanFile, DoorError> => parseJson(text, readPlanFile);
