import type { Call } from '../cues/call.ts';
import { podSeen } from '../estimate/podSpeed.ts';
import type { LegKind, Target } from '../plan/practicePlan.ts';
import type { LegResult } from '../practice/legNow.ts';
import { beginPractice, type PracticeConfig, practiceView } from '../practice/practice.ts';
import { practiceFlush, practiceStep } from '../practice/step.ts';
import type { RunInput } from '../run/settings.ts';
import { M_PER_KM } from '../units/units.ts';
import { type SaidCall, saidOf } from './digest.ts';

/** A leg as the review shows it. */
export interface RanLeg {
  readonly kind: LegKind;
  readonly rep: LegResult['leg']['rep'];
  readonly target: Target;
  readonly timeS: number;
  readonly distanceM: number | null;
  readonly distanceSdM: number;
  readonly aheadS: number | null;
  readonly heartBpm: number | null;
}

/** Where the session stood at one instant. */
export interface PracticeSample {
  readonly atS: number;
  /** Null where nothing measured the way, or the runner stood. */
  readonly paceSPerKm: number | null;
  readonly askedSPerKm: number | null;
  readonly heartBpm: number | null;
}

/** A session put together for review. */
export interface PracticeDigest {
  readonly version: 1;
  readonly kind: 'practice';
  readonly startMs: number | null;
  readonly endS: number | null;
  readonly legs: readonly RanLeg[];
  readonly calls: readonly SaidCall[];
  readonly samples: readonly PracticeSample[];
  /** Road metres for each of the foot pod's, at five minutes a kilometre; null where none was heard on the road. */
  readonly podFactor: number | null;
  /** How often ease or quicken was said. */
  readonly alarms: number;
}

/** Often enough to see a leg begin, seldom enough to keep. */
const SAMPLE_MS = 5000;
/** Slower than this is standing: it would flatten all the rest. */
const SLOWEST_MPS = 1.5;

const isPaceCall = ({ saying }: Call): boolean => saying.kind === 'ease' || saying.kind === 'quicken';

/** A session's fold in progress, one input at a time. */
export const beginPracticeDigest = (config: PracticeConfig) => {
  let practice = beginPractice(config);
  const calls: Call[] = [];
  const beats: { atMs: number; bpm: number }[] = [];
  const samples: PracticeSample[] = [];
  let sampledMs = Number.NEGATIVE_INFINITY;

  const sample = (): void => {
    const { atMs, startMs } = practice;
    if (startMs === null || atMs < sampledMs + SAMPLE_MS || practice.endMs !== null) return;
    sampledMs = atMs;
    const { going, leg, heartBpm } = practiceView(practice, atMs);
    const target = leg?.leg.target;
    samples.push({
      atS: (atMs - startMs) / 1000,
      paceSPerKm: going === null || going.speedMps < SLOWEST_MPS ? null : M_PER_KM / going.speedMps,
      askedSPerKm: target?.by === 'pace' ? target.paceSPerKm : null,
      heartBpm,
    });
  };

  const heartIn = ({ startMs, endMs }: LegResult): number | null => {
    const own = beats.filter((b) => b.atMs >= startMs && b.atMs < endMs);
    return own.length === 0 ? null : own.reduce((sum, b) => sum + b.bpm, 0) / own.length;
  };
  return {
    take: (input: RunInput): void => {
      if (input.type === 'heart' && input.bpm !== null) beats.push({ atMs: input.atMs, bpm: input.bpm });
      const next = practiceStep(practice, input);
      practice = next.practice;
      calls.push(...next.calls);
      sample();
    },
    end: (): PracticeDigest => {
      const last = practiceFlush(practice);
      practice = last.practice;
      calls.push(...last.calls);
      const { startMs, endMs, results, estimate } = practice;
      return {
        version: 1,
        kind: 'practice',
        startMs,
        endS: startMs === null || endMs === null ? null : (endMs - startMs) / 1000,
        legs: results.map((r) => ({
          kind: r.leg.kind,
          rep: r.leg.rep,
          target: r.leg.target,
          timeS: (r.endMs - r.startMs) / 1000,
          distanceM: r.distanceM,
          distanceSdM: r.distanceSdM,
          aheadS: r.aheadS,
          heartBpm: heartIn(r),
        })),
        calls: calls.map((c) => saidOf(c, startMs ?? 0)),
        samples,
        podFactor: podSeen(estimate)?.factor ?? null,
        alarms: calls.filter(isPaceCall).length,
      };
    },
  };
};
