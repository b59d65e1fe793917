import { defaultCheckpointsM } from '../../core/plan/checkpoints.ts';
import { OPENING_CAP_REASON, withCappedOpening } from '../../core/plan/openingCap.ts';
import { readRacePlan } from '../../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../../core/plan/racePlan.ts';
import type { Item, Offer } from '../../core/plan/supplies.ts';
import { durationText } from '../../core/prepare/format.ts';
import { riegelS } from '../../core/prepare/goal/formulas.ts';
import { type DistanceUnit, M_PER_KM, metresPer, pacePer } from '../../core/units/units.ts';
import { t } from '../../languages/text.ts';
import { planRefusal } from './planRefusal.ts';
import { finishSecondsOf, numberOf, placesOf, secondsOf } from './planTexts.ts';

/** A place and a time as typed. */
export interface TimeRow {
  readonly at: string;
  readonly time: string;
}

/** A plan as it stands in the form: texts as typed. Places and distances are in `unit`, paces in seconds per `unit`. */
export interface PlanDraft {
  readonly name: string;
  readonly distance: string;
  readonly goal: string;
  readonly goalBy: RacePlan['goalBy'];
  readonly unit: DistanceUnit;
  readonly pacing: RacePlan['pacing'];
  readonly openingUntil: string;
  readonly openingQuicker: string;
  readonly pushFrom: string;
  readonly pushQuicker: string;
  /** Places, separated by commas or spaces; empty for the usual ones. */
  readonly checkpoints: string;
  readonly stations: readonly { readonly at: string; readonly offers: readonly Offer[] }[];
  readonly fuel: readonly { readonly item: Item; readonly at: string }[];
  readonly openingWins: 'kept' | 'spent';
  readonly secondKind: 'safe' | 'dream';
  /** Empty: none. So with the pacer's flag and the rival's finish. */
  readonly secondGoal: string;
  readonly pacerFlag: string;
  readonly pacerBy: 'gun' | 'own';
  readonly rivalName: string;
  readonly rivalFinish: string;
  /** Places short of the finish. */
  readonly rivalSplits: readonly TimeRow[];
  readonly cutOffs: readonly TimeRow[];
  /** What the plan says beyond the form's fields, kept as it came. */
  readonly rest: object;
}

/** The field of the form that an error belongs to. */
export type DraftField = keyof PlanDraft;

export interface DraftError {
  readonly field: DraftField;
  /** Row of a field that has rows; null elsewhere. */
  readonly row: number | null;
  /** A whole sentence. */
  readonly text: string;
}

export type DraftReading =
  /** `notice`: a sentence on what was taken otherwise than written. */
  | { readonly ok: true; readonly plan: RacePlan; readonly notice: string | null }
  | { readonly ok: false; readonly errors: readonly DraftError[] };

/** Millimetres: no course is known better. */
const DECIMALS = 6;
const numberText = (n: number): string => String(Number(n.toFixed(DECIMALS)));

/** The usual checkpoints stand in the form as nothing, as who typed none has them: half-way is no number to read. */
const isUsual = (checkpointsM: readonly number[], distanceM: number): boolean => {
  const usual = defaultCheckpointsM(distanceM);
  return usual.length === checkpointsM.length && usual.every((m, i) => m === checkpointsM[i]);
};

