import { reviewOf } from '../../core/review/review.ts';
import { importedFacts, practiceFacts, type RunFacts, raceFacts } from '../../core/review/trend.ts';
import { isPractice } from './reviewFold.ts';
import type { RunRow } from './reviewRuns.ts';

/** What a kept run says for the trend; nothing before it was put together. */
export const factsOf = ({ plan, digest, isImported = false }: RunRow): RunFacts[] => {
  if (plan === null || digest === null) return [];
  if (isPractice(digest)) return [practiceFacts(digest)];
  if (plan.kind !== 'race') return [];
  const { opening, fade, stations } = reviewOf(digest, plan.plan, null);
  return isImported
    ? [importedFacts(digest, fade)]
    : [raceFacts(digest, plan.plan.distanceM, opening, fade, stations)];
};
