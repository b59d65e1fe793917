import type { Voice } from '../../core/cues/voicePort.ts';
import type { PracticePlan } from '../../core/plan/practicePlan.ts';
import { roadOn } from '../../core/practice/way/lay.ts';
import { beginPracticeDigest, type PracticeDigest } from '../../core/review/practiceDigest.ts';
import { SESSION_STEADY, simulateSession } from '../../sensors/simulatedPractice.ts';
import { OPEN_SKY } from '../../sensors/simulatedReceiver.ts';

const SEED = 3;
const PEN_S = 5;

/** What would be heard of a session if an even runner did it under open sky, on its course where it has one. */
export const practisedCalls = (plan: PracticePlan, voice: Voice): PracticeDigest['calls'] => {
  const digesting = beginPracticeDigest({ plan, voice });
  const { inputs } = simulateSession({
    plan,
    runner: SESSION_STEADY,
    receiver: OPEN_SKY,
    penS: PEN_S,
    seed: SEED,
    podShare: null,
    road: plan.course === undefined ? null : roadOn(plan.course),
  });
  for (const input of inputs) digesting.take(input);
  return digesting.end().calls;
};
