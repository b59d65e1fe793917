import { type CourseLine, elevationAtM } from '../course/line.ts';
import type { Signal } from '../estimate/progress.ts';
import type { Digest } from './digest.ts';
import type { RanSplit } from './parts.ts';

/** From one board to the next: the figures behind the drawings. */
export interface RanStretch {
  readonly fromM: number;
  readonly toM: number;
  readonly ranSPerKm: number;
  readonly plannedSPerKm: number;
  /** Mean of the belt; null where none was heard. */
  readonly heartBpm: number | null;
  /** Height of the course at its end; null where none is known. */
  readonly heightM: number | null;
}

const meanOf = (xs: readonly number[]): number | null =>
  xs.length === 0 ? null : xs.reduce((sum, x) => sum + x, 0) / xs.length;

export const ranStretches = (
  { samples }: Digest,
  splits: readonly RanSplit[],
  course: CourseLine | null,
): readonly RanStretch[] =>
  splits.map(({ atM, splitS, plannedSplitS }, i) => {
    const fromM = splits[i - 1]?.atM ?? 0;
    const perKm = 1000 / (atM - fromM);
    const beats = samples.flatMap((s) =>
      s.distanceM > fromM && s.distanceM <= atM && s.heartBpm !== null ? [s.heartBpm] : [],
    );
    return {
      fromM,
      toM: atM,
      ranSPerKm: splitS * perKm,
      plannedSPerKm: plannedSplitS * perKm,
      heartBpm: meanOf(beats),
      heightM: course === null ? null : elevationAtM(course, atM),
    };
  });

/** A part of the way on which reception was the same. */
export interface ReceptionStretch {
  readonly fromM: number;
  readonly toM: number;
  readonly signal: Signal;
}

/** The way cut where reception changed, from the first sample to the last. */
export const receptionOver = ({ samples }: Digest): readonly ReceptionStretch[] => {
  const stretches: ReceptionStretch[] = [];
  for (const [i, { signal, distanceM }] of samples.entries()) {
    const last = stretches.at(-1);
    const fromM = i === 0 ? 0 : (samples[i - 1]?.distanceM ?? 0);
    if (last?.signal === signal) stretches[stretches.length - 1] = { ...last, toM: distanceM };
    else stretches.push({ fromM, toM: distanceM, signal });
  }
  return stretches;
};