/** The form filled in from a plan. */
export const draftOf = (plan: RacePlan): PlanDraft => {
  const {
    name,
    distanceM,
    goalS,
    goalBy,
    unit,
    pacing,
    opening,
    push,
    checkpointsM,
    stations,
    fuel,
    openingWins,
    secondGoal,
    pacer,
    rival,
    cutOffs,
    ...rest
  } = plan;
  const place = (m: number): string => numberText(m / metresPer(unit));
  const step = (sPerKm: number): string => numberText(pacePer(unit, sPerKm));
  const row = (r: { readonly atM: number; readonly timeS: number }): TimeRow => ({
    at: place(r.atM),
    time: durationText(r.timeS),
  });
  return {
    name,
    distance: place(distanceM),
    goal: durationText(goalS),
    goalBy,
    unit,
    pacing,
    openingUntil: opening ? place(opening.untilM) : '',
    openingQuicker: opening ? step(opening.quickerSPerKm) : '',
    pushFrom: push ? place(push.fromM) : '',
    pushQuicker: push ? step(push.quickerSPerKm) : '',
    checkpoints: isUsual(checkpointsM, distanceM) ? '' : checkpointsM.map(place).join(', '),
    stations: stations.map((s) => ({ at: place(s.atM), offers: s.offers })),
    fuel: fuel.map((f) => ({ item: f.item, at: place(f.atM) })),
    openingWins: openingWins ?? 'kept',
    secondKind: secondGoal?.kind ?? 'safe',
    secondGoal: secondGoal ? durationText(secondGoal.goalS) : '',
    pacerFlag: pacer ? durationText(pacer.flagS) : '',
    pacerBy: pacer?.by ?? 'gun',
    rivalName: rival?.name ?? '',
    rivalFinish: rival ? durationText(rival.splits.at(-1)?.timeS ?? 0) : '',
    rivalSplits: (rival?.splits.slice(0, -1) ?? []).map(row),
    cutOffs: (cutOffs ?? []).map(row),
    rest,
  };
};

