import type { CompanySaying } from '../core/cues/companySaying.ts';
import type { Ahead } from '../core/cues/saying.ts';
import { MORNING } from '../core/plan/morning.ts';
import { ADVICE } from '../core/plan/pacerAdvice.ts';

const EVEN: Ahead = { side: 'even', seconds: 0, sure: true };
const BEHIND: Ahead = { side: 'down', seconds: 10, sure: true };

/** Every meaning about others and before the race; times and drifts are the race's own and are walked there. */
export function* everyCompanySaying(): Generator<CompanySaying> {
  for (const advice of ADVICE) {
    for (const flag of [EVEN, BEHIND]) yield { kind: 'pacer', gunS: 6300, ownS: 6280, flag, advice };
  }
  yield { kind: 'noPacer' };
  for (const ahead of [EVEN, BEHIND]) yield { kind: 'rival', ahead };
  for (const what of MORNING) yield { kind: 'reminder', what };
}
