import { measureLine } from '../core/course/line.ts';
import type { Voice } from '../core/cues/voicePort.ts';
import { USUAL_RECEIVER } from '../core/estimate/receiver.ts';
import { parsePlanFile } from '../core/plan/parseRacePlan.ts';
import { footPodOf } from '../core/plan/planPod.ts';
import { receiverOf } from '../core/plan/planReceiver.ts';
import type { ReadConfig } from './recovery.ts';

/** A race out of its plan file, with what was believed of phone and foot pod when it began. */
export const readConfigWith =
  (voice: Voice): ReadConfig =>
  (planFile) => {
    const got = parsePlanFile(planFile);
    if (!got.ok) return null;
    const { plan, course } = got.value;
    const seen = receiverOf(planFile);
    const footPod = footPodOf(planFile);
    return {
      plan,
      course: course && measureLine(course, plan.distanceM),
      voice,
      ...(seen === null ? {} : { receiver: { ...USUAL_RECEIVER, ...seen } }),
      ...(footPod === null ? {} : { footPod }),
    };
  };
