import { type CompanySaying, REMINDERS } from '../core/cues/companySaying.ts';
import type { Ahead } from '../core/cues/saying.ts';
import { ADVICE } from '../core/plan/pacerAdvice.ts';

const EVEN: Ahead = { side: 'even', seconds: 0, sure: true };

/** Every meaning about others and before the race; times and drifts are the race's own and are walked there. */
export function* everyCompanySaying(): Generator<CompanySaying> {
  for (const advice of ADVICE) yield { kind: 'pacer', gunS: 6300, ownS: 6280, flag: EVEN, advice };
  yield { kind: 'noPacer' };
  yield { kind: 'rival', ahead: EVEN };
  for (const what of REMINDERS) yield { kind: 'reminder', what };
}
