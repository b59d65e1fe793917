import { computed } from '@preact/signals';
import { demoCourse } from '../demo/course.ts';
import { DEMO_PEN_S, DEMO_SEED, demoDeadM, demoPlan, demoPresses, demoRunner } from '../demo/race.ts';
import { simulate } from '../sensors/simulated.ts';
import { TOWN } from '../sensors/simulatedReceiver.ts';
import type { PlanModel } from '../session/plan/planModel.ts';
import { createRehearseModel } from '../session/rehearsal/rehearseModel.ts';
import { practiceTape } from '../session/run/tape.ts';
import { pageTime } from '../voice/device/pageTime.ts';
import type { Ground } from './ground.ts';

/** The demo race, or the runner's own plan, by ear. */
export const createRehearsing = ({ voice, speaker }: Ground, plan: PlanModel) => {
  // Measured when it is first looked at: nobody who wants to run should wait for it.
  const demoLine = computed(demoCourse);
  const demoTape = () =>
    simulate({
      plan: demoPlan,
      line: demoLine.value,
      runner: demoRunner,
      receiver: { ...TOWN, deadM: demoDeadM },
      presses: demoPresses,
      penS: DEMO_PEN_S,
      seed: DEMO_SEED,
    }).inputs;
  return createRehearseModel({
    configOf: (source) =>
      source === 'demo'
        ? { plan: demoPlan, course: demoLine.value, voice }
        : { plan: plan.plan.value, course: plan.course.value, voice },
    tapeOf: (source) => (source === 'demo' ? demoTape() : practiceTape(plan.plan.value, plan.course.value)),
    ear: speaker,
    wake: speaker.wake,
    time: pageTime,
  });
};
