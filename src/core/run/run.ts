import type { Call } from '../cues/call.ts';
import type { Voice } from '../cues/voicePort.ts';
import type { CourseLine } from '../course/line.ts';
import type { Drift } from '../drift/drift.ts';
import type { Input } from '../estimate/input.ts';
import type { Progress } from '../estimate/progress.ts';
import type { RacePlan } from '../plan/racePlan.ts';

/** Everything a run needs to know before it begins. */
export interface RunConfig {
  readonly plan: RacePlan;
  readonly course: CourseLine | null;
  readonly voice: Voice;
}

export interface Step {
  readonly run: unknown;
  readonly calls: readonly Call[];
}
export type { Call, Drift, Input, Progress };
