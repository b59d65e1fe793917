import type { Extent, Leg, LegKind, PracticePlan, Taking, Target } from '../../plan/practicePlan.ts';
import type { DistanceUnit } from '../../units/units.ts';

/** What ready-made sessions are put together from. */

export const seconds = (timeS: number): Extent => ({ by: 'time', timeS });
export const minutes = (min: number): Extent => seconds(60 * min);
export const metres = (distanceM: number): Extent => ({ by: 'distance', distanceM });
export const atPace = (paceSPerKm: number): Target => ({ by: 'pace', paceSPerKm: Math.round(paceSPerKm) });
export const EASY: Target = { by: 'effort', effort: 'easy' };

/** Seconds to find a pace in: see practiceFields.ts. */
const RAMP_S = 15;

export const leg = (kind: LegKind, extent: Extent, target: Target, take: readonly Taking[] = []): Leg => ({
  kind,
  extent,
  target,
  rampS: target.by === 'pace' ? RAMP_S : 0,
  rep: null,
  heartMostBpm: null,
  take,
});

/** Work and rest in turn, the work numbered; no rest after the last. */
export const repeats = (of: number, work: Leg, rest: Leg): readonly Leg[] =>
  Array.from({ length: of }, (_, i) => [
    { ...work, rep: { count: i + 1, of } },
    ...(i < of - 1 ? [rest] : []),
  ]).flat();

export const session = (name: string, unit: DistanceUnit, legs: readonly Leg[]): PracticePlan => ({
  version: 1,
  kind: 'practice',
  name,
  unit,
  place: 'road',
  penClosesMs: null,
  legs,
});

/** Quick and loose for twenty seconds, then as long as it takes to be fresh again. */
export const strides = (of: number): readonly Leg[] =>
  repeats(
    of,
    leg('stride', seconds(20), { by: 'effort', effort: 'quick and loose' }),
    leg('recovery', seconds(70), EASY),
  );
