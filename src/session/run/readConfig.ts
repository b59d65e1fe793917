import { measureLine } from '../../core/course/line.ts';
import type { Voice } from '../../core/cues/voicePort.ts';
import { parsePlanFile } from '../../core/plan/parseRacePlan.ts';
import { believedIn } from '../../core/run/believed.ts';
import type { ReadConfig } from './recovery.ts';

/** A race out of its plan file, with what was believed of phone, pod and runner when it began. */
export const readConfigWith =
  (voice: Voice): ReadConfig =>
  (planFile) => {
    const got = parsePlanFile(planFile);
    if (!got.ok) return null;
    const { plan, course } = got.value;
    return { plan, course: course && measureLine(course, plan.distanceM), voice, ...believedIn(planFile) };
  };
