import { readRacePlan } from '../core/plan/parseRacePlan.ts';
import type { RacePlan } from '../core/plan/racePlan.ts';
import type { Item, Offer } from '../core/plan/supplies.ts';
import { durationText } from '../core/prepare/format.ts';
import { type DistanceUnit, M_PER_KM, metresPer, pacePer } from '../core/units/units.ts';

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
}

/** The field of the form that an error belongs to. */
export type DraftField = keyof PlanDraft;

export interface DraftError {
  readonly field: DraftField;
  /** Row of `stations` or `fuel`; null elsewhere. */
  readonly row: number | null;
  /** A whole sentence. */
  readonly text: string;
}

export type DraftReading =
  | { readonly ok: true; readonly plan: RacePlan }
  | { readonly ok: false; readonly errors: readonly DraftError[] };

/** Millimetres: no course is known better. */
const DECIMALS = 6;
const numberText = (n: number): string => String(Number(n.toFixed(DECIMALS)));

/** The form filled in from a plan. */
export const draftOf = (plan: RacePlan): PlanDraft => {
  const { unit } = plan;
  const place = (m: number): string => numberText(m / metresPer(unit));
  const step = (sPerKm: number): string => numberText(pacePer(unit, sPerKm));
  return {
    name: plan.name,
    distance: place(plan.distanceM),
    goal: durationText(plan.goalS),
    goalBy: plan.goalBy,
    unit,
    pacing: plan.pacing,
    openingUntil: plan.opening ? place(plan.opening.untilM) : '',
    openingQuicker: plan.opening ? step(plan.opening.quickerSPerKm) : '',
    pushFrom: plan.push ? place(plan.push.fromM) : '',
    pushQuicker: plan.push ? step(plan.push.quickerSPerKm) : '',
    checkpoints: plan.checkpointsM.map(place).join(', '),
    stations: plan.stations.map((s) => ({ at: place(s.atM), offers: s.offers })),
    fuel: plan.fuel.map((f) => ({ item: f.item, at: place(f.atM) })),
  };
};

/** `1:44:00`, `41:30`, or whole minutes as `104`. Null where it is no time. */
export const secondsOf = (text: string): number | null => {
  const parts = text.trim().split(':');
  if (parts.length > 3 || !parts.every((p) => /^\d{1,4}$/.test(p.trim()))) return null;
  const numbers = parts.map(Number);
  if (numbers.slice(1).some((n) => n >= 60)) return null;
  if (numbers.length === 1) return (numbers[0] ?? 0) * 60;
  return numbers.reduce((sum, n) => sum * 60 + n, 0);
};

/** A number with a point or a comma before its decimals; null where it is none. */
const numberOf = (text: string): number | null => {
  const plain = text.trim().replace(',', '.');
  return /^-?\d+(\.\d*)?$|^-?\.\d+$/.test(plain) ? Number(plain) : null;
};

/** Texts of places: `5, 10, 15`, `5 10 15`, `5,10,15`; with blanks between them a comma inside is a decimal one. */
const placesOf = (text: string): string[] => {
  const list = /[;\s]/.test(text.trim())
    ? text.split(/[;\s]+/).map((t) => t.replace(/,$/, ''))
    : text.split(',');
  return list.filter((t) => t.trim() !== '');
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
];

const fieldOf = (place: string): DraftField => FIELDS.find(([pattern]) => pattern.test(place))?.[1] ?? 'name';
const rowOf = (place: string): number | null => {
  const row = /^(?:stations|fuel)\[(\d+)\]/.exec(place)?.[1];
  return row === undefined ? null : Number(row);
};

/** Reads the form: its texts here, what they mean together at the plan file's own door. */
export const readDraft = (draft: PlanDraft): DraftReading => {
  const unitM = metresPer(draft.unit);
  const errors: DraftError[] = [];
  const refuse = (field: DraftField, text: string, row: number | null = null): null => {
    errors.push({ field, row, text });
    return null;
  };
  const metres = (field: DraftField, text: string, row: number | null = null): number | null => {
    const number = numberOf(text);
    // Rounded where binary fractions end, so that 5 km are 5000 m and a mile is 1609.344 m.
    return number === null
      ? refuse(field, 'Write a distance as a number, such as 5 or 10.5.', row)
      : Number((number * unitM).toFixed(DECIMALS));
  };
  const step = (field: DraftField, text: string): number | null => {
    const number = numberOf(text);
    return number === null
      ? refuse(field, 'Write seconds as a number, such as 6.')
      : (number * M_PER_KM) / unitM;
  };
  const leg = <K extends string>(place: [DraftField, string], by: [DraftField, string], key: K) =>
    place[1].trim() === '' && by[1].trim() === ''
      ? undefined
      : { [key]: metres(...place), quickerSPerKm: step(...by) };

  const goalS =
    secondsOf(draft.goal) ?? refuse('goal', 'Write a time as hours, minutes and seconds: 1:44:00.');
  const places = placesOf(draft.checkpoints);
  const json = {
    version: 1,
    kind: 'race',
    ...(draft.name.trim() === '' ? {} : { name: draft.name.trim() }),
    distanceM: metres('distance', draft.distance),
    goalS,
    goalBy: draft.goalBy,
    unit: draft.unit,
    pacing: draft.pacing,
    opening: leg(['openingUntil', draft.openingUntil], ['openingQuicker', draft.openingQuicker], 'untilM'),
    push: leg(['pushFrom', draft.pushFrom], ['pushQuicker', draft.pushQuicker], 'fromM'),
    checkpointsM: places.length === 0 ? undefined : places.map((text) => metres('checkpoints', text)),
    stations: draft.stations.map((s, i) => ({ atM: metres('stations', s.at, i), offers: s.offers })),
    fuel: draft.fuel.map((f, i) => ({ item: f.item, atM: metres('fuel', f.at, i) })),
  };
  if (errors.length > 0) return { ok: false, errors };
  const got = readRacePlan(json);
  if (got.ok) return { ok: true, plan: got.value };
  const { place, expected, found } = got.error;
  const text = `Expected ${expected}; found ${found}.`;
  return { ok: false, errors: [{ field: fieldOf(place), row: rowOf(place), text }] };
};

/** The same race in the other unit: rewritten where it can be read, else only relabelled. */
export const inUnit = (draft: PlanDraft, unit: DistanceUnit): PlanDraft => {
  const reading = readDraft(draft);
  return reading.ok ? { ...draftOf({ ...reading.plan, unit }), name: draft.name } : { ...draft, unit };
};
