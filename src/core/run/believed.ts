import { USUAL_RECEIVER } from '../estimate/receiver.ts';
import { footPodOf } from '../plan/planPod.ts';
import { receiverOf } from '../plan/planReceiver.ts';
import { runnerOf } from '../plan/planRunner.ts';
import type { RunConfig } from './run.ts';

/** What was believed of phone, foot pod and runner when a run began; a part that is absent was as usual. */
export type Believed = Pick<RunConfig, 'receiver' | 'footPod' | 'runner'>;

/** Out of a plan file's text, where the run that it was made for has left it. */
export const believedIn = (planFile: string): Believed => {
  const [seen, footPod, runner] = [receiverOf(planFile), footPodOf(planFile), runnerOf(planFile)];
  return {
    ...(seen === null ? {} : { receiver: { ...USUAL_RECEIVER, ...seen } }),
    ...(footPod === null ? {} : { footPod }),
    ...(runner === null ? {} : { runner }),
  };
};
