import type { Call } from '../cues/call.ts';
import type { Signal } from '../estimate/progress.ts';
import { type ReceiverSeen, receiverSeen } from '../estimate/receiverSeen.ts';
import { beginRun, driftOf, phaseOf, progressOf, type Run, type RunConfig } from '../run/run.ts';
import type { RunInput } from '../run/settings.ts';
import { flush, step } from '../run/step.ts';
import type { Message } from '../units/message.ts';

/** Where the run stood at one instant. */
export interface Sample {
  /** Own clock. */
  readonly atS: number;
  readonly distanceM: number;
  readonly speedMps: number;
  readonly aheadS: number;
  readonly aheadSdS: number;
  readonly projectedS: number | null;
  readonly projectedSdS: number;
  /** Mean since the sample before; null where no belt was heard. */
  readonly heartBpm: number | null;
  readonly signal: Signal;
}

/** A call as the review shows it. Own-clock seconds. */
export interface SaidCall {
  readonly id: number;
  readonly kind: Call['saying']['kind'];
  /** What it meant, and in which form: enough to sound it again. */
  readonly saying: Call['saying'];
  readonly form: Call['form'];
  readonly text: string;
  readonly startS: number;
  readonly endS: number;
  readonly distanceM: number | null;
  readonly aheadS: number | null;
  readonly aheadSdS: number | null;
  readonly why: Message;
}

/** A run put together for review: plain data, so that it can be kept and opened at once. */
export interface Digest {
  readonly version: 1;
  /** Engine ms of own clock 0; null where the runner never started. */
  readonly startMs: number | null;
  readonly finishS: number | null;
  readonly distanceM: number;
  readonly samples: readonly Sample[];
  readonly calls: readonly SaidCall[];
  readonly fixes: number;
  readonly unused: number;
  /** Seconds of the run in each state of reception. */
  readonly signalS: Readonly<Record<Signal, number>>;
  /** What the run showed of the phone's receiver; null where it showed nothing. */
  readonly receiver: ReceiverSeen | null;
  /** The longest stretch without a usable fix, seconds. */
  readonly longestGapS: number;
}

/** About so many points show a run of any length; a screen is not wider. */
const SAMPLES = 500;
/** Looked at no oftener than this: in a run of five hours half of the work would be looking. */
const LOOK_MS = 1900;
/** Reception may have become poor when the last fix that was used is older than this. */
const DOUBTFUL_S = 3;

const WORSE: readonly Signal[] = ['waiting', 'good', 'poor', 'lost'];
const worse = (a: Signal, b: Signal): Signal => (WORSE.indexOf(a) > WORSE.indexOf(b) ? a : b);

/** A fold in progress. Inputs go in one by one, so that a long log can be taken in pieces. */
export interface Digesting {
  readonly take: (input: RunInput) => void;
  readonly end: () => Digest;
}

export const saidOf = (call: Call, zeroMs: number): SaidCall => ({
  id: call.id,
  kind: call.saying.kind,
  saying: call.saying,
  form: call.form,
  text: call.utterance.text,
  startS: (call.startMs - zeroMs) / 1000,
  endS: (call.endMs - zeroMs) / 1000,
  distanceM: call.distanceM,
  aheadS: call.aheadS,
  aheadSdS: call.aheadSdS,
  why: call.why,
});

/** Folds a log with the very engine that ran it, and keeps what a review needs. */
export const beginDigest = (config: RunConfig): Digesting => {
  let run: Run = beginRun(config);
  const calls: Call[] = [];
  const samples: Sample[] = [];
  const everyM = config.plan.distanceM / SAMPLES;
  const signalS: Record<Signal, number> = { waiting: 0, good: 0, poor: 0, lost: 0 };
  let fixes = 0;
  let longestGapS = 0;
  let lastAtMs: number | null = null;
  let nextM = 0;
  let [beats, beatCount] = [0, 0];
  let stoppedM: number | null = null;

  /** `until` is how reception was until the fix that came now: a gap is over with the fix that ends it. */
  const sample = (atMs: number, startMs: number, until: Signal): void => {
    if (lastAtMs !== null && atMs - lastAtMs < LOOK_MS) return;
    const progress = progressOf(run, atMs);
    const dtS = lastAtMs === null ? 0 : (atMs - Math.max(lastAtMs, startMs)) / 1000;
    const signal = worse(until, progress.signal);
    signalS[signal] += Math.max(0, dtS);
    lastAtMs = atMs;
    if (progress.distanceM < nextM) return;
    const drift = driftOf(run, atMs);
    if (drift === null) return;
    nextM = progress.distanceM + everyM;
    samples.push({
      atS: (atMs - startMs) / 1000,
      distanceM: progress.distanceM,
      speedMps: progress.speedMps,
      aheadS: drift.aheadS,
      aheadSdS: drift.aheadSdS,
      projectedS: drift.projectedFinishS,
      projectedSdS: drift.projectedFinishSdS,
      heartBpm: beatCount > 0 ? beats / beatCount : null,
      signal,
    });
    [beats, beatCount] = [0, 0];
  };

  const take = (input: RunInput): void => {
    if (input.type === 'heart' && input.bpm !== null) [beats, beatCount] = [beats + input.bpm, beatCount + 1];
    const { lastUsedMs } = run.estimate;
    const unseenS =
      input.type !== 'fix' || lastUsedMs === null ? 0 : (Math.max(run.atMs, input.atMs) - lastUsedMs) / 1000;
    const until = unseenS > DOUBTFUL_S ? progressOf(run, Math.max(run.atMs, input.atMs)).signal : 'good';
    const next = step(run, input);
    run = next.run;
    calls.push(...next.calls);
    if (input.type !== 'fix') return;
    fixes++;
    const phase = phaseOf(run);
    if (phase.phase === 'stopped') stoppedM ??= progressOf(run, run.atMs).distanceM;
    if (phase.phase !== 'running') return;
    longestGapS = Math.max(longestGapS, unseenS);
    sample(run.atMs, phase.startMs, until);
  };

  return {
    take,
    end: () => {
      const last = flush(run);
      run = last.run;
      calls.push(...last.calls);
      const phase = phaseOf(run);
      const startMs = run.estimate.startMs;
      const zeroMs = startMs ?? 0;
      const line = calls.find((c) => c.saying.kind === 'finish');
      const finishS = phase.phase === 'finished' ? phase.finishS : null;
      if (finishS !== null && samples.length > 0)
        samples.push({
          ...(samples.at(-1) as Sample),
          atS: finishS,
          distanceM: config.plan.distanceM,
          aheadS: line?.aheadS ?? 0,
          aheadSdS: line?.aheadSdS ?? 0,
          projectedS: finishS,
          projectedSdS: line?.aheadSdS ?? 0,
        });
      return {
        version: 1,
        startMs,
        finishS,
        distanceM: stoppedM ?? progressOf(run, run.atMs).distanceM,
        samples,
        calls: calls.map((c) => saidOf(c, zeroMs)),
        fixes,
        unused: run.estimate.skipped,
        signalS,
        receiver: receiverSeen(run.estimate),
        longestGapS,
      };
    },
  };
};

/** The whole log at once. */
export const digestOf = (config: RunConfig, inputs: readonly RunInput[]): Digest => {
  const digesting = beginDigest(config);
  for (const input of inputs) digesting.take(input);
  return digesting.end();
};
