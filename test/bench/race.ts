import type { Call } from '../../src/core/cues/call.ts';
import type { Drift } from '../../src/core/drift/drift.ts';
import type { Progress } from '../../src/core/estimate/progress.ts';
import { scheduleOf } from '../../src/core/plan/schedule.ts';
import { beginRun, driftOf, progressOf } from '../../src/core/run/run.ts';
import { flush, step } from '../../src/core/run/step.ts';
import { spoken as english } from '../../src/languages/en/spoken.ts';
import { voiceOf } from '../../src/voice/utter.ts';
import type { Claim } from './stats.ts';
import type { World } from './worlds.ts';

const voice = voiceOf(english.pack, english.words);

/** What is claimed after a fix, beside the truth of that moment. */
export interface Sample {
  readonly ownS: number;
  readonly trueM: number;
  readonly progress: Progress;
  readonly drift: Drift;
}

export interface Raced {
  readonly samples: readonly Sample[];
  readonly calls: readonly Call[];
  /** Cues that found no room while they were true. */
  readonly dropped: number;
}

/** Before this a receiver is settling and the runner is getting away: nothing is judged. */
const SETTLED_S = 30;

/** Races a world through the engine, as a phone would. */
export const race = ({ plan, given, run: { inputs, truth, startMs } }: World): Raced => {
  const finishS = truth.crossingS(plan.distanceM) ?? Number.POSITIVE_INFINITY;
  let run = beginRun({ plan, course: given, voice });
  const samples: Sample[] = [];
  const calls: Call[] = [];
  for (const input of inputs) {
    const next = step(run, input);
    run = next.run;
    calls.push(...next.calls);
    const ownS = (input.atMs - startMs) / 1000;
    if (input.type !== 'fix' || ownS < SETTLED_S || ownS > finishS) continue;
    const drift = driftOf(run, input.atMs);
    if (drift === null) continue;
    samples.push({ ownS, trueM: truth.distanceAtM(ownS), progress: progressOf(run, input.atMs), drift });
  }
  const last = flush(run);
  calls.push(...last.calls);
  return { samples, calls, dropped: last.run.speech.dropped };
};

export const distanceClaims = (raced: Raced): Claim[] =>
  raced.samples.map(({ progress, trueM }) => ({
    error: progress.distanceM - trueM,
    sd: progress.distanceSdM,
  }));

export const driftClaims = ({ plan, given }: World, raced: Raced): Claim[] => {
  const schedule = scheduleOf(plan, given);
  return raced.samples.map(({ drift, ownS, trueM }) => ({
    error: drift.aheadS - (schedule.timeAtS(trueM) - ownS),
    sd: drift.aheadSdS,
  }));
};

export const finishClaims = ({ plan, run: { truth } }: World, raced: Raced): Claim[] => {
  const finishS = truth.crossingS(plan.distanceM);
  if (finishS === null) return [];
  return raced.samples.flatMap(({ drift }) =>
    drift.projectedFinishS === null
      ? []
      : [{ error: drift.projectedFinishS - finishS, sd: drift.projectedFinishSdS }],
  );
};

/** What was said at a checkpoint, against what was true. */
export interface Passing {
  /** Spoken seconds ahead, less the true ones; null where nothing was said. */
  readonly errorS: number | null;
  /** When the sound began, seconds after the crossing. */
  readonly lateS: number | null;
}

export const passings = ({ plan, given, run: { truth, startMs } }: World, raced: Raced): Passing[] => {
  const schedule = scheduleOf(plan, given);
  return plan.checkpointsM.map((atM) => {
    const crossingS = truth.crossingS(atM);
    const call = raced.calls.find((c) => c.saying.kind === 'checkpoint' && Math.abs((c.atM ?? -1) - atM) < 1);
    if (crossingS === null || !call) return { errorS: null, lateS: null };
    const trueAheadS = schedule.timeAtS(atM) - crossingS;
    return {
      errorS: call.aheadS === null ? null : call.aheadS - trueAheadS,
      lateS: (call.startMs - startMs) / 1000 - crossingS,
    };
  });
};

export const overlaps = ({ calls }: Raced): number =>
  calls.filter((call, i) => i > 0 && call.startMs < (calls[i - 1]?.endMs ?? 0)).length;

/** Calls that keep their distance from what was said before. */
const ROUTINE: ReadonlySet<string> = new Set([
  'opening',
  'settle',
  'station',
  'fuel',
  'push',
  'ease',
  'quicken',
  'signal',
]);

/** Silence before each routine call since the call before it, answers left out, s. */
export const routineGapsS = ({ calls }: Raced): readonly number[] =>
  calls
    .filter(({ saying }) => saying.kind !== 'answer')
    .flatMap((call, i, all) => {
      const before = all[i - 1];
      return before !== undefined && ROUTINE.has(call.saying.kind)
        ? [(call.startMs - before.endMs) / 1000]
        : [];
    });

/** Silence between any two calls, s. */
export const gapsS = ({ calls }: Raced): readonly number[] =>
  calls.flatMap((call, i) => {
    const before = calls[i - 1];
    return before === undefined ? [] : [(call.startMs - before.endMs) / 1000];
  });

export const talkShare = ({ plan, run: { truth } }: World, { calls }: Raced): number =>
  calls.reduce((sum, c) => sum + (c.endMs - c.startMs) / 1000, 0) /
  (truth.crossingS(plan.distanceM) ?? Number.NaN);
