import { parseJson } from './json.ts';
import { fields, numberThat, orElse } from './shape.ts';

/**
 * What was believed of the phone's receiver when a run began, kept in its plan file as a field of ours, so that the log
 * folds to the same calls ever after: `"receiver": { "slowSdM": 2.6, "lagS": 0.5, "lagSdS": 0.4 }`.
 */
export interface PlanReceiver {
  readonly slowSdM: number;
  readonly lagS: number;
  readonly lagSdS: number;
}

const receiver = orElse(
  fields<PlanReceiver>({
    slowSdM: numberThat('metres, 0.5 to 20', (n) => n >= 0.5 && n <= 20),
    lagS: numberThat('seconds, 0 to 5', (n) => n >= 0 && n <= 5),
    lagSdS: numberThat('seconds, 0.05 to 5', (n) => n >= 0.05 && n <= 5),
  }),
  null,
);

/** Null where the file has none, or none that makes sense. */
export const receiverOf = (planFile: string): PlanReceiver | null => {
  const got = parseJson(planFile, (value) => fields({ receiver })(value, ''));
  return got.ok ? got.value.receiver : null;
};

/** The same file with one more field. A file that is no JSON object stays as it is. */
export const withField = (planFile: string, name: string, value: unknown): string => {
  const got = parseJson<Record<string, unknown>>(planFile, (value) =>
    fields<Record<string, unknown>>({})(value, '').ok
      ? { ok: true, value: value as Record<string, unknown> }
      : { ok: false, error: { place: 'the file', expected: 'an object', found: 'none' } },
  );
  return got.ok ? `${JSON.stringify({ ...got.value, [name]: value })}\n` : planFile;
};

/** The same file with what is believed of the receiver in it. */
export const withReceiver = (planFile: string, believed: PlanReceiver | null): string => {
  if (believed === null) return planFile;
  const { slowSdM, lagS, lagSdS } = believed;
  return withField(planFile, 'receiver', { slowSdM, lagS, lagSdS });
};