/** Which field of the form a place in the plan file stands in. */
const FIELDS: readonly (readonly [RegExp, DraftField])[] = [
  [/^name/, 'name'],
  [/^distanceM/, 'distance'],
  [/^goalS/, 'goal'],
  [/^opening\.quicker/, 'openingQuicker'],
  [/^opening/, 'openingUntil'],
  [/^push\.quicker/, 'pushQuicker'],
  [/^push/, 'pushFrom'],
  [/^checkpointsM/, 'checkpoints'],
  [/^stations/, 'stations'],
  [/^fuel/, 'fuel'],
  [/^openingWins/, 'openingQuicker'],
  [/^secondGoal/, 'secondGoal'],
  [/^pacer/, 'pacerFlag'],
  [/^rival\.splits\[/, 'rivalSplits'],
  [/^rival/, 'rivalFinish'],
  [/^cutOffs/, 'cutOffs'],
];

const fieldOf = (place: string): DraftField => FIELDS.find(([pattern]) => pattern.test(place))?.[1] ?? 'name';
const rowOf = (place: string): number | null => {
  const row = /^(?:stations|fuel|cutOffs|rival\.splits)\[(\d+)\]/.exec(place)?.[1];
  return row === undefined ? null : Number(row);
};

/** Reads the form: its texts here, what they mean together at the plan file's own door. */
export const readDraft = (draft: PlanDraft): DraftReading => {
  const unitM = metresPer(draft.unit);
  const errors: DraftError[] = [];
  const wrong = (field: DraftField, text: string, row: number | null = null): null => {
    errors.push({ field, row, text });
    return null;
  };
  const metres = (field: DraftField, text: string, row: number | null = null): number | null => {
    const number = numberOf(text);
    // Rounded where binary fractions end, so that 5 km are 5000 m and a mile is 1609.344 m.
    return number === null
      ? wrong(field, t('Write a distance as a number, such as 5 or 10.5.'), row)
      : Number((number * unitM).toFixed(DECIMALS));
  };
  const step = (field: DraftField, text: string): number | null => {
    const number = numberOf(text);
    return number === null
      ? wrong(field, t('Write seconds as a number, such as 6.'))
      : (number * M_PER_KM) / unitM;
  };
  const time = (field: DraftField, text: string, row: number | null = null): number | null =>
    secondsOf(text) ?? wrong(field, t('Write a time as hours, minutes and seconds: 1:44:00.'), row);
  /** Of the whole race. */
  const finish = (field: DraftField, text: string): number | null =>
    finishSecondsOf(text, distanceM ?? 0) ?? time(field, text);
  const timeRows = (field: DraftField, rows: readonly TimeRow[]) =>
    rows.map((r, i) => ({ atM: metres(field, r.at, i), timeS: time(field, r.time, i) }));
  const leg = <K extends string>(place: [DraftField, string], by: [DraftField, string], key: K) =>
    place[1].trim() === '' && by[1].trim() === ''
      ? undefined
      : { [key]: metres(...place), quickerSPerKm: step(...by) };

  const distanceM = metres('distance', draft.distance);
  const places = placesOf(draft.checkpoints);
  const json = {
    ...draft.rest,
    ...(draft.name.trim() === '' ? {} : { name: draft.name.trim() }),
    distanceM,
    goalS: finish('goal', draft.goal),
    goalBy: draft.goalBy,
    unit: draft.unit,
    pacing: draft.pacing,
    opening: leg(['openingUntil', draft.openingUntil], ['openingQuicker', draft.openingQuicker], 'untilM'),
    push: leg(['pushFrom', draft.pushFrom], ['pushQuicker', draft.pushQuicker], 'fromM'),
    checkpointsM: places.length === 0 ? undefined : places.map((text) => metres('checkpoints', text)),
    stations: draft.stations.map((s, i) => ({ atM: metres('stations', s.at, i), offers: s.offers })),
    fuel: draft.fuel.map((f, i) => ({ item: f.item, atM: metres('fuel', f.at, i) })),
    openingWins: draft.openingWins,
    ...(draft.secondGoal.trim() === ''
      ? {}
      : { secondGoal: { kind: draft.secondKind, goalS: finish('secondGoal', draft.secondGoal) } }),
    ...(draft.pacerFlag.trim() === ''
      ? {}
      : { pacer: { flagS: finish('pacerFlag', draft.pacerFlag), by: draft.pacerBy } }),
    ...(draft.rivalFinish.trim() === ''
      ? {}
      : {
          rival: {
            name: draft.rivalName.trim() || 'Rival',
            splits: [
              ...timeRows('rivalSplits', draft.rivalSplits),
              { atM: distanceM, timeS: finish('rivalFinish', draft.rivalFinish) },
            ],
          },
        }),
    cutOffs: timeRows('cutOffs', draft.cutOffs),
  };
  if (errors.length > 0) return { ok: false, errors };
  const got = readRacePlan(json);
  if (got.ok) {
    const plan = withCappedOpening(got.value);
    return { ok: true, plan, notice: plan === got.value ? null : t(OPENING_CAP_REASON) };
  }
  const { place } = got.error;
  const text = planRefusal(got.error, draft.unit);
  return { ok: false, errors: [{ field: fieldOf(place), row: rowOf(place), text }] };
};

/** The same race in the other unit: rewritten where it can be read, else only relabelled. */
export const inUnit = (draft: PlanDraft, unit: DistanceUnit): PlanDraft => {
  const reading = readDraft(draft);
  return reading.ok ? { ...draftOf({ ...reading.plan, unit }), name: draft.name } : { ...draft, unit };
};

/** Goals are round numbers. */
const GOAL_STEP_S = 30;

/**
 * The form for another distance: a goal of like effort, the push as far from the finish as before, the usual checkpoints,
 * and nothing that would lie beyond the new finish. A form that cannot be read only gets the distance.
 */
export const atDistance = (draft: PlanDraft, distanceM: number): PlanDraft => {
  const distance = numberText(distanceM / metresPer(draft.unit));
  const reading = readDraft(draft);
  if (!reading.ok) return { ...draft, distance, checkpoints: '' };
  const { plan } = reading;
  const opening = plan.opening && plan.opening.untilM < distanceM ? plan.opening : null;
  const pushFromM = plan.push ? distanceM - (plan.distanceM - plan.push.fromM) : 0;
  const goalS = Math.round(riegelS(plan.distanceM, plan.goalS, distanceM) / GOAL_STEP_S) * GOAL_STEP_S;
  // Times of others at this race's places say nothing about another one.
  const {
    rival: _rival,
    secondGoal: _second,
    pacer: _pacer,
    cutOffs: _cut,
    tunnels,
    wrongBoards,
    ...own
  } = plan;
  return {
    ...draftOf({
      ...own,
      ...(tunnels ? { tunnels: tunnels.filter((t) => t.toM <= distanceM) } : {}),
      ...(wrongBoards
        ? { wrongBoards: wrongBoards.filter((b) => Math.max(b.saysM, b.standsAtM ?? 0) <= distanceM) }
        : {}),
      distanceM,
      goalS: Math.max(GOAL_STEP_S, goalS),
      opening,
      push: plan.push && pushFromM > (opening?.untilM ?? 0) ? { ...plan.push, fromM: pushFromM } : null,
      stations: plan.stations.filter((s) => s.atM < distanceM),
      fuel: plan.fuel.filter((f) => f.atM < distanceM),
    }),
    name: draft.name,
    checkpoints: '',
  };
};
