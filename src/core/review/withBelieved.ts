import { type PlanPod, withFootPod } from '../plan/planPod.ts';
import { withReceiver } from '../plan/planReceiver.ts';
import { withRunner } from '../plan/planRunner.ts';
import { type OwnRunner, ownMannerOf } from './trend.ts';

/** A race's plan file with what kept runs have taught of phone, pod and runner; what they have not is left out. */
export const withBelieved = (
  planFile: string,
  own: OwnRunner | null,
  goalS: number,
  footPod: PlanPod | null,
): string =>
  withRunner(withFootPod(withReceiver(planFile, own?.receiver ?? null), footPod), ownMannerOf(own, goalS));
