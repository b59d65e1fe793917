import { ok } from '../units/result.ts';
import { parseJson } from './json.ts';
import { withField } from './planReceiver.ts';
import { fields, orElse } from './shape.ts';

/**
 * Whether the plan of a kept run was made from the run itself, as it came from elsewhere without one: `"imported": true`, a
 * field of ours. Its goal is the time that it took and its course the way that it went, so it says how even the run was,
 * and nothing of what the runner can do or of this phone.
 */
export const isImported = (planFile: string): boolean => {
  const got = parseJson(planFile, (value) => fields({ imported: orElse(ok, false) })(value, ''));
  return got.ok && got.value.imported === true;
};

/** The same file, marked so. */
export const asImported = (planFile: string): string => withField(planFile, 'imported', true);
